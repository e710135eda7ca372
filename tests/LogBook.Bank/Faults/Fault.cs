using LogBook.Bank.Runs;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Faults;

/// <summary>Something that goes wrong at one system, with what may and what must not be said about it.</summary>
internal sealed record Fault
{
    /// <summary>Name in the table.</summary>
    public required string Name { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly Onset { get; init; }

    /// <summary>Day of the repair; null when it lasts.</summary>
    public DateOnly? Repaired { get; init; }

    /// <summary>Kinds that name the cause.</summary>
    public required IReadOnlyList<string> FoundBy { get; init; }

    /// <summary>Whether the findings' contract keeps what names the cause at "watch", so that nothing is to be raised.</summary>
    public bool OnlyWatched { get; init; }

    /// <summary>Kinds that are true consequences: right to show, but not the cause.</summary>
    public IReadOnlyList<string> Explains { get; init; } = [];

    /// <summary>Kinds that would send somebody the wrong way when shown as "plan" or "act".</summary>
    public IReadOnlyList<string> Forbidden { get; init; } = [];

    /// <summary>First day on which a forbidden kind counts, when it is later than the onset.</summary>
    public DateOnly? ForbiddenFrom { get; init; }

    public IReadOnlyList<ScenarioEntry> Story { get; init; } = [];

    public IReadOnlyList<TechnicianAct> Acts { get; init; } = [];

    /// <summary>Changes what is written down at a visit.</summary>
    public Func<Visit, DateOnly, Visit>? Paper { get; init; }

    /// <summary>Something done to the plant just before a visit.</summary>
    public Action<PlantSimulation, DateOnly>? BeforeVisit { get; init; }

    /// <summary>Whether the visit of a day is invented instead of made.</summary>
    public Func<DateOnly, bool>? Invented { get; init; }

    /// <summary>Whether the noise-free effect at a visit exceeds 3u of its statistic and the contract's threshold.</summary>
    public Func<Course, int, bool>? IsKnowableAt { get; init; }

    /// <summary>For what a day rather than a visit makes knowable.</summary>
    public Func<Course, DateOnly?>? KnowableOn { get; init; }

    /// <summary>Faults of a person, an instrument or a lot are scored over the firm, not here.</summary>
    public bool IsShared { get; init; }

    public bool IsActive(DateOnly day) => day >= Onset && (Repaired is not { } end || day < end);

    /// <summary>Index of the first visit at which it can be known; null when the records never allow it.</summary>
    public int? KnowableIndex(Course course)
    {
        if (KnowableOn is not null)
        {
            return KnowableOn(course) is { } day && course.IndexOn(day) is >= 0 and var at ? at : null;
        }

        for (var i = 1; i < course.Count; i++)
        {
            if (course.DayOf(i) >= Onset && (Repaired is not { } end || course.DayOf(i) <= end) && IsKnowableAt!(course, i))
            {
                return i;
            }
        }

        return null;
    }
}
