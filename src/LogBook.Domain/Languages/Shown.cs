using System.Globalization;
using LogBook.Domain.Estimates;

namespace LogBook.Domain.Languages;

/// <summary>
/// How numbers, units, days and times read for people: the one place where they are rounded. Halves go away from zero.
/// </summary>
public static class Shown
{
    // A number and its unit are one thing: a line does not end between them.
    private const char NoBreak = '\u00a0';

    private static readonly Dictionary<string, Text> Units = new()
    {
        ["uS/cm"] = Same("µS/cm"),
        ["mS/cm"] = Same("mS/cm"),
        ["mg/L"] = Same("mg/L"),
        ["ug/L"] = Same("µg/L"),
        ["[pH]"] = Same("pH"),
        ["Cel"] = Same("°C"),
        ["[degF]"] = Same("°F"),
        ["L"] = Same("L"),
        ["mL"] = Same("mL"),
        ["m3"] = Same("m³"),
        ["[gal_us]"] = new("US gal", "gal EE. UU.", "gal EUA"),
        ["[gal_br]"] = new("imp gal", "gal imp.", "gal imp."),
        ["[cft_i]"] = Same("ft³"),
        ["L/h"] = Same("L/h"),
        ["L/d"] = new("L/day", "L/día", "L/dia"),
        ["h/d"] = new("h/day", "h/día", "h/dia"),
        ["mL/h"] = Same("mL/h"),
        ["[gal_us]/min"] = new("US gal/min", "gal EE. UU./min", "gal EUA/min"),
        ["cm"] = Same("cm"),
        ["[in_i]"] = Same("in"),
        ["%"] = Same("%"),
        ["kg"] = Same("kg"),
        ["[lb_av]"] = Same("lb"),
        ["h"] = Same("h"),
        ["min"] = Same("min"),
        ["d"] = Same("d"),
        ["%/d"] = new("%/day", "%/día", "%/dia"),
        ["mA"] = Same("mA"),
        ["mV"] = Same("mV"),
        ["kW"] = Same("kW"),
        ["[ton_ref]"] = new("tons of refrigeration", "toneladas de refrigeración", "toneladas de refrigeração"),
        ["bar"] = Same("bar"),
        ["[psi]"] = Same("psi"),
        ["{drops}"] = new("drops", "gotas", "gotas"),
        ["[CFU]/mL"] = new("CFU/mL", "UFC/mL", "UFC/mL"),
        ["[CFU]/(100.mL)"] = new("CFU/100 mL", "UFC/100 mL", "UFC/100 mL"),
        ["[CFU]/L"] = new("CFU/L", "UFC/L", "UFC/L"),
        ["{NTU}"] = Same("NTU"),
        ["m3/d"] = new("m³/day", "m³/día", "m³/dia"),
        ["mL/m3"] = Same("mL/m³"),
        ["h/m3"] = Same("h/m³"),
        ["mm/a"] = new("mm/year", "mm/año", "mm/ano"),
        ["[mil_i]/a"] = new("mil/year", "mil/año", "mil/ano"),
        ["1"] = Same(string.Empty),
    };

    private static readonly Text FromTo = new("{0} to {1}", "{0} a {1}", "{0} a {1}");
    private static readonly Text AtLeast = new("at least {0}", "al menos {0}", "no mínimo {0}");
    private static readonly Text AtMost = new("at most {0}", "como máximo {0}", "no máximo {0}");

    /// <summary>A unit for people.</summary>
    /// <param name="unit">UCUM code; an unknown one is shown as it is.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>The unit; empty for a ratio.</returns>
    public static string Unit(string unit, Language language) => Units.TryGetValue(unit, out var text) ? text.In(language) : unit;

    /// <summary>A number as it was entered: no more digits than it has.</summary>
    /// <param name="value">Finite.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>The number with the language's decimal separator and grouped thousands from 10,000 on.</returns>
    public static string Entered(double value, Language language)
    {
        var rounded = Math.Round(value, 6, MidpointRounding.AwayFromZero);
        return rounded.ToString(Math.Abs(rounded) >= 10_000 ? "#,##0.######" : "0.######", Cultures.Of(language));
    }

    /// <summary>A computed number, rounded to significant digits.</summary>
    /// <param name="value">Finite.</param>
    /// <param name="language">Language asked for.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    /// <returns>The rounded number.</returns>
    public static string Computed(double value, Language language, int digits = 3) => WithDecimals(value, DecimalsFor(value, digits), language);

    /// <summary>A computed number, rounded to three significant digits, without zeros behind what is known.</summary>
    /// <param name="value">Finite. A whole one, such as 84 days or a limit of 4 %, was counted or set and keeps all its digits.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "0.75", "12.3", "84".</returns>
    public static string Plain(double value, Language language)
    {
        if (value == Math.Round(value))
        {
            return Entered(value, language);
        }

        var text = Computed(value, language);
        var point = Cultures.Of(language).NumberFormat.NumberDecimalSeparator;
        return text.Contains(point, StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd(point[0]) : text;
    }

    /// <summary>A range between two numbers of one unit, either end open.</summary>
    /// <param name="low">Lower end, or null.</param>
    /// <param name="high">Upper end, or null.</param>
    /// <param name="unit">UCUM code.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "-4 to 4 %"; empty where both ends are open.</returns>
    public static string Range(double? low, double? high, string unit, Language language) => (low, high) switch
    {
        // pH stands before its number, and once is enough.
        ({ } from, { } to) when unit == "[pH]" => FromTo.In(language, PlainWithUnit(from, unit, language), Plain(to, language)),
        ({ } from, { } to) => FromTo.In(language, Plain(from, language), PlainWithUnit(to, unit, language)),
        ({ } from, null) => AtLeast.In(language, PlainWithUnit(from, unit, language)),
        (null, { } to) => AtMost.In(language, PlainWithUnit(to, unit, language)),
        _ => string.Empty,
    };

    /// <summary>A range between two numbers of one unit as they were entered.</summary>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    /// <param name="unit">UCUM code.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "1340 to 1500 µS/cm" or "pH 7.5 to 9"; where both ends are the same, the number alone.</returns>
    public static string EnteredRange(double low, double high, string unit, Language language) =>
        low == high ? Entered(low, unit, language)
        : unit == "[pH]" ? FromTo.In(language, Entered(low, unit, language), Entered(high, language))
        : FromTo.In(language, Entered(low, language), Entered(high, unit, language));

    /// <summary>A number as <see cref="Plain"/> shows it, with its unit.</summary>
    /// <param name="value">Finite.</param>
    /// <param name="unit">UCUM code.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "12.3 µS/cm"; pH stands before its number.</returns>
    public static string PlainWithUnit(double value, string unit, Language language) => Join(Plain(value, language), unit, language);

    /// <summary>A number with its unit.</summary>
    /// <param name="value">Finite, as entered.</param>
    /// <param name="unit">UCUM code.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "1,361 µS/cm"; pH stands before its number.</returns>
    public static string Entered(double value, string unit, Language language) => Join(Entered(value, language), unit, language);

    /// <summary>An estimate with its expanded uncertainty (k = 2), rounded so that the uncertainty shows two digits at most.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "4.5 ± 0.3 m³".</returns>
    public static string Estimated(Estimate estimate, Language language)
    {
        var expanded = estimate.ExpandedUncertainty;
        if (expanded == 0)
        {
            return Join(Computed(estimate.Value, language), estimate.Unit, language);
        }

        var leading = expanded / Math.Pow(10, Math.Floor(Math.Log10(expanded)));
        var decimals = DecimalsFor(expanded, leading < 3 ? 2 : 1);
        var text = WithDecimals(estimate.Value, decimals, language) + NoBreak + "±" + NoBreak + WithDecimals(expanded, decimals, language);
        return Join(text, estimate.Unit, language);
    }

    /// <summary>A day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>As in "3 Mar 2025" or "03/03/2025".</returns>
    public static string Day(DateOnly day, Language language) => day.ToString(Cultures.Of(language).DateTimeFormat.ShortDatePattern, Cultures.Of(language));

    /// <summary>A time of day with its day, in a zone.</summary>
    /// <param name="utc">UTC.</param>
    /// <param name="zone">Zone to show it in.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>Day and 24-hour time.</returns>
    public static string DayAndTime(DateTime utc, TimeZoneInfo zone, Language language) => DayAndTime(TimeZoneInfo.ConvertTimeFromUtc(utc, zone), language);

    /// <summary>A time of day with its day, as the clock on the wall has it.</summary>
    /// <param name="wall">Wall time.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>Day and 24-hour time.</returns>
    public static string DayAndTime(DateTime wall, Language language) =>
        Day(DateOnly.FromDateTime(wall), language) + " " + wall.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A time of day with its seconds and its day, for two times within one minute.</summary>
    /// <param name="wall">Wall time.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>Day and 24-hour time to the second.</returns>
    public static string DayAndSecond(DateTime wall, Language language) =>
        DayAndTime(wall, language) + wall.ToString(":ss", CultureInfo.InvariantCulture);

    private static Text Same(string text) => new(text, text, text);

    private static string Join(string number, string unit, Language language)
    {
        var shown = Unit(unit, language);
        return unit switch
        {
            "[pH]" => "pH" + NoBreak + number,
            "%" => number + NoBreak + "%",
            _ => shown.Length == 0 ? number : number + NoBreak + shown,
        };
    }

    private static int DecimalsFor(double value, int digits) =>
        value == 0 ? 0 : digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));

    private static string WithDecimals(double value, int decimals, Language language)
    {
        if (decimals < 0)
        {
            var step = Math.Pow(10, -decimals);
            value = Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
            decimals = 0;
        }

        var shownDecimals = Math.Min(decimals, 10);

        // A small negative number rounds to a negative zero, which nobody would write.
        value = Math.Round(value, shownDecimals, MidpointRounding.AwayFromZero) + 0.0;
        var format = (Math.Abs(value) >= 10_000 ? "#,##0" : "0") + (shownDecimals > 0 ? "." + new string('0', shownDecimals) : string.Empty);
        return value.ToString(format, Cultures.Of(language));
    }
}
