using LogBook.Application.Clocks;
using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Web.Components.Parts;

namespace LogBook.Web.Features.Clocks;

/// <summary>A clock in words and shape.</summary>
public static class ClockWords
{
    private const double ShowHoursBelowDays = 2;

    /// <summary>What is asked for.</summary>
    public static string What(ClockLine line, Language language) => line.Clock.Kind switch
    {
        DutyKind.Visit => ClocksTexts.VisitEvery.In(language, Shown.Plain(line.Clock.Days, language)),
        DutyKind.Summary when line.PromisedBy is { } day => ClocksTexts.SummaryBy.In(language, Shown.Day(day, language)),
        DutyKind.Summary => ClocksTexts.SummaryWithin.In(language, Span(TimeSpan.FromDays(line.Clock.Days), language)),
        DutyKind.Notify => ClocksTexts.Notify.In(language, Subject(line.Rule, language), Span(TimeSpan.FromDays(line.Clock.Days), language)),
        DutyKind.Retest => ClocksTexts.Retest.In(language, Subject(line.Rule, language), NotBefore(line, language), LastDay(line, language)),
        DutyKind.AfterEvent => ClocksTexts.AfterEvent.In(language, Subject(line.Rule, language), Shown.Plain(line.Clock.Days, language), line.Clock.Event is { } type ? VisitTexts.NameOf(type).In(language) : "–"),
        _ => (line.Clock.CountsOperatingDays ? ClocksTexts.EveryRunningDays : ClocksTexts.EveryDays).In(language, Subject(line.Rule, language), Shown.Plain(line.Clock.Days, language)),
    };

    /// <summary>What would meet it.</summary>
    public static string Meets(ClockLine line, Language language) => line.Clock.Kind switch
    {
        DutyKind.Visit => ClocksTexts.ByVisit.In(language),
        DutyKind.Summary => ClocksTexts.BySummary.In(language),
        DutyKind.Notify => ClocksTexts.ByNotice.In(language),
        DutyKind.Retest => ClocksTexts.ByRetest.In(language, NotBefore(line, language), LastDay(line, language)),
        _ when line.Rule?.Task is { } task => ClocksTexts.ByTask.In(language, task),
        _ => ClocksTexts.BySample.In(language, Subject(line.Rule, language)),
    };

    /// <summary>Rule and version.</summary>
    public static string RuleOf(ClockLine line, Language language) => line.Rule is { } rule
        ? ClocksTexts.Version.In(language, rule.Name, Shown.Day(rule.From, language))
        : (line.Clock.Rule is null ? ClocksTexts.Contract : ClocksTexts.Gone).In(language);

    /// <summary>How much time is left, or over.</summary>
    public static string Remaining(ClockLine line, DateTime now, Language language)
    {
        var left = line.Clock.Due - now;
        return (left >= TimeSpan.Zero ? ClocksTexts.Left : ClocksTexts.Over).In(language, Span(left.Duration(), language));
    }

    /// <summary>When it was last met.</summary>
    public static string LastMet(ClockLine line, Language language)
    {
        if (line.Clock.LastDone is not { } done)
        {
            return ClocksTexts.Never.In(language);
        }

        var zone = TimeZoneInfo.FindSystemTimeZoneById(line.TimeZone);
        var when = line.Clock.Kind is DutyKind.Notify or DutyKind.Summary ? Shown.DayAndTime(done, zone, language) : Day(done, zone, language);
        return line.Clock.IsPending ? ClocksTexts.Pending.In(language, when)
            : line.Clock.WasLate ? ClocksTexts.MetLate.In(language, when)
            : when;
    }

    /// <summary>When it began to count.</summary>
    public static string Since(ClockLine line, Language language)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(line.TimeZone);
        return line.Clock.Kind is DutyKind.Notify or DutyKind.Summary ? Shown.DayAndTime(line.Clock.Since, zone, language) : Day(line.Clock.Since, zone, language);
    }

    /// <summary>When it is due: a day, or a moment for what counts in hours.</summary>
    public static string Due(ClockLine line, Language language)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(line.TimeZone);
        return line.Clock.Kind is DutyKind.Notify or DutyKind.Summary ? Shown.DayAndTime(line.Clock.Due, zone, language) : LastDay(line, language);
    }

    /// <summary>Shape that goes with the word.</summary>
    public static StateKind Shape(ClockStanding standing) => standing switch
    {
        ClockStanding.Missed => StateKind.Act,
        ClockStanding.DueSoon => StateKind.Plan,
        ClockStanding.Unknown => StateKind.Watch,
        ClockStanding.Met => StateKind.Done,
        _ => StateKind.Neutral,
    };

    /// <summary>A stretch of time: days, below two of them hours, below one of these minutes.</summary>
    public static string Span(TimeSpan span, Language language)
    {
        if (span.TotalDays >= ShowHoursBelowDays)
        {
            return ClocksTexts.Days.In(language, (int)Math.Floor(span.TotalDays));
        }

        var hours = (int)Math.Floor(span.TotalHours);
        return hours switch
        {
            0 => ClocksTexts.Minutes.In(language, (int)Math.Floor(span.TotalMinutes)),
            1 => ClocksTexts.OneHour.In(language),
            _ => ClocksTexts.Hours.In(language, hours),
        };
    }

    private static string Subject(Rule? rule, Language language) =>
        rule?.Test is { } test ? TestTexts.NameOf(test).In(language) : rule?.Task is { } task ? $"“{task}”" : rule?.OnEvent is not null ? ClocksTexts.WatchedCount.In(language) : rule?.Name ?? "–";

    private static string NotBefore(ClockLine line, Language language) => line.Clock.NotBefore is { } day ? Shown.Day(day, language) : "–";

    // The end of a day is the first moment of the next one.
    private static string LastDay(ClockLine line, Language language) => Day(line.Clock.Due.AddMinutes(-1), TimeZoneInfo.FindSystemTimeZoneById(line.TimeZone), language);

    private static string Day(DateTime utc, TimeZoneInfo zone, Language language) => Shown.Day(DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(utc, zone)), language);
}
