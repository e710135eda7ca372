using LogBook.Bank.Faults;
using LogBook.Bank.Runs;
using LogBook.Domain.Findings;

namespace LogBook.Bank.Scoring;

/// <summary>How one fault fared with one judge.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Course">Its system.</param>
/// <param name="Seed">Seed of the firm.</param>
/// <param name="KnowableAt">Index of the visit; null when the records never allow it.</param>
/// <param name="Seen">First flag that names the cause, at any severity.</param>
/// <param name="Raised">First such flag at "plan" or "act".</param>
/// <param name="Noticed">First flag that names cause or consequence, at "plan" or "act".</param>
/// <param name="StoodBefore">Whether a flag that names the cause stood before the onset and told nothing since: it finds nothing.</param>
/// <param name="WrongDiagnoses">Forbidden headlines while it lasted.</param>
internal sealed record FaultScore(
    Fault Fault, Course Course, ulong Seed, int? KnowableAt, DateOnly? Seen, DateOnly? Raised, DateOnly? Noticed, bool StoodBefore, IReadOnlyList<Flag> WrongDiagnoses)
{
    public const int VisitsAllowed = 2;

    /// <summary>Visits from the knowable one to the one at which it was said; 0 when said before or then.</summary>
    public int? Delay(DateOnly? said) => KnowableAt is { } at && said is { } day ? Math.Max(0, Course.IndexOn(day) - at) : null;

    public bool SeenInTime => Delay(Seen) is <= VisitsAllowed;

    public bool RaisedInTime => Delay(Raised) is <= VisitsAllowed;

    /// <summary>Whether enough visits follow to tell.</summary>
    public bool Counts => KnowableAt is { } at && at + VisitsAllowed < Course.Count;

    public static FaultScore Of(Fault fault, Course course, ulong seed, IReadOnlyList<Flag> flags)
    {
        DateOnly? First(IEnumerable<string> kinds, Severity least) => flags
            .Where(flag => kinds.Contains(flag.Kind))
            .Select(flag => flag.ToldFrom(fault.Onset, least))
            .Where(day => day is { } on && (fault.Repaired is not { } end || on <= end.AddDays(2 * course.System.EveryDays)))
            .Min();
        return new FaultScore(
            fault,
            course,
            seed,
            fault.KnowableIndex(course),
            First(fault.FoundBy, Severity.Watch),
            First(fault.FoundBy, Severity.Plan),
            First(fault.FoundBy.Concat(fault.Explains), Severity.Plan),
            flags.Any(flag => fault.FoundBy.Contains(flag.Kind) && flag.OnlyStoodOn(fault.Onset)),
            [.. flags.Where(flag => flag.Raised is { } day && fault.IsActive(day) && fault.Forbidden.Contains(flag.Kind) && Truthful.Of(flag, course) == Standing.Wrong)]);
    }
}
