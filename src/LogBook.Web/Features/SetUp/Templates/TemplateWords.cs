using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Web.Features.SetUp.Templates;

/// <summary>What a rule asks for, in words.</summary>
public static class TemplateWords
{
    /// <summary>One part for each thing it asks for.</summary>
    public static IEnumerable<string> AsksFor(Rule rule, Language language)
    {
        var what = rule.Test is { } test ? TestTexts.NameOf(test).In(language) : rule.Task is { } task ? $"“{task}”" : null;
        if (rule.EveryDays is { } days)
        {
            yield return $"{what} {TemplateTexts.EveryDays.In(language, Shown.Plain(days, language))}{(rule.OperatingDaysOnly == true ? $" ({TemplateTexts.RunningDays.In(language)})" : "")}".Trim();
        }
        else if (rule is { OnEvent: { } happened, WithinDays: { } within })
        {
            yield return $"{what} {TemplateTexts.WithinDays.In(language, Shown.Plain(within, language), EventNames.TryParse(happened, out var type) ? VisitTexts.NameOf(type).In(language) : happened)}".Trim();
        }
        else if (what is not null)
        {
            yield return what;
        }

        foreach (var band in rule.Bands)
        {
            var says = TemplateTexts.Band.In(language, Shown.Entered(band.From, band.Unit, language), FindingTexts.NameOf(band.Severity).In(language));
            yield return says + (band.Says is null ? "" : $" ({band.Says})") + (band.NotifyWithinHours is { } hours ? ", " + TemplateTexts.Notify.In(language, Shown.Plain(hours, language)) : "")
                + (band.EveryDays is { } every ? ", " + TemplateTexts.ThenEvery.In(language, Shown.Plain(every, language)) : "");
        }

        if (rule.RetestDays.Count > 0)
        {
            yield return TemplateTexts.Retest.In(language, Shown.Plain(rule.RetestDays[0], language), Shown.Plain(rule.RetestDays[^1], language));
        }
    }
}
