using LogBook.Application.DueLists;
using LogBook.Domain.Languages;
using LogBook.Web.Components.Parts;

namespace LogBook.Web.Features;

/// <summary>When somebody was at a site and when the next visit is due, in words.</summary>
public static class DueWords
{
    /// <summary>How long the last visit is ago.</summary>
    public static string Ago(SiteDueRow site, Language language) => site.DaysSince switch
    {
        null => ReadingTexts.NeverVisited.In(language),
        <= 0 => ReadingTexts.DueToday.In(language),
        1 => ReadingTexts.Yesterday.In(language),
        { } days => ReadingTexts.DaysAgo.In(language, days),
    };

    /// <summary>When the next visit is due.</summary>
    public static string Due(SiteDueRow site, Language language) => site.DueInDays switch
    {
        null => site.EveryDays is null ? ReadingTexts.NoInterval.In(language) : ReadingTexts.NeverVisited.In(language),
        -1 => ReadingTexts.OverByOne.In(language),
        < 0 => ReadingTexts.OverBy.In(language, -site.DueInDays),
        0 => ReadingTexts.DueToday.In(language),
        1 => ReadingTexts.DueTomorrow.In(language),
        { } days => ReadingTexts.DueIn.In(language, days),
    };

    /// <summary>Shape that goes with the words.</summary>
    public static StateKind Shape(SiteDueRow site) => site switch
    {
        { IsLate: true } => StateKind.Act,
        { DueInDays: <= 0 } => StateKind.Plan,
        { DueInDays: <= 2 } => StateKind.Watch,
        _ => StateKind.Neutral,
    };
}
