using System.Collections.Concurrent;
using LogBook.Application.Data;
using LogBook.Application.Notices;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Rounds;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>Keeps the round-wide findings, and tells which systems a changed shift of a meter or lot concerns.</summary>
/// <remarks>
/// Works as the program itself: whoever hands in a visit, all systems of the firm are weighed together. One round at a time, so that
/// the last one stored has seen the clues of all.
/// </remarks>
public sealed class RoundKeeper(LogBookStore store, SetUpStore setUp, AtOnceNotices notices) : IDisposable
{
    private static readonly Viewer Self = Viewer.System("round");
    private readonly SemaphoreSlim _oneAtATime = new(1, 1);
    private readonly ConcurrentDictionary<int, (string Text, SystemClues Clues)> _read = new();

    /// <summary>Weighs all systems as of a moment, people's answers left out; stores nothing.</summary>
    /// <param name="asOf">Moment, UTC.</param>
    /// <param name="fresh">Clues that have just been worked out, by system; the kept ones serve for the others.</param>
    /// <param name="cancellationToken">Stops.</param>
    internal async Task<RoundResult> WorkOutAsync(DateTime asOf, IReadOnlyDictionary<int, SystemClues> fresh, CancellationToken cancellationToken)
    {
        var (_, firm, kept, _) = await ReadAsync(cancellationToken);
        return RoundAssessment.Of(firm, fresh.Values.Concat(kept.Where(row => !fresh.ContainsKey(row.SystemId)).Select(CluesOf)), asOf);
    }

    /// <summary>Weighs them, stores the findings, and lets the systems be assessed anew whose shifts have changed.</summary>
    /// <param name="asOf">Moment, UTC.</param>
    /// <param name="assess">Assesses a system with its shifts.</param>
    /// <param name="cancellationToken">Stops.</param>
    internal async Task StoreAsync(DateTime asOf, Func<int, IReadOnlyList<RoundShift>, Task> assess, CancellationToken cancellationToken)
    {
        await _oneAtATime.WaitAsync(cancellationToken);
        try
        {
            var (stored, firm, kept, marks) = await ReadAsync(cancellationToken);
            var round = RoundAssessment.Of(firm, kept.Select(CluesOf), asOf, ResultRows.Closed(marks));
            var rows = ResultRows.Findings(round.Findings, firm.Engine.Version, marks, DateOnly.FromDateTime(asOf)).ToList();
            var changed = !stored.Select(ResultRows.Content).ToHashSet().SetEquals(rows.Select(ResultRows.Content));
            await store.WriteAsync(
                Self,
                async db =>
                {
                    if (changed)
                    {
                        var standing = await db.Findings.AsNoTracking().Where(row => row.SystemId == null).ToListAsync(cancellationToken);
                        await notices.QueueAsync(db, standing, rows, DateOnly.FromDateTime(asOf), cancellationToken);
                        AssessmentKeeper.Replace(db, standing, rows, row => (row.Kind, row.AboutKey, row.FirstSeen), (a, b) => ResultRows.Content(a) == ResultRows.Content(b), (row, id) => row.Id = id, row => row.Id);
                    }

                    await db.Firm.ExecuteUpdateAsync(set => set.SetProperty(firm => firm.RoundAssessedAt, asOf), cancellationToken);
                },
                cancellationToken);

            foreach (var row in kept)
            {
                var shifts = RoundAssessment.ShiftsOf(round, CluesOf(row));
                if (KeptClues.Text(shifts) != row.Seen)
                {
                    await assess(row.SystemId, shifts);
                }
            }
        }
        finally
        {
            _oneAtATime.Release();
        }
    }

    /// <summary>Most visits told of one finding.</summary>
    public const int MostEvidence = 40;

    // A shift is judged by a month of comparisons; records that want a second look, by those of the finding itself.
    private static readonly Dictionary<string, (string Part, int DaysBefore)> Subjects = new(StringComparer.Ordinal)
    {
        [FindingKinds.InstrumentShift] = ("instrument", 30), [FindingKinds.LotShift] = ("lot", 30), [FindingKinds.SecondLook] = ("person", 0),
    };

    /// <summary>The visits that a finding about a meter, a lot or somebody's records rests on, with the days at their sites; latest first.</summary>
    /// <param name="viewer">Who asks; for reviewers alone.</param>
    /// <param name="key">The finding.</param>
    /// <param name="lastSeen">Last day on which its evidence held.</param>
    /// <param name="asOf">Moment, UTC.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>None for other findings and other viewers; at most <see cref="MostEvidence"/>.</returns>
    public async Task<IReadOnlyList<(DateOnly Day, RoundEvidence Line)>> EvidenceAsync(Viewer viewer, FindingKey key, DateOnly lastSeen, DateTime asOf, CancellationToken cancellationToken = default)
    {
        if (!FindingKey.MaySee(viewer, key.Kind) || !Subjects.TryGetValue(key.Kind, out var subject)
            || About.CodeIn(key.About, subject.Part) is not { } code)
        {
            return [];
        }

        var (_, firm, kept, _) = await ReadAsync(cancellationToken);
        DateOnly DayOf(RoundEvidence line) => DateOnly.FromDateTime(firm.Sites.TryGetValue(line.Site, out var site) ? TimeZoneInfo.ConvertTimeFromUtc(line.At, TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone)) : line.At);
        return
        [
            .. RoundAssessment.EvidenceOf(firm, kept.Select(CluesOf), asOf, key.Kind, code, key.FirstSeen)
                .Select(line => (Day: DayOf(line), line))
                .Where(pair => pair.Day >= key.FirstSeen.AddDays(-subject.DaysBefore) && pair.Day <= lastSeen)
                .Take(MostEvidence),
        ];
    }

    /// <inheritdoc />
    public void Dispose() => _oneAtATime.Dispose();

    private async Task<(List<FindingRow> Stored, FirmSetUp Firm, List<ClueRow> Kept, List<FindingMarkRow> Marks)> ReadAsync(CancellationToken cancellationToken)
    {
        var firm = await setUp.FirmAsync(Self, withRetired: true, cancellationToken);
        return await store.ReadAsync(
            Self,
            async db => (
                await db.Findings.Where(row => row.SystemId == null).ToListAsync(cancellationToken),
                firm,
                await db.Clues.OrderBy(row => row.SystemId).ToListAsync(cancellationToken),
                await db.FindingMarks.Where(row => row.SystemId == null).OrderBy(row => row.Id).ToListAsync(cancellationToken)),
            cancellationToken);
    }

    // Reading the text of every system again for each visit would cost more than weighing it.
    private SystemClues CluesOf(ClueRow row)
    {
        if (_read.TryGetValue(row.SystemId, out var read) && read.Text == row.Clues)
        {
            return read.Clues;
        }

        var clues = KeptClues.Clues(row.Clues);
        _read[row.SystemId] = (row.Clues, clues);
        return clues;
    }
}
