using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Rounds.Planning;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Planning;

/// <summary>The pack list of a person's day, from the plan. Four statements.</summary>
public sealed class PackQuery(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    /// <summary>The list; null for a viewer who is not of the firm, and for a technician who asks for somebody else's day.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="asked">The day; today at the person's sites when null.</param>
    /// <param name="person">Code of who packs.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<PackView?> OfAsync(Viewer viewer, DateOnly? asked, string person, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm || (!viewer.MayReview && CodeKeys.Of(viewer.PersonCode ?? "") != CodeKeys.Of(person)))
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
        return await store.ReadAsync(
            viewer,
            async db =>
            {
                var day = asked ?? Today(firm, person);
                var plan = (await PlanStore.DaysAsync(db, day, day, cancellationToken)).GetValueOrDefault(day)?.Plan ?? new DayPlan(day);
                var codes = plan.Of(person).Select(stop => CodeKeys.Of(stop.Site)).ToList();
                var rows = await db.Sites.Where(site => site.RetiredAt == null && codes.Contains(site.CodeKey))
                    .Join(db.Systems.Where(system => system.RetiredAt == null), site => site.Id, system => system.SiteId, (site, system) => new
                    {
                        site.Code, site.CodeKey, site.Name, site.VisitEveryDays, System = system.Document, system.Ahead, Order = system.CodeKey,
                    })
                    .ToListAsync(cancellationToken);
                var sites = rows.GroupBy(row => row.CodeKey).OrderBy(group => codes.IndexOf(group.Key)).Select(group => group.OrderBy(row => row.Order, StringComparer.Ordinal).ToList()).ToList();

                // Who goes out with a hand meter is told to prove it, and not what is suspected of it.
                var toProve = await db.Findings.Where(finding => finding.Kind == FindingKinds.InstrumentShift && (finding.State == FindingState.Open || finding.State == FindingState.Acknowledged))
                    .Select(finding => finding.AboutKey).ToListAsync(cancellationToken);
                var list = PackList.Of(
                    firm,
                    person,
                    day,
                    [.. sites.Select(site => new PackStop(site[0].Code, site[0].VisitEveryDays, [.. site.Select(row => (Documents.System(row.System), KeptAhead.Read(row.Ahead)))]))],
                    [.. toProve.Select(about => About.CodeIn(about, "instrument")).OfType<string>()]);
                return new PackView(
                    day,
                    firm.People.GetValueOrDefault(person)?.Code ?? person,
                    firm.People.GetValueOrDefault(person)?.Name ?? person,
                    [.. plan.Of(person).Select(stop => (stop.Site, firm.Sites.GetValueOrDefault(stop.Site)?.Name ?? ""))],
                    list,
                    list.NeverTogether(firm),
                    firm);
            },
            cancellationToken);
    }

    // Of a person without sites, the firm's.
    private DateOnly Today(FirmSetUp firm, string person)
    {
        var now = clock.GetUtcNow().UtcDateTime;
        var sites = firm.Sites.Values.ToList();
        var served = sites.Where(site => CodeKeys.Of(site.AssignedTo ?? "") == CodeKeys.Of(person)).ToList();
        return WorkingDay.Of((served.Count > 0 ? served : sites).Select(site => SitesQuery.DayIn(TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone), now))) ?? DateOnly.FromDateTime(now);
    }
}
