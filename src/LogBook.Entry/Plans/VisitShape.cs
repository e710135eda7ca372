using LogBook.Domain.Visits;

namespace LogBook.Entry.Plans;

/// <summary>What the form of a kind of visit consists of: a delivery or a late result takes three steps, a stop two.</summary>
public static class VisitShape
{
    private static readonly EntryStep[] Whole =
    [
        EntryStep.Arrive, EntryStep.Controller, EntryStep.Reference, EntryStep.Water, EntryStep.Stock, EntryStep.Tower, EntryStep.Samples, EntryStep.Adjust, EntryStep.Close,
    ];

    private static readonly EntryStep[] Sheet = [EntryStep.Sheet, EntryStep.Close];

    /// <summary>Steps of a system.</summary>
    /// <param name="kind">Why the visit takes place.</param>
    /// <param name="recordOnly">Whether the system only gets a sheet of tests.</param>
    /// <param name="filled">Steps in which something stands already: they are never taken away.</param>
    /// <returns>Steps in their order.</returns>
    public static IReadOnlyList<EntryStep> Steps(VisitKind kind, bool recordOnly, IReadOnlySet<EntryStep> filled)
    {
        if (recordOnly)
        {
            // A stop needs the step of its reason and of going on, whatever stands on the sheet already.
            return kind != VisitKind.Stopped ? Sheet : filled.Contains(EntryStep.Sheet) ? [EntryStep.Arrive, .. Sheet] : [EntryStep.Arrive, EntryStep.Close];
        }

        IReadOnlyList<EntryStep> own = kind switch
        {
            VisitKind.Delivery => [EntryStep.Arrive, EntryStep.Stock, EntryStep.Close],
            VisitKind.Result => [EntryStep.Arrive, EntryStep.Samples, EntryStep.Close],
            VisitKind.Stopped => [EntryStep.Arrive, EntryStep.Close],
            _ => Whole,
        };
        return [.. Whole.Where(step => own.Contains(step) || filled.Contains(step))];
    }

    /// <summary>Whether a visit of this kind is expected to read everything.</summary>
    /// <param name="kind">Why the visit takes place.</param>
    /// <returns>False for deliveries, results, stops, calls and audits.</returns>
    public static bool ReadsEverything(VisitKind kind) =>
        kind is not (VisitKind.Delivery or VisitKind.Result or VisitKind.Stopped or VisitKind.Emergency or VisitKind.Audit);

    /// <summary>Events that belong to a kind of visit; one of each inner list is asked for at the close.</summary>
    /// <param name="kind">Why the visit takes place.</param>
    /// <returns>Events; none for a usual visit.</returns>
    public static IReadOnlyList<IReadOnlyList<EventType>> Events(VisitKind kind) => kind switch
    {
        VisitKind.StartUp => [[EventType.Started], [EventType.Disinfected]],
        VisitKind.ShutDown => [[EventType.Stopped, EventType.Drained]],
        VisitKind.Cleaning => [[EventType.Cleaned, EventType.Disinfected]],
        _ => [],
    };
}
