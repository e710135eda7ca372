using System.Globalization;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Clocks;

/// <summary>Notifications of authorities: written down, taken back with a reason, never deleted.</summary>
/// <remarks>
/// Kept among the set-up records for their version and audit. A notice makes its system due: the countdown is met from then on.
/// </remarks>
public sealed class NoticeStore(LogBookStore store, TimeProvider clock)
{
    private const string Entity = "Notice";
    private const int LongestText = 1000;

    /// <summary>Writes a notification down, in the place of one that was written before for the same result and rule.</summary>
    /// <param name="viewer">Who writes it down; anybody of the firm.</param>
    /// <param name="site">Code of the site.</param>
    /// <param name="system">Code of the system.</param>
    /// <param name="told">Who told whom, of what, when and how.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> RecordAsync(Viewer viewer, string site, string system, Notification told, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayEnterVisits)
        {
            return new SaveOutcome.NotAllowed();
        }

        var now = Utc.Now(clock);
        var clean = told with { By = told.By.Trim(), To = told.To.Trim(), How = told.How.Trim(), At = Utc.Of(told.At) };
        var issues = new List<Issue>();
        void Need(bool isMissing, string path, LogBook.Domain.Languages.Text text)
        {
            if (isMissing)
            {
                issues.Add(new Issue(path, "needed", text.In(viewer.Language)));
            }
        }

        Need(clean.By.Length is 0 or > LongestText, "by", NoticeTexts.ByNeeded);
        Need(clean.To.Length is 0 or > LongestText, "to", NoticeTexts.ToNeeded);
        Need(clean.How.Length is 0 or > LongestText, "how", NoticeTexts.HowNeeded);
        Need(clean.At > now, "at", NoticeTexts.NotAhead);
        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                if (await SystemAsync(db, site, system, clean.Visit, cancellationToken) is not { } place)
                {
                    return new SaveOutcome.NotFound();
                }

                if (clean.At < place.ArrivedAt)
                {
                    return new SaveOutcome.Invalid([.. issues, new Issue("at", "needed", NoticeTexts.NotBefore.In(viewer.Language))]);
                }

                if (await ReceivedAsync(db, place, clean, cancellationToken) is { } received && clean.At < received)
                {
                    return new SaveOutcome.Invalid([.. issues, new Issue("at", "before-receipt", NoticeTexts.NotBeforeReceipt.In(viewer.Language, Said(clean.At), Said(received)))]);
                }

                if (issues.Count > 0)
                {
                    return new SaveOutcome.Invalid(issues);
                }

                var notice = new Notice(place.Site, place.System, clean, viewer.Who, now);
                var key = CodeKeys.Of(notice.Key);
                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(known => known.Kind == SetUpKind.Notice && known.CodeKey == key, cancellationToken);
                var before = row is { RetiredAt: null } ? row.Document : null;
                if (row is null)
                {
                    row = new SetUpRow { Kind = SetUpKind.Notice, Code = notice.Key, CodeKey = key, Name = clean.Rule };
                    db.SetUp.Add(row);
                }

                (row.Document, row.RetiredAt, row.RetiredWhy) = (notice.Write(), null, null);
                db.Audit(new AuditEntry(before is null ? AuditActs.Added : AuditActs.Changed, Entity, notice.Key, place.CustomerId, before, row.Document));
                await MarkDueAsync(db, place.SystemId, now, cancellationToken);
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    /// <summary>Takes a notice back that was written down by mistake.</summary>
    public async Task<SaveOutcome> TakeBackAsync(Viewer viewer, string site, string system, Guid visit, string test, string rule, string why, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview)
        {
            return new SaveOutcome.NotAllowed();
        }

        if (string.IsNullOrWhiteSpace(why))
        {
            return new SaveOutcome.Invalid([new Issue("why", "reason-needed", SetUpTexts.ReasonNeeded.In(viewer.Language))]);
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var key = CodeKeys.Of(Notice.KeyOf(site, system, visit, test, rule));
                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(known => known.Kind == SetUpKind.Notice && known.CodeKey == key && known.RetiredAt == null, cancellationToken);
                if (row is null || await SystemAsync(db, site, system, visit, cancellationToken) is not { } place)
                {
                    return new SaveOutcome.NotFound();
                }

                var now = Utc.Now(clock);
                (row.RetiredAt, row.RetiredWhy) = (now, why.Trim());
                db.Audit(new AuditEntry(AuditActs.Retired, Entity, row.Code, place.CustomerId, Old: row.Document, Why: why.Trim()));
                await MarkDueAsync(db, place.SystemId, now, cancellationToken);
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    private static async Task<Place?> SystemAsync(LogBookDb db, string site, string system, Guid visit, CancellationToken cancellationToken)
    {
        var (siteKey, systemKey) = (CodeKeys.Of(site), CodeKeys.Of(system));
        return await db.Systems.Where(row => row.CodeKey == systemKey)
            .Join(db.Sites.Where(row => row.CodeKey == siteKey), row => row.SiteId, row => row.Id, (inner, owner) => new { inner, owner })
            .Join(db.Visits.Where(row => row.VisitId == visit), pair => pair.owner.Id, row => row.SiteId, (pair, row) => new Place(pair.inner.Id, pair.inner.CustomerId, pair.owner.Code, pair.inner.Code, row.ArrivedAt))
            .SingleOrDefaultAsync(cancellationToken);
    }

    private static string Said(DateTime moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    // When the result came in, by the visit as it stands; null where the visit holds no result of the test.
    private static async Task<DateTime?> ReceivedAsync(LogBookDb db, Place place, Notification told, CancellationToken cancellationToken)
    {
        var document = await db.Visits.Where(row => row.VisitId == told.Visit)
            .Join(db.VisitVersions, row => row.Id, version => version.VisitRowId, (row, version) => new { row.CurrentVersion, version.Version, version.Document })
            .Where(pair => pair.Version == pair.CurrentVersion).Select(pair => pair.Document).SingleOrDefaultAsync(cancellationToken);
        if (document is null)
        {
            return null;
        }

        var visit = Documents.Visit(document);
        var system = CodeKeys.Of(place.System);
        return visit.Systems.FirstOrDefault(record => CodeKeys.Of(record.System) == system) is { } record ? Duties.ToldFrom(new SystemVisit(visit, record), told.Test) : null;
    }

    private static Task MarkDueAsync(LogBookDb db, int systemId, DateTime now, CancellationToken cancellationToken) =>
        db.Systems.Where(row => row.Id == systemId).ExecuteUpdateAsync(set => set.SetProperty(row => row.AssessmentDue, now), cancellationToken);

    private sealed record Place(int SystemId, int CustomerId, string Site, string System, DateTime ArrivedAt);
}
