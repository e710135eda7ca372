using System.Globalization;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Reviews;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits.Review;

/// <summary>Signs visits off, and sets how many are drawn for a closer look.</summary>
public sealed class ReviewCare(LogBookStore store, TimeProvider clock)
{
    /// <summary>
    /// Marks visits as looked at, in one unit of work. Passed over is what is reviewed already or does not count, what was amended since it
    /// was shown, and what was drawn for a closer look: that is answered on the visit itself, with whether all of it held.
    /// </summary>
    /// <param name="viewer">Who looked; a supervisor or administrator.</param>
    /// <param name="visits">Visits with the version that was shown.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>How many were marked; 0 for whoever does not review.</returns>
    public Task<int> SignOffAsync(Viewer viewer, IReadOnlyDictionary<Guid, int> visits, CancellationToken cancellationToken = default) => !viewer.MayReview
        ? Task.FromResult(0)
        : store.WriteAsync(
            viewer,
            async db =>
            {
                var ids = visits.Keys.ToList();
                var share = await db.Firm.Select(firm => firm.AuditShare).SingleOrDefaultAsync(cancellationToken) ?? AuditSample.UsualShare;
                var rows = (await db.Visits.AsTracking().Where(row => ids.Contains(row.VisitId) && row.VoidedAt == null && row.State != VisitState.Reviewed).ToListAsync(cancellationToken))
                    .Where(row => visits[row.VisitId] == row.CurrentVersion && !AuditSample.IsDrawn(row.VisitId, share)).ToList();
                foreach (var row in rows)
                {
                    (row.State, row.ReviewedAt, row.ReviewedBy) = (VisitState.Reviewed, Utc.Now(clock), viewer.Who);
                    db.Audit(new AuditEntry(AuditActs.Reviewed, "Visit", row.VisitId.ToString("D"), row.CustomerId));
                }

                return rows.Count;
            },
            cancellationToken);

    /// <summary>Sets the share of visits that are drawn.</summary>
    /// <param name="viewer">Who sets it; a supervisor or administrator.</param>
    /// <param name="share">Share, 0 to 1.</param>
    /// <param name="why">Reason.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> SetShareAsync(Viewer viewer, double share, string why, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayReview)
        {
            return new SaveOutcome.NotAllowed();
        }

        if (share is not (>= 0 and <= 1))
        {
            return new SaveOutcome.Invalid([new Issue("share", "out-of-range", ReviewTexts.ShareRange.In(viewer.Language))]);
        }

        if (string.IsNullOrWhiteSpace(why))
        {
            return new SaveOutcome.Invalid([new Issue("why", "reason-needed", SetUpTexts.ReasonNeeded.In(viewer.Language))]);
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var firm = await db.Firm.AsTracking().SingleAsync(cancellationToken);
                db.Audit(new AuditEntry(
                    AuditActs.Changed, "AuditShare", "firm", null,
                    (firm.AuditShare ?? AuditSample.UsualShare).ToString(CultureInfo.InvariantCulture), share.ToString(CultureInfo.InvariantCulture), why.Trim()));
                firm.AuditShare = share;
                return new SaveOutcome.Saved(1);
            },
            cancellationToken);
    }
}
