namespace LogBook.Domain.Visits;

/// <summary>An action that a visit asked for and that none has closed since.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Since">When it was first written down, UTC.</param>
/// <param name="Action">The latest word on it.</param>
public sealed record StandingAction(string Site, string System, DateTime Since, VisitAction Action)
{
    /// <summary>Actions that stand, however long ago they were asked for.</summary>
    /// <param name="visits">Visits in any order, in the version that counts; those that do not know an action say nothing of it.</param>
    /// <returns>Open actions in the order in which they were first written down; one without an identity is known again by its text.</returns>
    public static IReadOnlyList<StandingAction> Of(IEnumerable<Visit> visits) =>
    [
        .. visits.OrderBy(visit => visit.Arrived.Utc)
            .SelectMany(visit => visit.Systems.SelectMany(system => system.Actions.Select(action => new StandingAction(visit.Site, system.System, visit.Arrived.Utc, action))))
            .GroupBy(said => (Site: said.Site.ToUpperInvariant(), System: said.System.ToUpperInvariant(), KeyOf(said.Action)))
            .Select(group => group.Last() with { Since = group.First().Since })
            .Where(standing => standing.Action.State is null or ActionState.Open)
            .OrderBy(standing => standing.Since),
    ];

    private static string KeyOf(VisitAction action) => action.Id?.ToString("D") ?? action.Text;
}
