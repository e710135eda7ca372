using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.Outcomes;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.RecordPacks;

/// <summary>Legal holds, one record for each site that ever had one; every change is in the audit trail.</summary>
public sealed class LegalHoldStore(LogBookStore store, TimeProvider clock)
{
    private const string Entity = "LegalHold";

    /// <summary>The hold of a site as it stands; null where there never was one, and for whoever may not see it.</summary>
    public Task<LegalHold?> OfAsync(Viewer viewer, string site, CancellationToken cancellationToken = default) => !viewer.MayReview
        ? Task.FromResult<LegalHold?>(null)
        : store.ReadAsync(viewer, db => FindAsync(db, site, cancellationToken), cancellationToken);

    /// <summary>Lays a hold on a site's records, or lifts it.</summary>
    /// <param name="viewer">Who does it; supervisor or administrator.</param>
    /// <param name="site">Code of the site.</param>
    /// <param name="held">On or off.</param>
    /// <param name="why">Why.</param>
    /// <param name="expectedVersion">Version that was read; 0 where there was none.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> SetAsync(Viewer viewer, string site, bool held, string why, int expectedVersion, CancellationToken cancellationToken = default)
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
                var key = CodeKeys.Of(site);
                if (await db.Sites.Where(row => row.CodeKey == key).Select(row => row.Code).SingleOrDefaultAsync(cancellationToken) is not { } code)
                {
                    return new SaveOutcome.NotFound();
                }

                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(hold => hold.Kind == SetUpKind.LegalHold && hold.CodeKey == key, cancellationToken);
                if ((row?.Version ?? 0) != expectedVersion)
                {
                    return new SaveOutcome.ChangedMeanwhile(row?.Document ?? "", row?.Version ?? 0);
                }

                var before = row?.Document;
                var document = new LegalHold(code, held, viewer.Who, Utc.Now(clock), why.Trim(), expectedVersion).Write();
                if (row is null)
                {
                    row = new SetUpRow { Kind = SetUpKind.LegalHold, Code = code, CodeKey = key, Name = code };
                    db.SetUp.Add(row);
                }

                row.Document = document;
                db.Audit(new AuditEntry(before is null ? AuditActs.Added : AuditActs.Changed, Entity, code, Old: before, New: document, Why: why.Trim()));
                return new SaveOutcome.Saved(before is null ? 1 : expectedVersion + 1);
            },
            cancellationToken);
    }

    internal static async Task<LegalHold?> FindAsync(LogBookDb db, string site, CancellationToken cancellationToken)
    {
        var key = CodeKeys.Of(site);
        var found = await db.SetUp.Where(row => row.Kind == SetUpKind.LegalHold && row.CodeKey == key && db.Sites.Any(known => known.CodeKey == key))
            .Select(row => new { row.Document, row.Version }).SingleOrDefaultAsync(cancellationToken);
        return found is null ? null : LegalHold.Read(found.Document, found.Version);
    }
}
