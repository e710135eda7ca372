using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>When a task that a rule names in words was done.</summary>
/// <remarks>
/// A task is an action that is done under that name, or an event or a visit that says the same: cleaning, disinfection, check
/// of a device, start and stop, audit. Names are compared without case.
/// </remarks>
internal static class Tasks
{
    private static readonly Dictionary<string, EventType> ByEvent = new(StringComparer.OrdinalIgnoreCase)
    {
        ["cleaning"] = EventType.Cleaned,
        ["cleaned"] = EventType.Cleaned,
        ["disinfection"] = EventType.Disinfected,
        ["disinfected"] = EventType.Disinfected,
        ["device check"] = EventType.DeviceChecked,
        ["device-checked"] = EventType.DeviceChecked,
        ["strainer cleaning"] = EventType.StrainerCleaned,
        ["strainer-cleaned"] = EventType.StrainerCleaned,
        ["draining"] = EventType.Drained,
        ["drained"] = EventType.Drained,
    };

    private static readonly Dictionary<string, VisitKind> ByVisit = new(StringComparer.OrdinalIgnoreCase)
    {
        ["cleaning"] = VisitKind.Cleaning,
        ["audit"] = VisitKind.Audit,
        ["start-up"] = VisitKind.StartUp,
        ["shut-down"] = VisitKind.ShutDown,
    };

    /// <summary>Moment at which a visit says that the task was done, UTC; null where it does not.</summary>
    public static DateTime? DoneAt(string task, Visit visit, VisitedSystem record)
    {
        if (ByEvent.TryGetValue(task, out var type) && record.Events.LastOrDefault(e => e.Type == type) is { } happened)
        {
            return (happened.At ?? visit.Arrived).Utc;
        }

        var isDone = (ByVisit.TryGetValue(task, out var kind) && visit.Kind == kind)
            || record.Events.Any(e => Same(e.Note, task))
            || record.Actions.Any(action => action.State == ActionState.Done && (Same(action.For, task) || Same(action.Text, task)));
        return isDone ? visit.Arrived.Utc : null;
    }

    private static bool Same(string? said, string task) => task.Equals(said?.Trim(), StringComparison.OrdinalIgnoreCase);
}
