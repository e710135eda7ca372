using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Rescue;

/// <summary>
/// Drafts out of rescue files. Each becomes a draft of the supervisor who takes it in; the technician in it stays who entered it, and a
/// record beside it says where it came from.
/// </summary>
public sealed class RescuedDraftStore(LogBookStore store, DraftPhotos photos, TimeProvider clock)
{
    private const string Entity = "RescuedDraft";

    /// <summary>Takes a draft in.</summary>
    /// <param name="viewer">A supervisor or administrator.</param>
    /// <param name="visitId">Identity of the visit.</param>
    /// <param name="siteCode">Code of its site.</param>
    /// <param name="document">The draft as the form reads it.</param>
    /// <param name="origin">Where it comes from; who and when are set here.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>What became of it.</returns>
    public async Task<RescueTaken> TakeAsync(Viewer viewer, Guid visitId, string siteCode, string document, RescuedDraft origin, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview || viewer.UserId is not { } userId)
        {
            return RescueTaken.NoSite;
        }

        return await store.WriteAsync(
            viewer,
            async db =>
            {
                var key = CodeKeys.Of(siteCode);
                if (await db.Sites.Where(s => s.CodeKey == key).Select(s => new { s.Id, s.CustomerId }).SingleOrDefaultAsync(cancellationToken) is not { } site)
                {
                    return RescueTaken.NoSite;
                }

                var isHere = await db.Visits.AnyAsync(visit => visit.VisitId == visitId, cancellationToken);
                if (isHere != origin.Amends)
                {
                    return isHere ? RescueTaken.VisitIsHere : RescueTaken.NothingToAmend;
                }

                var code = visitId.ToString("D");
                var record = await RecordAsync(db, visitId, cancellationToken);
                if (record is not null && RescuedDraft.Read(record.Document).Holder is var holder && await DraftOf(db, holder, visitId).AnyAsync(cancellationToken))
                {
                    return RescueTaken.Before;
                }

                if (await DraftOf(db, userId, visitId).AnyAsync(cancellationToken))
                {
                    return RescueTaken.OwnDraft;
                }

                var now = Utc.Now(clock);
                var text = (origin with { Holder = userId, TakenAt = now, TakenBy = viewer.Who }).Write();
                if (record is null)
                {
                    db.SetUp.Add(new SetUpRow { Kind = SetUpKind.RescuedDraft, Code = code, CodeKey = CodeKeys.Of(code), Name = origin.Technician, Document = text });
                }
                else
                {
                    record.Document = text;
                }

                db.Drafts.Add(new DraftRow { UserId = userId, VisitId = visitId, SiteId = site.Id, CustomerId = site.CustomerId, Document = document, UpdatedAt = now });
                db.Audit(new AuditEntry("draft taken from a rescue file", Entity, code, site.CustomerId, null, text));
                return RescueTaken.Taken;
            },
            cancellationToken);
    }

    /// <summary>What was taken in and is neither finished nor discarded, latest first; nothing for people who may not take in.</summary>
    public async Task<IReadOnlyList<RescuedEntry>> ListAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview)
        {
            return [];
        }

        return await store.ReadAsync<IReadOnlyList<RescuedEntry>>(
            viewer,
            async db =>
            {
                var records = (await db.SetUp.Where(row => row.Kind == SetUpKind.RescuedDraft).Select(row => new { row.Code, row.Document }).ToListAsync(cancellationToken))
                    .ToDictionary(row => Guid.Parse(row.Code), row => RescuedDraft.Read(row.Document));
                var ids = records.Keys.ToList();
                var drafts = await (
                    from draft in db.Drafts
                    join site in db.Sites on draft.SiteId equals site.Id
                    join user in db.Users on draft.UserId equals user.Id
                    where ids.Contains(draft.VisitId)
                    select new { draft.VisitId, draft.UserId, site.Code, site.Name, user.Email }).ToListAsync(cancellationToken);
                return
                [
                    .. drafts.Where(draft => records[draft.VisitId].Holder == draft.UserId)
                        .Select(draft => new RescuedEntry(draft.VisitId, draft.Code, draft.Name, draft.Email ?? "", draft.UserId == viewer.UserId, records[draft.VisitId]))
                        .OrderByDescending(entry => entry.From.TakenAt),
                ];
            },
            cancellationToken);
    }

    /// <summary>Identities of visits whose drafts came out of rescue files.</summary>
    public Task<IReadOnlySet<Guid>> IdsAsync(Viewer viewer, CancellationToken cancellationToken = default) => store.ReadAsync<IReadOnlySet<Guid>>(
        viewer,
        async db => (await db.SetUp.Where(row => row.Kind == SetUpKind.RescuedDraft).Select(row => row.Code).ToListAsync(cancellationToken)).Select(Guid.Parse).ToHashSet(),
        cancellationToken);

    /// <summary>Throws a draft and its pictures away, whichever supervisor has it. Its text stays in the audit trail.</summary>
    /// <param name="viewer">A supervisor or administrator.</param>
    /// <param name="visitId">Identity of the visit it would have been.</param>
    /// <param name="why">The reason.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>Whether there was one, and a reason.</returns>
    public async Task<bool> DiscardAsync(Viewer viewer, Guid visitId, string why, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview || string.IsNullOrWhiteSpace(why))
        {
            return false;
        }

        var discarded = await store.WriteAsync(
            viewer,
            async db =>
            {
                if (await RecordAsync(db, visitId, cancellationToken) is not { } record || RescuedDraft.Read(record.Document) is not { } from
                    || await DraftOf(db, from.Holder, visitId).AsTracking().SingleOrDefaultAsync(cancellationToken) is not { } draft)
                {
                    return null;
                }

                db.Drafts.Remove(draft);
                db.SetUp.Remove(record);
                db.Audit(new AuditEntry(AuditActs.Discarded, Entity, record.Code, draft.CustomerId, draft.Document, null, why.Trim()));
                return draft;
            },
            cancellationToken);
        if (discarded is null)
        {
            return false;
        }

        await photos.RemoveOfAsync(discarded.UserId, discarded.Document, cancellationToken);
        return true;
    }

    private static IQueryable<DraftRow> DraftOf(LogBookDb db, int user, Guid visit) => db.Drafts.Where(draft => draft.UserId == user && draft.VisitId == visit);

    private static Task<SetUpRow?> RecordAsync(LogBookDb db, Guid visit, CancellationToken cancellationToken)
    {
        var key = CodeKeys.Of(visit.ToString("D"));
        return db.SetUp.AsTracking().SingleOrDefaultAsync(row => row.Kind == SetUpKind.RescuedDraft && row.CodeKey == key, cancellationToken);
    }
}
