using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Clocks;

/// <summary>The newest microbiology results of a site with what follows from them.</summary>
public sealed class CountsQuery(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    /// <summary>One entry for each system in use; null where there is no such site or the viewer may not see it.</summary>
    public async Task<IReadOnlyList<SystemResponses>?> OfAsync(Viewer viewer, string site, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var key = CodeKeys.Of(site);
        var records = await store.ReadAsync(
            viewer,
            async db => await SiteRecords.ReadAsync(db, await db.Sites.Where(row => row.CodeKey == key).Select(row => row.Id).SingleOrDefaultAsync(cancellationToken), cancellationToken),
            cancellationToken);
        if (records is null)
        {
            return null;
        }

        var now = Utc.Now(clock);
        return
        [
            .. records.Systems.Where(system => system.RetiredAt is null).Select(system =>
            {
                var history = SystemHistory.From(firm, records.Site.Code, system.Code, records.Versions, records.NotificationsOf(system.Code));
                return new SystemResponses(system.Code, system.Name, CountResponse.Of(history, now, history.Firm.Engine.Thresholds.DueSoonPercent.Value / 100));
            }),
        ];
    }
}
