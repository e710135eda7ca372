using LogBook.Application.Data;
using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>One visit with its versions, findings and figures. Six statements.</summary>
public sealed class VisitQuery(LogBookStore store)
{
    /// <summary>The visit; null where there is none or the viewer may not see it. A void visit is for the firm's own people.</summary>
    public async Task<VisitView?> OfAsync(Viewer viewer, Guid visitId, CancellationToken cancellationToken = default) => await store.ReadAsync(
        viewer,
        async db =>
        {
            var found = await db.Visits.Where(visit => visit.VisitId == visitId && (viewer.IsOfFirm || visit.VoidedAt == null))
                .Join(db.Sites, visit => visit.SiteId, site => site.Id, (visit, site) => new
                {
                    Row = visit,
                    site.Code,
                    site.Name,
                    site.TimeZone,
                    site.AssignedTo,
                    MovedFrom = db.Sites.Where(other => other.Id == visit.MovedFromSiteId).Select(other => other.Code).FirstOrDefault(),
                })
                .FirstOrDefaultAsync(cancellationToken);
            if (found is null)
            {
                return null;
            }

            var rowId = found.Row.Id;
            var systems = await db.Systems.Where(system => system.SiteId == found.Row.SiteId).Select(system => new { system.Id, system.Code, system.Name }).ToListAsync(cancellationToken);
            var versions = await db.VisitVersions
                .Where(version => version.VisitRowId == rowId && (viewer.IsOfFirm || version.Version == found.Row.CurrentVersion))
                .OrderBy(version => version.Version).ToListAsync(cancellationToken);
            var findings = viewer.IsOfFirm
                ? await AttentionQuery.Seen(db, viewer).Where(finding => finding.FirstVisit == visitId && finding.State != FindingState.Withdrawn)
                    .OrderBy(finding => finding.Severity == Severity.Act ? 0 : finding.Severity == Severity.Plan ? 1 : 2).ThenBy(finding => finding.Kind)
                    .ToListAsync(cancellationToken)
                : [];
            var figures = await db.Figures.Where(figure => figure.VisitRowId == rowId).OrderBy(figure => figure.SystemId).ThenBy(figure => figure.Id).ToListAsync(cancellationToken);
            var photos = await db.Photos.Where(photo => photo.VisitRowId == rowId).OrderBy(photo => photo.Id)
                .Select(photo => new { photo.PhotoId, photo.Of, IsHere = photo.StoredAt != null }).ToListAsync(cancellationToken);

            var zone = TimeZoneInfo.FindSystemTimeZoneById(found.TimeZone);
            var systemOf = systems.ToDictionary(system => system.Id);
            // Those of a text that did not come to stand, or that an amendment took out, belong to its record, not to this page.
            var named = Documents.Visit(versions[^1].Document).Photos.Select(photo => photo.Id).ToHashSet();
            return new VisitView(
                VisitRowView.Of(found.Row, found.Code, found.Name, zone),
                found.TimeZone,
                systems.ToDictionary(system => system.Code, system => system.Name, StringComparer.OrdinalIgnoreCase),
                VersionsOf(versions, zone),
                [
                    .. findings.Select(row =>
                    {
                        var system = row.SystemId is { } id ? systemOf.GetValueOrDefault(id) : null;
                        return new AttentionRow(
                            new FindingKey(row.SiteId is null ? null : found.Code, system?.Code, row.Kind, row.AboutKey, row.FirstSeen),
                            row.SiteId is null ? null : found.Name,
                            system?.Name,
                            found.AssignedTo,
                            Documents.Finding(row, viewer.Language),
                            0);
                    }),
                ],
                [.. figures.Select(figure => (systemOf[figure.SystemId].Code, SiteHistoryQuery.FigureOf(figure, visitId, zone)))],
                [.. photos.Where(photo => named.Contains(photo.PhotoId)).Select(photo => (photo.PhotoId, photo.Of, photo.IsHere))],
                found.Row.ReviewedBy,
                found.Row.ReviewedAt,
                found.Row.VoidedBy,
                found.Row.VoidedAt,
                found.Row.VoidedWhy,
                found.MovedFrom,
                found.Row.Version);
        },
        cancellationToken);

    private static IReadOnlyList<VisitVersionView> VersionsOf(IReadOnlyList<VisitVersionRow> rows, TimeZoneInfo zone)
    {
        var views = new List<VisitVersionView>();
        Visit? before = null;
        foreach (var row in rows)
        {
            var visit = Documents.Visit(row.Document);
            views.Add(new VisitVersionView(
                row.Version,
                TimeZoneInfo.ConvertTimeFromUtc(row.ReceivedAt, zone),
                row.Source,
                row.Who,
                row.Reason,
                row.Sha256,
                visit,
                before is null ? [] : VisitDifferences.Between(before, visit, zone)));
            before = visit;
        }

        views.Reverse();
        return views;
    }
}
