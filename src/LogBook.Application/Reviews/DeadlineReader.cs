using LogBook.Application.Data;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>Clocks that findings may have, as the assessments of their systems left them. Two statements for any number of systems.</summary>
internal sealed class DeadlineReader
{
    private readonly Dictionary<int, (IReadOnlyList<RunningClock> Clocks, SystemAhead Ahead)> _ofSystem;
    private readonly IReadOnlyList<Rule> _rules;

    private DeadlineReader(Dictionary<int, (IReadOnlyList<RunningClock> Clocks, SystemAhead Ahead)> ofSystem, IReadOnlyList<Rule> rules) => (_ofSystem, _rules) = (ofSystem, rules);

    /// <summary>Reads what systems have.</summary>
    /// <param name="db">The database as the viewer sees it.</param>
    /// <param name="systems">Systems by their keys.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public static async Task<DeadlineReader> ReadAsync(LogBookDb db, IReadOnlyList<int> systems, CancellationToken cancellationToken)
    {
        var kept = await db.Systems.Where(system => systems.Contains(system.Id))
            .Select(system => new { system.Id, system.Ahead, Clocks = db.Clocks.Where(row => row.SystemId == system.Id).Select(row => row.Clocks).FirstOrDefault() })
            .ToListAsync(cancellationToken);
        var rules = await db.SetUp.Where(row => row.Kind == SetUpKind.Rule).Select(row => row.Document).ToListAsync(cancellationToken);
        return new DeadlineReader(
            kept.ToDictionary(row => row.Id, row => (row.Clocks is null ? (IReadOnlyList<RunningClock>)[] : KeptClocks.Clocks(row.Clocks), KeptAhead.Read(row.Ahead))),
            [.. rules.Select(ExchangeReader.Parse<Rule>)]);
    }

    /// <summary>The deadline of a finding; null where it has none.</summary>
    public FindingDeadline? Of(int? system, Finding finding, string zone) => system is { } id && _ofSystem.TryGetValue(id, out var known)
        ? FindingDeadlines.Of(finding, known.Clocks, known.Ahead.Drums, _rules, TimeZoneInfo.FindSystemTimeZoneById(zone))
        : null;
}
