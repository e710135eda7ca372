using LogBook.Application.DueLists;
using LogBook.Application.Planning;
using LogBook.Application.Sites;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.Readers;

/// <summary>A firm with two technicians, a supervisor and somebody of a site; all sites are on the round of RYA.</summary>
internal static class PlannedFirm
{
    public static async Task<ReadingFirm> FirmAsync(params string[] sites)
    {
        var firm = await ReadingFirm.CreateAsync();
        await firm.AddPeopleAsync(
            new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician },
            new Person { Code = "PUM", Name = "P. Umber", Role = PersonRole.Technician },
            new Person { Code = "IWE", Name = "I. Wendle", Role = PersonRole.Supervisor },
            new Person { Code = "EST", Name = "Estates office", Role = PersonRole.SiteStaff });
        foreach (var site in sites)
        {
            await firm.AddSiteAsync(site);
        }

        return firm;
    }

    public static DateOnly Today(ReadingFirm firm) => DateOnly.FromDateTime(firm.Clock.GetUtcNow().UtcDateTime);

    public static SetUpStore SetUp(ReadingFirm firm) => new(firm.Store, firm.Clock);

    public static SitesQuery SitesOf(ReadingFirm firm) => new(firm.Store, firm.Clock);

    public static PlanStore Plans(ReadingFirm firm) => new(firm.Store, SetUp(firm), firm.Clock);

    public static PackQuery Packs(ReadingFirm firm) => new(firm.Store, SetUp(firm), firm.Clock);

    public static PlanQuery Query(ReadingFirm firm) => new(firm.Store, SitesOf(firm), SetUp(firm), firm.Clock);
}
