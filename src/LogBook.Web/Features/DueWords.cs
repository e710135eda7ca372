using LogBook.Application.DueLists;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;
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
    public static string Due(SiteDueRow site, Language language) => In(site.DueInDays, language)
        ?? (site.EveryDays is null ? ReadingTexts.NoInterval.In(language) : ReadingTexts.NeverVisited.In(language));

    /// <summary>When somebody should be there, by the most urgent of the site's clocks.</summary>
    public static string Urgent(SiteDueRow site, Language language) => In(site.UrgentInDays, language) ?? Due(site, language);

    /// <summary>The same with its reason: "in 3 days: drum of P-40 (D-INH) runs out about …".</summary>
    public static string UrgentWithReason(SiteDueRow site, Language language) =>
        site.Reasons.Count == 0 ? Due(site, language) : $"{Urgent(site, language)}: {site.Reasons[0].Words.In(language)}";

    /// <summary>Shape that goes with the worst of the site's clocks.</summary>
    public static StateKind UrgentShape(SiteDueRow site) => Shape(site.Standing);

    /// <summary>Shape of a clock.</summary>
    public static StateKind Shape(DueStanding standing) => standing switch
    {
        DueStanding.Late => StateKind.Act,
        DueStanding.Due => StateKind.Plan,
        DueStanding.Soon => StateKind.Watch,
        _ => StateKind.Neutral,
    };

    private static string? In(int? days, Language language) => days switch
    {
        null => null,
        -1 => ReadingTexts.OverByOne.In(language),
        < 0 => ReadingTexts.OverBy.In(language, -days),
        0 => ReadingTexts.DueToday.In(language),
        1 => ReadingTexts.DueTomorrow.In(language),
        { } ahead => ReadingTexts.DueIn.In(language, ahead),
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
