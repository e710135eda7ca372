using System.Globalization;
using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Rounds;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Audit;

/// <summary>Checks that the records are what they were.</summary>
public sealed class Verifier(LogBookStore store, SetUpStore setUp)
{
    private const int MostFaults = 200;

    /// <summary>Integrity of the file, references, audit chain, hashes of the documents and pictures, readings and stored results against rebuilt ones.</summary>
    /// <param name="viewer">Who looks; somebody who reviews, over all customers.</param>
    /// <param name="photos">Where pictures are kept; null to leave them out.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<Verification> VerifyAsync(Viewer viewer, PhotoFolder? photos = null, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview || viewer.CustomerIds is not null)
        {
            throw new UnauthorizedAccessException("A chain is followed over all customers.");
        }

        var faults = new List<string>();
        await store.ReadAsync(viewer, db => DatabaseAsync(db, faults, cancellationToken), cancellationToken);
        var audit = await store.ReadAsync(viewer, db => AuditAsync(db, faults, cancellationToken), cancellationToken);
        var documents = await store.ReadAsync(viewer, db => DocumentsAsync(db, faults, cancellationToken), cancellationToken);
        var pictures = photos is null ? null : (int?)await store.ReadAsync(viewer, db => PictureCheck.OfAsync(db, photos, faults, cancellationToken), cancellationToken);
        var systems = await ResultsAsync(viewer, faults, cancellationToken);
        return new Verification([.. faults.Take(MostFaults)], audit, documents, pictures, systems);
    }

    /// <summary>Follows the audit chain alone.</summary>
    /// <returns>Faults, each in one line.</returns>
    public Task<IReadOnlyList<string>> VerifyAuditAsync(Viewer viewer, CancellationToken cancellationToken = default) => store.ReadAsync<IReadOnlyList<string>>(
        viewer with { CustomerIds = viewer.MayReview ? viewer.CustomerIds : [] },
        async db =>
        {
            var faults = new List<string>();
            await AuditAsync(db, faults, cancellationToken);
            return faults;
        },
        cancellationToken);

    private static async Task<bool> DatabaseAsync(LogBookDb db, List<string> faults, CancellationToken cancellationToken)
    {
        if (!db.Database.IsSqlite())
        {
            // PostgreSQL checks pages and references itself; there is no statement to ask for it.
            return true;
        }

        foreach (var said in await db.Database.SqlQuery<string>($"SELECT integrity_check AS Value FROM pragma_integrity_check").ToListAsync(cancellationToken))
        {
            if (said != "ok")
            {
                faults.Add("database: " + said);
            }
        }

        foreach (var table in await db.Database.SqlQuery<string>($"SELECT \"table\" AS Value FROM pragma_foreign_key_check").ToListAsync(cancellationToken))
        {
            faults.Add("reference: a row of " + table + " refers to nothing");
        }

        return true;
    }

    private static async Task<long> AuditAsync(LogBookDb db, List<string> faults, CancellationToken cancellationToken)
    {
        var (count, previous) = (0L, AuditChain.Start);
        await foreach (var row in db.AuditTrail.OrderBy(row => row.Id).AsAsyncEnumerable().WithCancellation(cancellationToken))
        {
            count++;
            if (row.Id != count)
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"audit {count}: missing, {row.Id} follows"));
                count = row.Id;
            }

            if (row.Previous != previous || row.Hash != AuditChain.HashOf(row))
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"audit {row.Id}: changed, or a row before it was"));
            }

            previous = row.Hash;
        }

        var head = await db.AuditHead.SingleOrDefaultAsync(cancellationToken);
        if ((head?.Count ?? 0) != count || (head?.Hash ?? AuditChain.Start) != previous)
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"audit: ends at {count}, but should end at {head?.Count ?? 0} with another hash or number"));
        }

        var guards = db.Database.IsSqlite()
            ? await db.Database.SqlQuery<int>($"SELECT count(*) AS Value FROM sqlite_master WHERE type = 'trigger' AND tbl_name = 'AuditTrail'").SingleAsync(cancellationToken)
            : await db.Database.SqlQuery<int>($"SELECT count(*)::int AS \"Value\" FROM pg_trigger WHERE tgrelid = '\"AuditTrail\"'::regclass AND NOT tgisinternal AND tgenabled <> 'D'").SingleAsync(cancellationToken);
        if (guards < 2)
        {
            faults.Add("audit: the guards against changes are gone");
        }

        return count;
    }

    private static async Task<int> DocumentsAsync(LogBookDb db, List<string> faults, CancellationToken cancellationToken)
    {
        var rows = await db.Visits.Join(db.VisitVersions, visit => visit.Id, version => version.VisitRowId, (visit, version) => new { visit.VisitId, version }).ToListAsync(cancellationToken);
        foreach (var row in rows)
        {
            if (VisitDocument.Sha256OfCanonical(row.version.Document) != row.version.Sha256)
            {
                faults.Add($"visit {row.VisitId:D} version {row.version.Version}: the document is not what its hash says");
            }
        }

        // The hash beside a document could be changed with it; the audit trail holds it too, chained.
        var audited = (await db.AuditTrail.Where(row => row.Entity == "Visit" && (row.What == AuditActs.Received || row.What == AuditActs.Amended))
            .Select(row => new { row.Key, row.New }).ToListAsync(cancellationToken)).Select(row => (row.Key, row.New)).ToHashSet();
        foreach (var row in rows.Where(row => !audited.Remove((row.VisitId.ToString("D"), row.version.Sha256))))
        {
            faults.Add($"visit {row.VisitId:D} version {row.version.Version}: the audit trail does not know this document");
        }

        foreach (var (key, _) in audited)
        {
            faults.Add($"visit {key}: a version that the audit trail knows is missing");
        }

        return rows.Count;
    }

    private async Task<int> ResultsAsync(Viewer viewer, List<string> faults, CancellationToken cancellationToken)
    {
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var sites = await store.ReadAsync(viewer, async db => await db.Sites.OrderBy(site => site.CodeKey).Select(site => site.Id).ToListAsync(cancellationToken), cancellationToken);
        var count = 0;
        var rebuilt = new List<Rebuilt>();
        foreach (var id in sites)
        {
            count += await store.ReadAsync(viewer, db => SiteAsync(db, firm, id, rebuilt, faults, cancellationToken), cancellationToken);
        }

        await store.ReadAsync(
            viewer,
            async db =>
            {
                await RoundAsync(db, firm, rebuilt, faults, cancellationToken);
                return true;
            },
            cancellationToken);
        return count;
    }

    // Where something is still due, the round will be made anew anyway; systems are then held to the shifts they have seen.
    private static async Task RoundAsync(LogBookDb db, FirmSetUp firm, List<Rebuilt> rebuilt, List<string> faults, CancellationToken cancellationToken)
    {
        RoundResult? round = null;
        if (rebuilt.Count > 0 && rebuilt.Count == await db.Systems.CountAsync(cancellationToken)
            && await db.Firm.Select(row => row.RoundAssessedAt).SingleOrDefaultAsync(cancellationToken) is { } asOf)
        {
            var marks = await db.FindingMarks.Where(row => row.SystemId == null).OrderBy(row => row.Id).ToListAsync(cancellationToken);
            round = RoundAssessment.Of(firm, rebuilt.Select(system => system.Alone.Clues), asOf, ResultRows.Closed(marks));
            var stored = await db.Findings.Where(row => row.SystemId == null).ToListAsync(cancellationToken);
            if (!Same(stored.Select(ResultRows.Content), ResultRows.Findings(round.Findings, firm.Engine.Version, marks, DateOnly.FromDateTime(asOf)).Select(ResultRows.Content)))
            {
                faults.Add("the stored findings about meters, lots and people are not what the documents say");
            }
        }

        foreach (var system in rebuilt)
        {
            var kept = await db.Clues.SingleOrDefaultAsync(row => row.SystemId == system.Row.Id, cancellationToken);
            var shifts = round is null ? KeptClues.Shifts(kept?.Seen) : RoundAssessment.ShiftsOf(round, system.Alone.Clues);
            var result = shifts.Count == 0 ? system.Alone : Assessment.Of(system.History, system.Row.AssessedAt!.Value, system.Inputs with { Shifts = shifts });
            if (kept is null || !KeptClues.Same(kept, KeptClues.Row(system.Row, result, shifts)))
            {
                faults.Add($"{system.Where}: what is kept for the assessment of all systems is not what the documents say");
            }

            var clocks = await db.Clocks.SingleOrDefaultAsync(row => row.SystemId == system.Row.Id, cancellationToken);
            if (clocks is null || !KeptClocks.Same(clocks, KeptClocks.Row(system.Row, result)))
            {
                faults.Add($"{system.Where}: the clocks are not what the documents say");
            }

            var marks = await db.FindingMarks.Where(row => row.SystemId == system.Row.Id).OrderBy(row => row.Id).ToListAsync(cancellationToken);
            var findings = await db.Findings.Where(row => row.SystemId == system.Row.Id).ToListAsync(cancellationToken);
            if (!Same(findings.Select(ResultRows.Content), ResultRows.Findings(system.Row, result, marks, system.History.DayOf(result.AsOf)).Select(ResultRows.Content)))
            {
                faults.Add($"{system.Where}: the stored findings are not what the documents say");
            }
        }
    }

    private static async Task<int> SiteAsync(LogBookDb db, FirmSetUp firm, int siteId, List<Rebuilt> all, List<string> faults, CancellationToken cancellationToken)
    {
        var records = await SiteRecords.ReadAsync(db, siteId, cancellationToken);
        if (records is null)
        {
            return 0;
        }

        await ReadingsAsync(db, records, faults, cancellationToken);

        // What is due will be made anew anyway; another version of the rules, or other settings, may well say something else.
        var current = records.Systems.Where(system => system.AssessmentDue is null && system.EngineVersion == firm.Engine.For(records.Site.Code, system.Code).Version && system.AssessedAt is not null).ToList();
        var beside = await SystemInputs.ReadAsync(db, siteId, cancellationToken);
        foreach (var system in current)
        {
            var history = SystemHistory.From(firm, records.Site.Code, system.Code, records.Versions, records.NotificationsOf(system.Code));
            var inputs = beside.For(system.Id, []);
            var rebuilt = Assessment.Of(history, system.AssessedAt!.Value, inputs);
            all.Add(new Rebuilt(system, history, inputs, rebuilt));
            var figures = await db.Figures.Where(row => row.SystemId == system.Id).ToListAsync(cancellationToken);
            if (!Same(figures.Select(ResultRows.Content), ResultRows.Figures(system, rebuilt, records.VisitRows).Select(ResultRows.Content)))
            {
                faults.Add($"{records.Site.Code}/{system.Code}: the stored figures are not what the documents say");
            }

            if (system.Ahead is not null && system.Ahead != KeptAhead.Text(rebuilt.Ahead))
            {
                faults.Add($"{records.Site.Code}/{system.Code}: what is kept of its clocks and drums is not what the documents say");
            }
        }

        return current.Count;
    }

    private static async Task ReadingsAsync(LogBookDb db, SiteRecords records, List<string> faults, CancellationToken cancellationToken)
    {
        var visits = await db.Visits.Where(visit => visit.SiteId == records.Site.Id).ToListAsync(cancellationToken);
        var stored = (await db.Readings.Join(db.Visits.Where(visit => visit.SiteId == records.Site.Id), reading => reading.VisitRowId, visit => visit.Id, (reading, _) => reading)
            .ToListAsync(cancellationToken)).ToLookup(reading => reading.VisitRowId);
        var latest = records.Versions.GroupBy(visit => visit.Id).ToDictionary(group => group.Key, group => group.MaxBy(visit => visit.Version ?? 1)!);
        foreach (var row in visits)
        {
            IEnumerable<ReadingRow> expected = latest.TryGetValue(row.VisitId, out var visit)
                ? ReadingRows.Of(row, visit, code => records.Systems.First(system => system.CodeKey == CodeKeys.Of(code)).Id)
                : [];
            if (!Same(stored[row.Id].Select(Content), expected.Select(Content)))
            {
                faults.Add($"visit {row.VisitId:D}: the stored readings are not what the document says");
            }
        }
    }

    private static (int, string, string, ReadingSource?, ReadingPhase?, DateTime, double?, string, string?, string?, int, string?) Content(ReadingRow row) =>
        (row.SystemId, row.Test, row.SampleAt, row.Source, row.Phase, row.ArrivedAt, row.Value, row.Unit, row.Qualifier, row.NotTaken, row.Place, row.Lot);

    private static bool Same<T>(IEnumerable<T> a, IEnumerable<T> b)
        where T : notnull
    {
        var counts = a.GroupBy(item => item).ToDictionary(group => group.Key, group => group.Count());
        foreach (var item in b)
        {
            if (!counts.TryGetValue(item, out var left) || left == 0)
            {
                return false;
            }

            counts[item] = left - 1;
        }

        return counts.Values.All(left => left == 0);
    }

    private sealed record Rebuilt(SystemRow Row, SystemHistory History, AssessmentInputs Inputs, SystemAssessment Alone)
    {
        public string Where => $"{History.Site.Code}/{History.System.Code}";
    }
}
