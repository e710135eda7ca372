using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>What a supervisor does to a visit after it was received. The documents stay as they are.</summary>
public sealed class VisitCare(LogBookStore store, AssessmentKeeper assessments, TimeProvider clock)
{
    /// <summary>Marks a visit as looked at.</summary>
    /// <param name="viewer">Who looked; a supervisor or administrator.</param>
    /// <param name="visitId">Identity of the visit.</param>
    /// <param name="note">Note; needed when something did not hold.</param>
    /// <param name="isFaulty">Whether something in it did not hold.</param>
    /// <param name="cancellationToken">Stops.</param>
    public Task<SaveOutcome> ReviewAsync(Viewer viewer, Guid visitId, string? note, bool isFaulty = false, CancellationToken cancellationToken = default) => ChangeAsync(
        viewer,
        visitId,
        note ?? (isFaulty ? "" : "-"),
        (db, change) =>
        {
            // What a look found stays found when the visit is amended and reviewed again.
            change.Row.ReviewFault |= isFaulty;
            change.Row.State = VisitState.Reviewed;
            change.Row.ReviewedAt = change.Now;
            change.Row.ReviewedBy = viewer.Who;
            db.Audit(change.Entry(AuditActs.Reviewed, why: note));
            return Task.FromResult<IReadOnlyList<Issue>>([]);
        },
        cancellationToken);

    /// <summary>Takes a visit out of all figures; it stays readable.</summary>
    public Task<SaveOutcome> VoidAsync(Viewer viewer, Guid visitId, string why, CancellationToken cancellationToken = default) => ChangeAsync(
        viewer,
        visitId,
        why,
        async (db, change) =>
        {
            if (change.Row.VoidedAt is null)
            {
                change.Row.VoidedAt = change.Now;
                change.Row.VoidedBy = viewer.Who;
                change.Row.VoidedWhy = why;
                db.Audit(change.Entry(AuditActs.Voided, why: why));
                await change.RemoveReadingsAsync(db, cancellationToken);
            }

            return [];
        },
        cancellationToken);

    /// <summary>Counts a voided visit again.</summary>
    public Task<SaveOutcome> RestoreAsync(Viewer viewer, Guid visitId, string why, CancellationToken cancellationToken = default) => ChangeAsync(
        viewer,
        visitId,
        why,
        async (db, change) =>
        {
            if (change.Row.VoidedAt is not null)
            {
                change.Row.VoidedAt = null;
                change.Row.VoidedBy = null;
                change.Row.VoidedWhy = null;
                db.Audit(change.Entry(AuditActs.Restored, why: why));
                await change.AddReadingsAsync(db, cancellationToken);
            }

            return [];
        },
        cancellationToken);

    /// <summary>Moves a visit that was written at the wrong site; its systems must exist there under the same codes.</summary>
    public Task<SaveOutcome> MoveAsync(Viewer viewer, Guid visitId, string toSite, string why, CancellationToken cancellationToken = default) => ChangeAsync(
        viewer,
        visitId,
        why,
        async (db, change) =>
        {
            var key = CodeKeys.Of(toSite);
            if (await db.Sites.SingleOrDefaultAsync(site => site.CodeKey == key, cancellationToken) is not { } site)
            {
                return [new Issue("site", "unknown-code", IntakeTexts.NoSuchSystem.In(viewer.Language, toSite, "?"))];
            }

            if (site.Id == change.Row.SiteId)
            {
                return [];
            }

            var systems = await db.Systems.Where(system => system.SiteId == site.Id).Select(system => system.CodeKey).ToListAsync(cancellationToken);
            if (change.Visit.Systems.FirstOrDefault(record => !systems.Contains(CodeKeys.Of(record.System))) is { } missing)
            {
                return [new Issue("site", "unknown-code", IntakeTexts.NoSuchSystem.In(viewer.Language, site.Code, missing.System))];
            }

            var from = await db.Sites.Where(row => row.Id == change.Row.SiteId).Select(row => row.Code).SingleAsync(cancellationToken);
            await change.RemoveReadingsAsync(db, cancellationToken);
            var original = change.Row.MovedFromSiteId ?? change.Row.SiteId;
            change.Row.MovedFromSiteId = original == site.Id ? null : original;
            change.Row.SiteId = site.Id;
            if (change.Row.CustomerId != site.CustomerId)
            {
                await ChangeCustomerAsync(db, change.Row, site.CustomerId, cancellationToken);
            }

            db.Audit(change.Entry(AuditActs.Moved, from, site.Code, why));
            if (change.Row.VoidedAt is null)
            {
                await change.AddReadingsAsync(db, cancellationToken);
            }

            return [];
        },
        cancellationToken);

    // All that belongs to the visit goes behind the other customer's wall with it. What was mailed stays with whom it was mailed to.
    private static async Task ChangeCustomerAsync(LogBookDb db, VisitRow row, int customerId, CancellationToken cancellationToken)
    {
        row.CustomerId = customerId;
        await db.VisitVersions.Where(v => v.VisitRowId == row.Id).ExecuteUpdateAsync(set => set.SetProperty(v => v.CustomerId, customerId), cancellationToken);
        await db.Photos.Where(p => p.VisitRowId == row.Id).ExecuteUpdateAsync(set => set.SetProperty(p => p.CustomerId, customerId), cancellationToken);
        await db.Conflicts.Where(c => c.VisitRowId == row.Id).ExecuteUpdateAsync(set => set.SetProperty(c => c.CustomerId, customerId), cancellationToken);
        await db.Outbox.Where(o => o.VisitRowId == row.Id && o.AcceptedAt == null).ExecuteDeleteAsync(cancellationToken);
    }

    private async Task<SaveOutcome> ChangeAsync(
        Viewer viewer, Guid visitId, string why, Func<LogBookDb, Change, Task<IReadOnlyList<Issue>>> act, CancellationToken cancellationToken)
    {
        if (!viewer.MayReview)
        {
            return new SaveOutcome.NotAllowed();
        }

        if (string.IsNullOrWhiteSpace(why))
        {
            return new SaveOutcome.Invalid([new Issue("why", "reason-needed", SetUpTexts.ReasonNeeded.In(viewer.Language))]);
        }

        var touched = new HashSet<int>();
        var outcome = await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                touched.Clear();
                if (await db.Visits.AsTracking().SingleOrDefaultAsync(row => row.VisitId == visitId, cancellationToken) is not { } visit)
                {
                    return new SaveOutcome.NotFound();
                }

                var document = await db.VisitVersions.Where(v => v.VisitRowId == visit.Id && v.Version == visit.CurrentVersion).Select(v => v.Document).SingleAsync(cancellationToken);
                var change = new Change(visit, ExchangeReader.Parse<Visit>(document), Utc.Now(clock), touched);
                var issues = await act(db, change);
                if (issues.Count > 0)
                {
                    db.ChangeTracker.Clear();
                    return new SaveOutcome.Invalid(issues);
                }

                await db.SaveChangesAsync(cancellationToken);
                await VisitWriter.MarkDueAsync(db, touched, change.Now, cancellationToken);
                return new SaveOutcome.Saved(visit.Version);
            },
            cancellationToken);
        foreach (var system in touched)
        {
            await assessments.AssessAsync(viewer, system, null, cancellationToken);
        }

        return outcome;
    }

    private sealed record Change(VisitRow Row, Visit Visit, DateTime Now, HashSet<int> Touched)
    {
        public AuditEntry Entry(string what, string? old = null, string? @new = null, string? why = null) =>
            new(what, "Visit", Row.VisitId.ToString("D"), Row.CustomerId, old, @new, why);

        public async Task RemoveReadingsAsync(LogBookDb db, CancellationToken cancellationToken)
        {
            Touched.UnionWith((await SystemsAsync(db, cancellationToken)).Values);
            await db.Readings.Where(reading => reading.VisitRowId == Row.Id).ExecuteDeleteAsync(cancellationToken);

            // Figures hang on the visit and are made anew by the assessment.
            await db.Figures.Where(figure => figure.VisitRowId == Row.Id).ExecuteDeleteAsync(cancellationToken);
        }

        public async Task AddReadingsAsync(LogBookDb db, CancellationToken cancellationToken)
        {
            var systems = await SystemsAsync(db, cancellationToken);
            Touched.UnionWith(systems.Values);
            await ReadingRows.InsertAsync(db, ReadingRows.Of(Row, Visit, code => systems[CodeKeys.Of(code)]), cancellationToken);
        }

        private async Task<Dictionary<string, int>> SystemsAsync(LogBookDb db, CancellationToken cancellationToken)
        {
            var codes = Visit.Systems.Select(record => CodeKeys.Of(record.System)).ToList();
            return await db.Systems.Where(system => system.SiteId == Row.SiteId && codes.Contains(system.CodeKey))
                .ToDictionaryAsync(system => system.CodeKey, system => system.Id, cancellationToken);
        }
    }
}
