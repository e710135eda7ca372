using LogBook.Application.Data.Conventions;
using LogBook.Application.Data;
using LogBook.Application.Notices;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Rounds;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>Keeps the stored assessments: findings and figures as the engine sees them, with people's answers laid over.</summary>
/// <remarks>
/// Reading and judging are done outside the transaction; storing is one transaction. A row that says the same keeps its number,
/// so that links to it hold and little is written. After systems have been assessed, all of the firm are weighed together; systems
/// that a changed shift of a meter or lot concerns are assessed once more with it.
/// </remarks>
public sealed class AssessmentKeeper(LogBookStore store, SetUpStore setUp, RoundKeeper round, AtOnceNotices notices, TimeProvider clock)
{
    private static readonly Viewer Self = Viewer.System("assessment");

    // What follows from records that have not changed; the verifier and whatever else asks the domain itself goes without.
    private readonly KeptDocuments _documents = new();
    private readonly AssessmentMemo _memo = new();

    /// <summary>All that is recorded of a system, in every version; voided visits are left out. Null when the viewer knows no such system.</summary>
    public async Task<SystemHistory?> HistoryAsync(Viewer viewer, string site, string system, CancellationToken cancellationToken = default)
    {
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        if (firm.System(site, system) is null)
        {
            return null;
        }

        var key = CodeKeys.Of(site);
        var records = await store.ReadAsync(
            viewer,
            async db => await SiteRecords.ReadAsync(db, await db.Sites.Where(row => row.CodeKey == key).Select(row => row.Id).SingleOrDefaultAsync(cancellationToken), cancellationToken),
            cancellationToken);
        return records is null ? null : SystemHistory.From(firm, site, system, records.Versions, records.NotificationsOf(system));
    }

    /// <summary>Assesses one system as of a moment (now when null) and stores the result.</summary>
    /// <returns>Whether the viewer knows the system.</returns>
    public async Task<bool> AssessAsync(Viewer viewer, int systemId, DateTime? asOf = null, CancellationToken cancellationToken = default)
    {
        var siteId = await store.ReadAsync(viewer, db => db.Systems.Where(row => row.Id == systemId).Select(row => row.SiteId).SingleOrDefaultAsync(cancellationToken), cancellationToken);
        var moment = Utc.Of(asOf ?? Utc.Now(clock));
        if (siteId == 0 || await AssessSiteAsync(viewer, siteId, row => row.Id == systemId, moment, null, anew: false, cancellationToken) == 0)
        {
            return false;
        }

        await AssessRoundAsync(moment, anew: false, cancellationToken);
        return true;
    }

    /// <summary>Weighs all systems together as of a moment (now when null) and stores what that changes.</summary>
    public Task AssessRoundAsync(DateTime? asOf = null, CancellationToken cancellationToken = default) => AssessRoundAsync(Utc.Of(asOf ?? Utc.Now(clock)), anew: false, cancellationToken);

    private Task AssessRoundAsync(DateTime moment, bool anew, CancellationToken cancellationToken) =>
        round.StoreAsync(moment, (system, shifts) => AssessWithAsync(system, shifts, moment, anew, cancellationToken), cancellationToken);

    /// <summary>Assesses every system whose records, rules or day have changed since its stored assessment.</summary>
    /// <returns>How many were assessed.</returns>
    public async Task<int> AssessDueAsync(Viewer viewer, DateTime? asOf = null, CancellationToken cancellationToken = default)
    {
        var now = asOf ?? Utc.Now(clock);
        var engine = (await setUp.FirmAsync(viewer, withRetired: true, cancellationToken)).Engine;
        var waiting = await SitesWithSummariesOutAsync(viewer, engine.Thresholds, now, cancellationToken);
        return await AssessAsync(
            viewer,
            (system, site) => IsDue(system, site, engine, now) || waiting.Exists(late => late.SiteId == site.Id && system.AssessedAt < late.Since),
            asOf,
            anew: false,
            cancellationToken);
    }

    /// <summary>Assesses some systems, and all of the firm together once.</summary>
    /// <returns>How many were assessed.</returns>
    public Task<int> AssessSystemsAsync(Viewer viewer, IReadOnlySet<int> systems, CancellationToken cancellationToken = default) =>
        AssessAsync(viewer, (system, _) => systems.Contains(system.Id), null, anew: false, cancellationToken);

    /// <summary>Assesses every system anew from its documents, without anything that is remembered.</summary>
    /// <returns>How many were assessed.</returns>
    public Task<int> AssessAllAsync(Viewer viewer, DateTime? asOf = null, CancellationToken cancellationToken = default) =>
        AssessAsync(viewer, (_, _) => true, asOf, anew: true, cancellationToken);

    // A summary that the mail server has not taken opens a finding by the hour, not by the day.
    private Task<List<(int SiteId, DateTime Since)>> SitesWithSummariesOutAsync(Viewer viewer, FindingThresholds thresholds, DateTime now, CancellationToken cancellationToken) => store.ReadAsync(
        viewer,
        async db =>
        {
            var mails = await db.Outbox.Where(mail => mail.Kind == OutboxKinds.VisitSummary && mail.AcceptedAt == null && mail.GivenUpAt == null)
                .Join(db.Visits, mail => mail.VisitRowId, visit => visit.Id, (mail, visit) => new { mail.CreatedAt, visit.SiteId, visit.ArrivedAt, visit.LeftAt })
                .Join(db.Sites, mail => mail.SiteId, site => site.Id, (mail, site) => new { mail.CreatedAt, mail.SiteId, mail.ArrivedAt, mail.LeftAt, site.Document })
                .ToListAsync(cancellationToken);
            return mails
                .SelectMany(mail => new[]
                {
                    (mail.SiteId, Since: mail.CreatedAt.AddHours(thresholds.SummaryHours.Value)),
                    (mail.SiteId, Since: PromisedBy(ExchangeReader.Parse<Site>(mail.Document), mail.LeftAt ?? mail.ArrivedAt) ?? (mail.LeftAt ?? mail.ArrivedAt).AddHours(thresholds.SummaryHours.Value)),
                })
                .Where(mail => mail.Since <= now)
                .ToList();
        },
        cancellationToken);

    private static DateTime? PromisedBy(Site site, DateTime left) => SummaryPromise.DueOf(site, TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone), left);

    private static bool IsDue(SystemRow system, SiteRow site, EngineSettings engine, DateTime now)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
        return system.AssessmentDue is not null || system.EngineVersion != engine.For(site.Code, system.Code).Version || system.Ahead is null || system.AssessedAt is not { } assessed
            || TimeZoneInfo.ConvertTimeFromUtc(assessed, zone).Date < TimeZoneInfo.ConvertTimeFromUtc(now, zone).Date;
    }

    private async Task<int> AssessAsync(Viewer viewer, Func<SystemRow, SiteRow, bool> which, DateTime? asOf, bool anew, CancellationToken cancellationToken)
    {
        var all = await store.ReadAsync(
            viewer,
            async db => await db.Systems.Join(db.Sites, system => system.SiteId, site => site.Id, (system, site) => new { system, site }).ToListAsync(cancellationToken),
            cancellationToken);
        var count = 0;
        var moment = Utc.Of(asOf ?? Utc.Now(clock));

        // Sites share nothing but the way to the database, and there the store lets one write at a time.
        await Parallel.ForEachAsync(
            all.Where(pair => which(pair.system, pair.site)).GroupBy(pair => pair.system.SiteId, pair => pair.system.Id),
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancellationToken },
            async (site, stop) =>
            {
                var systems = site.ToHashSet();
                Interlocked.Add(ref count, await AssessSiteAsync(viewer, site.Key, row => systems.Contains(row.Id), moment, null, anew, stop));
            });
        if (count > 0)
        {
            await AssessRoundAsync(moment, anew, cancellationToken);
        }

        return count;
    }

    private async Task AssessWithAsync(int systemId, IReadOnlyList<RoundShift> shifts, DateTime moment, bool anew, CancellationToken cancellationToken)
    {
        var siteId = await store.ReadAsync(Self, db => db.Systems.Where(row => row.Id == systemId).Select(row => row.SiteId).SingleAsync(cancellationToken), cancellationToken);
        await AssessSiteAsync(Self, siteId, row => row.Id == systemId, moment, shifts, anew, cancellationToken);
    }

    private async Task<int> AssessSiteAsync(
        Viewer viewer, int siteId, Func<SystemRow, bool> which, DateTime moment, IReadOnlyList<RoundShift>? shifts, bool anew, CancellationToken cancellationToken)
    {
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var records = await store.ReadAsync(viewer, db => SiteRecords.ReadAsync(db, siteId, cancellationToken, anew ? null : _documents), cancellationToken);
        if (records is null)
        {
            return 0;
        }

        var beside = await store.ReadAsync(viewer, db => SystemInputs.ReadAsync(db, siteId, cancellationToken), cancellationToken);
        var assessed = records.Systems.Where(which)
            .Select(system =>
            {
                var history = SystemHistory.From(firm, records.Site.Code, system.Code, records.Versions, records.NotificationsOf(system.Code));
                var inputs = beside.For(system.Id, shifts);
                return (System: system, Today: history.DayOf(moment), Result: anew ? Assessment.Of(history, moment, inputs) : _memo.Of(history, moment, inputs), inputs.Shifts);
            })
            .ToList();
        await store.WriteAsync(
            viewer,
            async db =>
            {
                db.ChangeTracker.AutoDetectChangesEnabled = false;
                foreach (var (system, today, result, seen) in assessed)
                {
                    await StoreAsync(db, system, today, result, seen, records.VisitRows, cancellationToken);
                }
            },
            cancellationToken);
        return assessed.Count;
    }

    private async Task StoreAsync(
        LogBookDb db, SystemRow system, DateOnly today, SystemAssessment result, IReadOnlyList<RoundShift> seen, IReadOnlyDictionary<Guid, int> visits, CancellationToken cancellationToken)
    {
        var marks = await db.FindingMarks.AsNoTracking().Where(row => row.SystemId == system.Id).OrderBy(row => row.Id).ToListAsync(cancellationToken);
        var before = await db.Findings.AsNoTracking().Where(row => row.SystemId == system.Id).ToListAsync(cancellationToken);
        var after = ResultRows.Findings(system, result, marks, today).ToList();
        await notices.QueueAsync(db, before, after, today, cancellationToken);
        Replace(
            db,
            before,
            after,
            row => (row.Kind, row.AboutKey, row.FirstSeen),
            (a, b) => ResultRows.Content(a) == ResultRows.Content(b),
            (row, id) => row.Id = id,
            row => row.Id);
        Replace(
            db,
            await db.Figures.AsNoTracking().Where(row => row.SystemId == system.Id).ToListAsync(cancellationToken),
            ResultRows.Figures(system, result, visits),
            row => (row.VisitRowId, row.Code, row.About, row.From, row.To),
            (a, b) => ResultRows.Content(a) == ResultRows.Content(b),
            (row, id) => row.Id = id,
            row => row.Id);

        Replace(
            db,
            await db.Clues.AsNoTracking().Where(row => row.SystemId == system.Id).ToListAsync(cancellationToken),
            [KeptClues.Row(system, result, seen)],
            row => row.SystemId,
            KeptClues.Same,
            (row, id) => row.Id = id,
            row => row.Id);

        Replace(
            db,
            await db.Clocks.AsNoTracking().Where(row => row.SystemId == system.Id).ToListAsync(cancellationToken),
            [KeptClocks.Row(system, result)],
            row => row.SystemId,
            KeptClocks.Same,
            (row, id) => row.Id = id,
            row => row.Id);

        // Records that came in while this was judged keep the system due.
        var ahead = KeptAhead.Text(result.Ahead);
        await db.Systems.Where(row => row.Id == system.Id).ExecuteUpdateAsync(
            set => set
                .SetProperty(row => row.AssessedAt, result.AsOf)
                .SetProperty(row => row.EngineVersion, result.EngineVersion)
                .SetProperty(row => row.Ahead, ahead)
                .SetProperty(row => row.AssessmentDue, row => row.AssessmentDue == system.AssessmentDue ? null : row.AssessmentDue),
            cancellationToken);
    }

    internal static void Replace<TRow, TKey>(
        LogBookDb db, List<TRow> before, IEnumerable<TRow> after, Func<TRow, TKey> key, Func<TRow, TRow, bool> same, Action<TRow, int> setId, Func<TRow, int> getId)
        where TRow : class
        where TKey : notnull
    {
        var old = before.GroupBy(key).ToDictionary(group => group.Key, group => new Queue<TRow>(group));
        var added = new List<TRow>();
        foreach (var row in after)
        {
            if (old.TryGetValue(key(row), out var candidates) && candidates.TryDequeue(out var standing))
            {
                if (!same(standing, row))
                {
                    setId(row, getId(standing));
                    db.Update(row);
                }
            }
            else
            {
                added.Add(row);
            }
        }

        ManyRows.Add(db, added);

        db.RemoveRange(old.Values.SelectMany(rest => rest));
    }
}
