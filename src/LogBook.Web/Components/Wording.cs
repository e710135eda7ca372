using System.Globalization;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Web.Components;

/// <summary>The language and number formats of the person at the page. Pages say <c>@W[SomeTexts.Title]</c>.</summary>
public sealed class Wording
{
    /// <summary>Language of the person.</summary>
    public Language Language { get; private set; }

    /// <summary>Number and date formats of the language.</summary>
    public CultureInfo Culture => Cultures.Of(Language);

    /// <summary>Code of the language for markup.</summary>
    public string Code => LanguageCodes.Of(Language);

    /// <summary>A wording in the person's language.</summary>
    public string this[Text text] => text.In(Language);

    /// <summary>A wording in the person's language with its places filled.</summary>
    public string this[Text text, params object?[] values] => text.In(Language, values);

    /// <summary>A finding's or figure's sentence in the person's language.</summary>
    public string this[Said said] => said.In(Language);

    /// <summary>A number as entered.</summary>
    public string Number(double value) => Shown.Entered(value, Language);

    /// <summary>A number as entered, with its unit (UCUM code).</summary>
    public string Number(double value, string unit) => Shown.Entered(value, unit, Language);

    /// <summary>An estimate with its uncertainty.</summary>
    public string Estimated(Estimate estimate) => Shown.Estimated(estimate, Language);

    /// <summary>A day.</summary>
    public string Day(DateOnly day) => Shown.Day(day, Language);

    /// <summary>The day of a moment in a zone.</summary>
    public string Day(DateTime utc, TimeZoneInfo zone) => Day(DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(utc, zone)));

    /// <summary>Day and time of a moment in a zone.</summary>
    public string Moment(DateTime utc, TimeZoneInfo zone) => Shown.DayAndTime(utc, zone, Language);

    /// <summary>Sets the language: once, by the root of the page, before anything is rendered.</summary>
    public void Speak(Language language) => Language = language;
}
