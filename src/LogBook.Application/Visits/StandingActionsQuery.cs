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
            var rows =
                from found in db.Sites
                where key == null ? found.RetiredAt == null : found.CodeKey == key
                join visit in db.Visits on found.Id equals visit.SiteId
                join version in db.VisitVersions on new { visit.Id, Version = visit.CurrentVersion } equals new { Id = version.VisitRowId, version.Version }
                where visit.VoidedAt == null && version.Document.Contains(Mark)
                orderby found.Id
                select new { found.Code, version.Document };

            // One question for all sites, but the visits of one at a time.
            List<StandingAction> standing = [];
            List<Visit> ofSite = [];
            await foreach (var row in rows.AsAsyncEnumerable().WithCancellation(cancellationToken))
            {
                if (ofSite.Count > 0 && ofSite[0].Site != row.Code)
                {
                    standing.AddRange(StandingAction.Of(ofSite));
                    ofSite.Clear();
                }

                ofSite.Add(ExchangeReader.Parse<Visit>(row.Document) with { Site = row.Code });
            }

            standing.AddRange(StandingAction.Of(ofSite));
            return standing;
        },
        cancellationToken);
}
