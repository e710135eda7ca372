using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>An interval that a result has shortened.</summary>
/// <remarks>
/// The newest sample with a result decides; one that is still to come, or could not be quantified, leaves standing what the one before it
/// asked for. The shorter interval counts from the last sample like the rule's own, but is never over before the result was there: nobody
/// could know of it. How long it stays shorter is the firm's to enter from its own rule; LogBook goes back to the rule's own interval with the
/// first result below the bands that shorten it. Common practice, no source.
/// </remarks>
/// <param name="Band">The band.</param>
/// <param name="KnownOn">Day on which the result was received, in the site's zone.</param>
internal sealed record Shortened(RuleBand Band, DateOnly KnownOn)
{
    private const int LongestLookBack = 60;

    /// <summary>What shortens a rule's interval as far as the visits tell; null where nothing does.</summary>
    public static Shortened? Of(SystemHistory history, VisitFacts latest, Rule rule) => IsPossible(rule)
        ? Newest(history, rule, latest.Back().Take(LongestLookBack).SelectMany(visit => visit.ReadingsOf(rule.Test!).Select(reading => (visit.Visit, reading))))
        : null;

    /// <summary>The same for the spell that begins on a day, by what is on record today.</summary>
    public static Shortened? Of(SystemHistory history, Rule rule, DateOnly since) => IsPossible(rule)
        ? Newest(
            history,
            rule,
            history.Visits.SelectMany(visit => visit.Record.Readings.Where(reading => rule.Test!.Equals(reading.Test, StringComparison.OrdinalIgnoreCase)).Select(reading => (visit, reading)))
                .Where(sample => history.DayOf(Duties.TakenAt(sample.visit, sample.reading)) <= since))
        : null;

    /// <summary>Days that a rule allows from a day on, without grace.</summary>
    /// <param name="history">When the system runs.</param>
    /// <param name="rule">The rule, with an interval.</param>
    /// <param name="since">Day of the last sample.</param>
    /// <param name="shortened">What shortens its interval; null for the rule's own.</param>
    public static double Days(SystemHistory history, Rule rule, DateOnly since, Shortened? shortened)
    {
        if (shortened is null)
        {
            return rule.EveryDays!.Value;
        }

        var known = new Duty(DutyKind.Interval, rule, since, 0, rule.OperatingDaysOnly == true ? history.System.Operation : null).PassedOn(shortened.KnownOn);
        return Math.Min(rule.EveryDays!.Value, Math.Max(shortened.Band.EveryDays!.Value, known));
    }

    private static bool IsPossible(Rule rule) => rule.Test is not null && rule.Bands.Any(band => band.EveryDays < rule.EveryDays);

    private static Shortened? Newest(SystemHistory history, Rule rule, IEnumerable<(SystemVisit Visit, Reading Reading)> samples)
    {
        (SystemVisit Visit, Reading Reading)? newest = null;
        foreach (var sample in samples)
        {
            if (sample.Reading is { Value: not null, NotTaken: null } and not { NotQuantifiable: true }
                && (newest is not { } before || Duties.TakenAt(sample.Visit, sample.Reading) > Duties.TakenAt(before.Visit, before.Reading)))
            {
                newest = sample;
            }
        }

        return newest is { } judged && ResultBands.Of(rule, judged.Reading) is { } band && band.EveryDays < rule.EveryDays
            ? new Shortened(band, history.DayOf(Duties.ReceivedAt(history, judged.Visit, judged.Reading)))
            : null;
    }
}
