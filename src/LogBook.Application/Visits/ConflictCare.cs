using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>Visits that came twice with different content: shown side by side, and settled by a reviewer.</summary>
/// <remarks>Neither content is ever lost: what is taken becomes a version by the one way in, what is not stays with the conflict.</remarks>
public sealed class ConflictCare(LogBookStore store, VisitIntake intake, TimeProvider clock)
{
    // More than anybody settles in one go; the rest follows when these are done.
    private const int Most = 100;

    /// <summary>Conflicts that nobody has settled, oldest first; none for people who may not settle them.</summary>
    public async Task<IReadOnlyList<ConflictView>> ListAsync(Viewer viewer, CancellationToken cancellationToken = default) =>
        await ReadAsync(viewer, null, cancellationToken);

    /// <summary>How many there are; 0 for people who may not settle them.</summary>
    public async Task<int> CountAsync(Viewer viewer, CancellationToken cancellationToken = default) => viewer.MayReview
        ? await store.ReadAsync(viewer, db => db.Conflicts.CountAsync(conflict => conflict.SettledAt == null, cancellationToken), cancellationToken)
        : 0;

    /// <summary>One that nobody has settled; null where there is none or the viewer may not settle it.</summary>
    public async Task<ConflictView?> FindAsync(Viewer viewer, int id, CancellationToken cancellationToken = default) =>
        (await ReadAsync(viewer, id, cancellationToken)).SingleOrDefault();

    /// <summary>Settles one.</summary>
    /// <param name="viewer">Who decides.</param>
    /// <param name="id">Number of the conflict.</param>
    /// <param name="choice">Which content is right.</param>
    /// <param name="standingSha256">Hash of what stood when the person looked: another version since then is decided upon anew.</param>
    /// <param name="why">Reason.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> SettleAsync(
        Viewer viewer, int id, ConflictChoice choice, string standingSha256, string why, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview)
        {
            return new SaveOutcome.NotAllowed();
        }

        if (string.IsNullOrWhiteSpace(why))
        {
            return new SaveOutcome.Invalid([new Issue("why", "reason-needed", SetUpTexts.ReasonNeeded.In(viewer.Language))]);
        }

        if (await FindAsync(viewer, id, cancellationToken) is not { } conflict)
        {
            return new SaveOutcome.NotFound();
        }

        if (VisitDocument.Sha256(conflict.Standing) != standingSha256)
        {
            return new SaveOutcome.ChangedMeanwhile(VisitDocument.Canonical(conflict.Standing), conflict.Standing.Version ?? 1);
        }

        // The version first: stopped in between, the conflict is still there and the two contents tell the same.
        if (choice == ConflictChoice.TakeOther && conflict.Differences.Count > 0)
        {
            switch (await intake.ReceiveAsync(viewer, Next(viewer, conflict, why), IntakeSource.Page, cancellationToken))
            {
                case IntakeOutcome.Stored:
                    break;
                case IntakeOutcome.Refused refused:
                    return new SaveOutcome.Invalid(refused.Issues);
                default:
                    return new SaveOutcome.NotFound();
            }
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                if (await db.Conflicts.AsTracking().SingleOrDefaultAsync(row => row.Id == id && row.SettledAt == null, cancellationToken) is not { } row)
                {
                    return new SaveOutcome.NotFound();
                }

                row.SettledAt = Utc.Now(clock);
                row.SettledBy = viewer.Who;
                row.SettledHow = choice.ToString();
                db.Audit(new AuditEntry(AuditActs.Settled, "Visit", row.VisitId.ToString("D"), row.CustomerId, standingSha256, row.Sha256, $"{choice}: {why}"));
                await db.SaveChangesAsync(cancellationToken);
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    private Visit Next(Viewer viewer, ConflictView conflict, string why)
    {
        var standing = conflict.Standing.Version ?? 1;
        return conflict.Other with
        {
            Version = standing + 1,
            Amends = standing,
            AmendedBy = viewer.PersonCode ?? conflict.Standing.Technician,
            AmendedAt = Moment.OfUtc(Utc.Now(clock)),
            Reason = why,
        };
    }

    private async Task<IReadOnlyList<ConflictView>> ReadAsync(Viewer viewer, int? id, CancellationToken cancellationToken)
    {
        if (!viewer.MayReview)
        {
            return [];
        }

        var rows = await store.ReadAsync(
            viewer,
            async db => await (
                from conflict in db.Conflicts
                join visit in db.Visits on conflict.VisitRowId equals visit.Id
                join version in db.VisitVersions on new { VisitRowId = visit.Id, Version = visit.CurrentVersion } equals new { version.VisitRowId, version.Version }
                join site in db.Sites on visit.SiteId equals site.Id
                where conflict.SettledAt == null && (id == null || conflict.Id == id)
                orderby conflict.ReceivedAt, conflict.Id
                select new { Conflict = conflict, Visit = visit, Standing = version.Document, site.Code, site.Name, site.TimeZone }).Take(Most).ToListAsync(cancellationToken),
            cancellationToken);
        var ids = rows.Select(row => row.Visit.Id).ToList();
        var here = (await store.ReadAsync(
            viewer, db => db.Photos.Where(photo => ids.Contains(photo.VisitRowId) && photo.StoredAt != null).Select(photo => photo.PhotoId).ToListAsync(cancellationToken), cancellationToken)).ToHashSet();
        return
        [
            .. rows.Select(row =>
            {
                var zone = TimeZoneInfo.FindSystemTimeZoneById(row.TimeZone);
                var (standing, other) = (Documents.Visit(row.Standing), Documents.Visit(row.Conflict.Document));
                return new ConflictView(
                    row.Conflict.Id,
                    VisitRowView.Of(row.Visit, row.Code, row.Name, zone),
                    TimeZoneInfo.ConvertTimeFromUtc(row.Conflict.ReceivedAt, zone),
                    row.Conflict.Source,
                    row.Conflict.Who,
                    standing,
                    other,

                    // Of two versions the reason says why there is a later one, not what was found.
                    VisitDifferences.Between(standing, (standing.Version ?? 1) == (other.Version ?? 1) ? other : other with { Reason = standing.Reason }, zone),
                    here);
            }),
        ];
    }
}
