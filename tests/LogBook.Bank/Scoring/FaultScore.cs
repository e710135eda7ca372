using LogBook.Bank.Faults;
using LogBook.Bank.Runs;

namespace LogBook.Bank.Scoring;

/// <summary>How one fault fared with one judge.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Course">Its system.</param>
/// <param name="Seed">Seed of the firm.</param>
/// <param name="KnowableAt">Index of the visit; null when the records never allow it.</param>
/// <param name="Seen">First flag that names the cause, at any severity.</param>
/// <param name="Raised">First such flag at "plan" or "act".</param>
/// <param name="Noticed">First flag that names cause or consequence, at "plan" or "act".</param>
/// <param name="WrongDiagnoses">Forbidden headlines while it lasted.</param>
internal sealed record FaultScore(
    Fault Fault, Course Course, ulong Seed, int? KnowableAt, DateOnly? Seen, DateOnly? Raised, DateOnly? Noticed, IReadOnlyList<Flag> WrongDiagnoses)
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
        DateOnly? First(IEnumerable<string> kinds, Func<Flag, DateOnly?> day) => flags
            .Where(flag => kinds.Contains(flag.Kind) && day(flag) is { } on && (flag.Closed is not { } closed || closed > fault.Onset)
                && (fault.Repaired is not { } end || on <= end.AddDays(2 * course.System.EveryDays)))
            .Select(flag => day(flag) is { } on && on < fault.Onset ? fault.Onset : day(flag))
            .Min();
        return new FaultScore(
            fault,
            course,
            seed,
            fault.KnowableIndex(course),
            First(fault.FoundBy, flag => flag.Seen),
            First(fault.FoundBy, flag => flag.Raised),
            First(fault.FoundBy.Concat(fault.Explains), flag => flag.Raised),
            [.. flags.Where(flag => flag.Raised is { } day && fault.IsActive(day) && fault.Forbidden.Contains(flag.Kind) && Truthful.Of(flag, course) == Standing.Wrong)]);
    }
}
