using LogBook.Application.Data;
using LogBook.Application.Planning;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>What the visit form needs beside its draft: the set-up and each site's last visits.</summary>
public sealed class RoundQuery(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    /// <summary>Visits per site that a form compares with.</summary>
    public const int VisitsPerSite = 12;

    /// <summary>The last visits of a site, oldest first; empty when the viewer knows no such site.</summary>
    public Task<IReadOnlyList<Visit>> LastVisitsAsync(Viewer viewer, string site, int most = VisitsPerSite, CancellationToken cancellationToken = default) =>
        store.ReadAsync(viewer, db => LastAsync(db, CodeKeys.Of(site), most, cancellationToken), cancellationToken);

    /// <summary>Set-up and last visits of a technician's round; for others of the firm, and for a technician without a round, of all sites.</summary>
    /// <param name="viewer">Whose round.</param>
    /// <param name="visitsPerSite">Most visits of each site.</param>
    /// <param name="whole">All sites for a technician too, so that a colleague's round can be taken over without signal.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<ExchangeDocument> DocumentAsync(
        Viewer viewer, int visitsPerSite = VisitsPerSite, bool whole = false, CancellationToken cancellationToken = default)
    {
        var firm = (await setUp.FirmAsync(viewer, cancellationToken: cancellationToken)).Document;
        var sites = firm.Sites;
        if (!whole && viewer is { Role: PersonRole.Technician, PersonCode: { } person })
        {
            // What is planned for somebody today is on the round too, whoever's site it is.
            var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
            var own = await store.ReadAsync(
                viewer,
                async db =>
                {
                    var (plans, calendar) = await PlanStore.WithCalendarAsync(db, today.AddDays(-1), today.AddDays(1), cancellationToken);
                    var planned = plans.Values.SelectMany(kept => kept.Plan.Of(person)).Select(stop => CodeKeys.Of(stop.Site)).Distinct().ToList();

                    // And the sites of those in whose place somebody goes.
                    List<string> people = [CodeKeys.Of(person), .. Enumerable.Range(-1, 3).SelectMany(days => calendar.StandsInFor(person, today.AddDays(days))).Select(CodeKeys.Of)];
                    return (await db.Sites.Where(site => site.RetiredAt == null && ((site.AssignedTo != null && people.Contains(site.AssignedTo)) || planned.Contains(site.CodeKey))).Select(site => new { site.Code, site.CodeKey, site.AssignedTo }).ToListAsync(cancellationToken))
                        .Where(site => planned.Contains(site.CodeKey) || site.AssignedTo == people[0]
                            || Enumerable.Range(-1, 3).Any(days => CodeKeys.Of(calendar.WhoGoes(site.AssignedTo, today.AddDays(days), site.Code) ?? "") == people[0]))
                        .Select(site => site.Code).ToList();
                },
                cancellationToken);
            sites = own.Count == 0 ? sites : [.. sites.Where(site => own.Contains(site.Code, StringComparer.OrdinalIgnoreCase))];
        }

        var visits = await store.ReadAsync(
            viewer,
            async db =>
            {
                List<Visit> all = [];
                foreach (var site in sites)
                {
                    all.AddRange(await LastAsync(db, CodeKeys.Of(site.Code), visitsPerSite, cancellationToken));
                }

                return all;
            },
            cancellationToken);
        return firm with
        {
            Sites = sites,
            Systems = [.. firm.Systems.Where(system => sites.Any(site => site.Code.Equals(system.Site, StringComparison.OrdinalIgnoreCase)))],
            Visits = visits,
        };
    }

    private static async Task<IReadOnlyList<Visit>> LastAsync(LogBookDb db, string siteKey, int most, CancellationToken cancellationToken)
    {
        var documents = await (
            from visit in db.Visits
            join site in db.Sites on visit.SiteId equals site.Id
            join version in db.VisitVersions on new { Id = visit.Id, Version = visit.CurrentVersion } equals new { Id = version.VisitRowId, version.Version }
            where site.CodeKey == siteKey && visit.VoidedAt == null
            orderby visit.ArrivedAt descending
            select new { version.Document, site.Code }).Take(most).ToListAsync(cancellationToken);
        documents.Reverse();
        return [.. documents.Select(found => ExchangeReader.Parse<Visit>(found.Document) with { Site = found.Code })];
    }
}
