using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Domain.Clocks;

/// <summary>Which clock is a finding's own: the rule that it is about, the authority to be told, the retest, the earliest day of an empty drum.</summary>
/// <remarks>Kinds without a clock of their own have none here: how soon they want somebody is said by their severity (findings.md).</remarks>
public static class FindingDeadlines
{
    /// <summary>Kinds that may have a clock of their own.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [FindingKinds.ClockDue, FindingKinds.MicrobiologyHigh, FindingKinds.RunsOut];

    /// <summary>The deadline of a finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="clocks">Clocks of its system, as the last assessment left them.</param>
    /// <param name="drums">What is known of its drums.</param>
    /// <param name="rules">Every version of all rules of the firm.</param>
    /// <param name="zone">The site's zone.</param>
    /// <returns>Null where its kind has no clock, or none runs any more.</returns>
    public static FindingDeadline? Of(Finding finding, IReadOnlyList<RunningClock> clocks, IReadOnlyList<DrumAhead> drums, IReadOnlyList<Rule> rules, TimeZoneInfo zone) => finding.Kind switch
    {
        FindingKinds.ClockDue when finding.About?.Rule is { } rule => First(clocks.Where(clock => Same(clock.Rule, rule) && IsAbout(clock, finding.About)), zone),
        FindingKinds.MicrobiologyHigh when finding.About?.Test is { } test => First(
            clocks.Where(clock => clock.Kind is DutyKind.Notify or DutyKind.Retest && rules.Any(rule => Same(rule.Code, clock.Rule) && rule.From == clock.RuleFrom && rule.Test == test)), zone),
        FindingKinds.RunsOut when finding.About?.Drum is { } code && drums.FirstOrDefault(drum => Same(drum.Drum, code))?.From is { } day =>
            new FindingDeadline(null, RunningClock.StartOf(zone, day.AddDays(1)), day),
        _ => null,
    };

    private static bool IsAbout(RunningClock clock, About about) => about switch
    {
        { Task: ClockDue.Notify } => clock.Kind == DutyKind.Notify,
        { Test: not null } => clock.Kind == DutyKind.Retest,
        _ => clock.Kind is DutyKind.Interval or DutyKind.AfterEvent,
    };

    private static FindingDeadline? First(IEnumerable<RunningClock> clocks, TimeZoneInfo zone) => clocks.Where(clock => !clock.IsMet).MinBy(clock => clock.Due) is { } first
        ? new FindingDeadline(first.Kind, first.Due, DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(first.Due.AddTicks(-1), zone)))
        : null;

    private static bool Same(string? a, string? b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
