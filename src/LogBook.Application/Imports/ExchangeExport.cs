using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Imports;

/// <summary>Takes set-up, visits and findings out as a canonical document.</summary>
public sealed class ExchangeExport(LogBookStore store, SetUpStore setUp, FindingsQuery findings)
{
    /// <summary>Exports what the viewer sees, every version of every visit. Voided visits stay behind: read back in, they would count.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="site">Only this site, or null.</param>
    /// <param name="from">Visits that arrived at or after this moment, UTC.</param>
    /// <param name="to">Visits that arrived before this moment, UTC.</param>
    /// <param name="asOf">What was known at this moment, UTC.</param>
    /// <param name="withFindings">With the findings.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>The document, or null when the viewer knows no such site.</returns>
    public async Task<ExchangeDocument?> ExportAsync(
        Viewer viewer, string? site = null, DateTime? from = null, DateTime? to = null, DateTime? asOf = null, bool withFindings = false, CancellationToken cancellationToken = default)
    {
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        if (site is not null && !firm.Sites.ContainsKey(site))
        {
            return null;
        }

        var document = site is null ? firm.Document : OfSite(firm, site);
        var key = site is null ? null : CodeKeys.Of(site);
        var (first, last) = (Utc.Of(from ?? DateTime.UnixEpoch.AddYears(-70)), Utc.Of(to ?? DateTime.UnixEpoch.AddYears(1000)));
        var visits = await store.ReadAsync(
            viewer,
            async db =>
            {
                var rows = await db.Visits.Where(visit => visit.VoidedAt == null && visit.ArrivedAt >= first && visit.ArrivedAt < last)
                    .Join(db.Sites.Where(s => key == null || s.CodeKey == key), visit => visit.SiteId, s => s.Id, (visit, s) => new { visit, s.Code })
                    .Join(db.VisitVersions, pair => pair.visit.Id, version => version.VisitRowId, (pair, version) => new { pair.visit, pair.Code, version.Document })
                    .ToListAsync(cancellationToken);
                return rows.ConvertAll(row => VisitReader.Placed(ExchangeReader.Parse<Visit>(row.Document), row.visit, row.Code));
            },
            cancellationToken);
        return ExchangeWriter.Canonical(document with
        {
            Visits = asOf is { } moment ? [.. visits.Where(visit => FindingsQuery.Moments(visit).First() <= moment).Select(visit => AsKnownAt(visit, moment))] : visits,
            Findings = withFindings ? await findings.ListAsync(viewer, site, asOf, null, cancellationToken) : [],
        });
    }

    private static Visit AsKnownAt(Visit visit, DateTime moment) => visit with
    {
        Systems = [.. visit.Systems.Select(record => new SystemVisit(visit, record).AsKnownAt(moment).Record)],
    };

    private static ExchangeDocument OfSite(FirmSetUp firm, string site)
    {
        var one = firm.Sites[site];
        return firm.Document with
        {
            Sites = [one],
            Systems = [.. firm.SystemsOf(site)],
            Customers = [.. firm.Document.Customers.Where(customer => customer.Code.Equals(one.Customer, StringComparison.OrdinalIgnoreCase))],
        };
    }
}
