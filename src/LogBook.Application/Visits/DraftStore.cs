using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>Visits that people are still writing on the server; each sees their own.</summary>
public sealed class DraftStore(LogBookStore store, DraftPhotos photos, TimeProvider clock)
{
    /// <summary>Saves a draft. A version of 0 is a new one; another version than the stored one is refused.</summary>
    public async Task<SaveOutcome> SaveAsync(Viewer viewer, Guid visitId, string siteCode, string document, int expectedVersion, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayEnterVisits || viewer.UserId is not { } userId)
        {
            return new SaveOutcome.NotAllowed();
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var key = CodeKeys.Of(siteCode);
                if (await db.Sites.Where(s => s.CodeKey == key).Select(s => new { s.Id, s.CustomerId }).SingleOrDefaultAsync(cancellationToken) is not { } site)
                {
                    return new SaveOutcome.NotFound();
                }

                var row = await db.Drafts.AsTracking().SingleOrDefaultAsync(d => d.UserId == userId && d.VisitId == visitId, cancellationToken);
                if (row is null && expectedVersion > 0)
                {
                    return new SaveOutcome.NotFound();
                }

                if (row is not null && row.Version != expectedVersion)
                {
                    return new SaveOutcome.ChangedMeanwhile(row.Document, row.Version);
                }

                if (row is null)
                {
                    row = new DraftRow { UserId = userId, VisitId = visitId };
                    db.Drafts.Add(row);
                }

                row.SiteId = site.Id;
                row.CustomerId = site.CustomerId;
                row.Document = document;
                row.UpdatedAt = Utc.Now(clock);
                await db.SaveChangesAsync(cancellationToken);
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    /// <summary>One of the viewer's own drafts, or null.</summary>
    public async Task<Draft?> FindAsync(Viewer viewer, Guid visitId, CancellationToken cancellationToken = default) =>
        (await ListAsync(viewer, cancellationToken)).FirstOrDefault(draft => draft.VisitId == visitId);

    /// <summary>The viewer's own drafts, latest first.</summary>
    public Task<IReadOnlyList<Draft>> ListAsync(Viewer viewer, CancellationToken cancellationToken = default) => store.ReadAsync<IReadOnlyList<Draft>>(
        viewer,
        async db => await db.Drafts.Where(d => d.UserId == viewer.UserId)
            .Join(db.Sites, d => d.SiteId, s => s.Id, (d, s) => new { d, s.Code })
            .OrderByDescending(p => p.d.UpdatedAt)
            .Select(p => new Draft(p.d.VisitId, p.Code, p.d.Document, p.d.UpdatedAt, p.d.Version)).ToListAsync(cancellationToken),
        cancellationToken);

    /// <summary>Deletes a draft whose visit has been received with this hash; any other is kept.</summary>
    /// <returns>Whether it was deleted.</returns>
    public Task<bool> DeleteReceivedAsync(Viewer viewer, Guid visitId, string receivedSha256, CancellationToken cancellationToken = default) => store.WriteAsync(
        viewer,
        async db =>
        {
            var received = await db.Visits.Where(v => v.VisitId == visitId)
                .Join(db.VisitVersions, v => v.Id, version => version.VisitRowId, (_, version) => version.Sha256)
                .AnyAsync(sha => sha == receivedSha256, cancellationToken);
            return received && await db.Drafts.Where(d => d.UserId == viewer.UserId && d.VisitId == visitId).ExecuteDeleteAsync(cancellationToken) > 0;
        },
        cancellationToken);

    /// <summary>Throws a draft and its pictures away because its writer says so. Its text stays in the audit trail.</summary>
    /// <returns>Whether there was one.</returns>
    public async Task<bool> DiscardAsync(Viewer viewer, Guid visitId, string why, CancellationToken cancellationToken = default)
    {
        var document = await store.WriteAsync(
            viewer,
            async db =>
            {
                var row = await db.Drafts.AsTracking().SingleOrDefaultAsync(d => d.UserId == viewer.UserId && d.VisitId == visitId, cancellationToken);
                if (row is null)
                {
                    return null;
                }

                db.Drafts.Remove(row);
                db.Audit(new AuditEntry(AuditActs.Discarded, "Draft", visitId.ToString("D"), row.CustomerId, row.Document, null, why));
                return row.Document;
            },
            cancellationToken);
        if (document is null)
        {
            return false;
        }

        await photos.RemoveOfAsync(viewer.UserId!.Value, document, cancellationToken);
        return true;
    }
}
