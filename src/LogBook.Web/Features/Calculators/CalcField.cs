using LogBook.Domain.Calculators;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Numbers;

namespace LogBook.Web.Features.Calculators;

/// <summary>One number of a calculation as a person sees and types it.</summary>
public sealed class CalcField
{
    private readonly string _prefilled;

    /// <summary>Makes a field.</summary>
    /// <param name="key">Last part of its id.</param>
    /// <param name="label">What it is.</param>
    /// <param name="unit">UCUM unit, "s" for seconds, "1" for none.</param>
    /// <param name="low">Lowest value expected.</param>
    /// <param name="high">Highest value expected.</param>
    /// <param name="known">What it begins with, or null.</param>
    /// <param name="isNeeded">Whether nothing can be worked out without it.</param>
    /// <param name="language">Whose decimal sign is used.</param>
    public CalcField(string key, Text label, string unit, double low, double high, KnownNumber? known, bool isNeeded, Language language)
    {
        (Key, Label, Unit, Low, High, Known, IsNeeded) = (key, label, unit, low, high, known, isNeeded);
        Text = _prefilled = known is null ? "" : Rounded(known.Estimate.Value).ToString("0.######", Cultures.Of(language));
    }

    public string Key { get; }

    public Text Label { get; }

    public string Unit { get; }

    public double Low { get; }

    public double High { get; }

    /// <summary>What it began with.</summary>
    public KnownNumber? Known { get; }

    public bool IsNeeded { get; }

    /// <summary>As typed; stays whatever it is.</summary>
    public string Text { get; set; }

    /// <summary>What is wrong with it, or null.</summary>
    public string? Problem { get; private set; }

    /// <summary>Whether a person typed something else.</summary>
    public bool IsChanged => Text != _prefilled;

    /// <summary>The number; null where there is none.</summary>
    public double? Value { get; private set; }

    /// <summary>The number with the uncertainty of what it began with: another value of the same gauge is known as well. Without one, that of its kind.</summary>
    public Estimate? Estimate => Value is not { } value ? null
        : Known is { Estimate: { Value: not 0 } known } ? known.Scaled(value / known.Value, Unit)
        : new Estimate(value, Unit, UsualShare * Math.Abs(value));

    /// <summary>Standard uncertainty of a number of its kind as a share of it, for one that is typed where nothing is on file; 0 where none is usual.</summary>
    public double UsualShare { get; init; }

    /// <summary>Reads what was typed.</summary>
    /// <param name="language">Language of the person.</param>
    /// <returns>Whether it is a number as expected, or rightly empty.</returns>
    public bool Read(Language language)
    {
        (Value, Problem) = (null, null);
        if (!IsChanged && Known is not null)
        {
            Value = Known.Estimate.Value;
            return true;
        }

        var read = NumberEntry.Parse(Text, language);
        var expected = Shown.Range(double.IsFinite(Low) ? Low : null, double.IsFinite(High) ? High : null, Unit, language);
        switch (read.Kind)
        {
            case NumberReadingKind.Empty when !IsNeeded:
                return true;
            case NumberReadingKind.Empty:
                Problem = CalcTexts.Missing.In(language, Label.In(language), expected);
                return false;
            case NumberReadingKind.Understood when read.Qualifier is null && read.Value >= Low && read.Value <= High:
                Value = read.Value;
                return true;
            case NumberReadingKind.Ask when read.Choices.Count == 2:
                Problem = Settings.SettingsTexts.TwoMeanings.In(language, Label.In(language), Text.Trim(), Shown.Entered(read.Choices[0], language), Shown.Entered(read.Choices[1], language));
                return false;
            default:
                Problem = CalcTexts.Wrong.In(language, Label.In(language), Text.Trim(), expected);
                return false;
        }
    }

    // Four digits are finer than any of these numbers is known.
    private static double Rounded(double value)
    {
        if (value == 0 || value == Math.Round(value))
        {
            return value;
        }

        var step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 3);
        return Math.Round(Math.Round(value / step) * step, 9);
    }
}
