using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>Actions that no visit has closed yet, over all visits of a site: a form knows only the last few of them.</summary>
public sealed class StandingActionsQuery(LogBookStore store)
{
    // Most visits ask for nothing. Their documents, in which a list that is empty is not written, are not read.
    private const string Mark = "\"actions\":";

    /// <summary>Open actions of one site, or of every site in use that the viewer knows.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="site">Code of the site, or null for all.</param>
    /// <param name="cancellationToken">Stops.</param>
    public Task<IReadOnlyList<StandingAction>> OfAsync(Viewer viewer, string? site = null, CancellationToken cancellationToken = default) => store.ReadAsync<IReadOnlyList<StandingAction>>(
        viewer,
        async db =>
        {
            var key = site is null ? null : CodeKeys.Of(site);
            var sites = await db.Sites.Where(row => key == null ? row.RetiredAt == null : row.CodeKey == key).Select(row => new { row.Id, row.Code }).ToListAsync(cancellationToken);
            List<StandingAction> standing = [];
            foreach (var found in sites)
            {
                var documents = await (
                    from visit in db.Visits
                    join version in db.VisitVersions on new { visit.Id, Version = visit.CurrentVersion } equals new { Id = version.VisitRowId, version.Version }
                    where visit.SiteId == found.Id && visit.VoidedAt == null && version.Document.Contains(Mark)
                    select version.Document).ToListAsync(cancellationToken);
                standing.AddRange(StandingAction.Of(documents.Select(document => ExchangeReader.Parse<Visit>(document) with { Site = found.Code })));
            }

            return standing;
        },
        cancellationToken);
}
