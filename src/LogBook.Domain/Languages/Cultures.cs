using System.Globalization;

namespace LogBook.Domain.Languages;

/// <summary>Number and date formats of the languages, without relying on the machine's culture data.</summary>
public static class Cultures
{
    private static readonly CultureInfo English = Make("en", ".", ",");
    private static readonly CultureInfo Spanish = Make("es", ",", "\u00a0");
    private static readonly CultureInfo Portuguese = Make("pt", ",", ".");

    /// <summary>Formats of a language; the browser runs with invariant globalization, so they are made here.</summary>
    /// <param name="language">Language asked for.</param>
    /// <returns>A read-only culture.</returns>
    public static CultureInfo Of(Language language) => language switch
    {
        Language.Spanish => Spanish,
        Language.Portuguese => Portuguese,
        _ => English,
    };

    private static CultureInfo Make(string name, string point, string group)
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = point;
        culture.NumberFormat.NumberGroupSeparator = group;
        culture.NumberFormat.PercentDecimalSeparator = point;
        culture.NumberFormat.PercentGroupSeparator = group;
        culture.DateTimeFormat.ShortDatePattern = name == "en" ? "d MMM yyyy" : "dd/MM/yyyy";
        culture.DateTimeFormat.ShortTimePattern = "HH:mm";
        return CultureInfo.ReadOnly(culture);
    }
}
