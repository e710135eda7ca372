using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>One start of a calendar dose that the programmes of their time ask for.</summary>
/// <param name="Start">UTC.</param>
/// <param name="Feed">The feed as its programme has it.</param>
internal sealed record PlannedRun(DateTime Start, Feed Feed);

/// <summary>Starts of calendar doses over a stretch in which programmes may succeed each other.</summary>
internal static class PlannedRuns
{
    /// <summary>Starts from a drum on days on which the plant runs.</summary>
    /// <param name="history">Programmes, season and stops.</param>
    /// <param name="drum">Code of the drum.</param>
    /// <param name="fromUtc">Start of the stretch, included.</param>
    /// <param name="toUtc">End of the stretch, excluded.</param>
    /// <returns>In order of time.</returns>
    public static IReadOnlyList<PlannedRun> Of(SystemHistory history, string drum, DateTime fromUtc, DateTime toUtc)
    {
        var runs = new List<PlannedRun>();
        for (var i = 0; i < history.Programmes.Count; i++)
        {
            var programme = history.Programmes[i];
            var from = Later(fromUtc, history.ProgrammesFromUtc[i]);
            var to = i + 1 < history.Programmes.Count ? Earlier(toUtc, history.ProgrammesFromUtc[i + 1]) : toUtc;
            if (from >= to)
            {
                continue;
            }

            foreach (var feed in programme.Feeds)
            {
                if (feed.Mode != FeedMode.DosePlan || !FeedParts.Same(feed.Drum, drum))
                {
                    continue;
                }

                foreach (var start in history.Doses.Starts(programme, feed, from, to))
                {
                    if (history.System.Operation is not { } operation || OperatingDays.Runs(operation, history.DayOf(start)))
                    {
                        runs.Add(new PlannedRun(start, feed));
                    }
                }
            }
        }

        return runs.Count < 2 ? runs : [.. runs.OrderBy(run => run.Start)];
    }

    private static DateTime Later(DateTime a, DateTime b) => a > b ? a : b;

    private static DateTime Earlier(DateTime a, DateTime b) => a < b ? a : b;
}
