using LogBook.Application.Data;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>Tells the device that sent a visit how far it has come.</summary>
public sealed class VisitStandingQuery(LogBookStore store)
{
    /// <summary>The visit's standing; null when the viewer knows no such visit.</summary>
    public Task<VisitStanding?> FindAsync(Viewer viewer, Guid visitId, CancellationToken cancellationToken = default) => store.ReadAsync(
        viewer,
        async db =>
        {
            var found = await (
                from visit in db.Visits
                join version in db.VisitVersions on new { VisitRowId = visit.Id, Version = visit.CurrentVersion } equals new { version.VisitRowId, version.Version }
                where visit.VisitId == visitId
                select new { visit.Id, version.Version, version.Sha256 }).FirstOrDefaultAsync(cancellationToken);
            if (found is null)
            {
                return null;
            }

            var mails = await db.Outbox.Where(row => row.VisitRowId == found.Id && row.VisitVersion == found.Version)
                .Select(row => row.AcceptedAt != null).ToListAsync(cancellationToken);
            var settled = await db.Conflicts.Where(row => row.VisitRowId == found.Id && row.SettledAt != null)
                .Select(row => new { row.Sha256, row.SettledHow }).ToListAsync(cancellationToken);
            return new VisitStanding(
                found.Version, found.Sha256, mails.Count(accepted => !accepted), mails.Count(accepted => accepted),
                settled.ToDictionary(row => row.Sha256, row => row.SettledHow!));
        },
        cancellationToken);
}
