using System.Text;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Domain.Sites;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Hosting;

/// <summary>A firm with two customers, each with words in its records that must never be seen by the other.</summary>
public static class TwoCustomers
{
    /// <summary>Word in every record of customer A.</summary>
    public const string CanaryA = "canaryalder";

    /// <summary>Word in every record of customer B.</summary>
    public const string CanaryB = "canarybirch";

    public static readonly Guid VisitA = Guid.Parse("0198a000-0000-7000-8000-00000000000a");

    public static readonly Guid VisitB = Guid.Parse("0198a000-0000-7000-8000-00000000000b");

    /// <summary>Makes firm, customers, sites, visits and an account for each role.</summary>
    public static async Task AddAsync(LogBookWebApp app)
    {
        await app.AddFirmAsync();
        await using var json = new MemoryStream(Encoding.UTF8.GetBytes(Document));
        var outcome = await app.Services.GetRequiredService<ExchangeImport>().ImportAsync(Viewer.System("test"), json);
        Assert.DoesNotContain(outcome.Issues, issue => issue.Blocks);
        await app.AddUserAsync("technician@quernwath.example", PersonRole.Technician, person: "TEC");
        await app.AddUserAsync("supervisor@quernwath.example", PersonRole.Supervisor, person: "SUP");
        await app.AddUserAsync("administrator@quernwath.example", PersonRole.Administrator);
        await app.AddUserAsync("a@alder.example", PersonRole.Customer, customer: "CUS-A");
        await app.AddUserAsync("b@birch.example", PersonRole.Customer, customer: "CUS-B");
    }

    private static string Document => $$"""
        {
          "format": "logbook-exchange", "version": 1,
          "people": [
            {"code": "TEC", "name": "T. Technician", "role": "technician"},
            {"code": "SUP", "name": "S. Supervisor", "role": "supervisor"}
          ],
          "customers": [ {{Customer("A", CanaryA)}}, {{Customer("B", CanaryB)}} ],
          "sites": [ {{Site("A", CanaryA)}}, {{Site("B", CanaryB)}} ],
          "systems": [ {{System("A", CanaryA)}}, {{System("B", CanaryB)}} ],
          "visits": [ {{Visit("A", CanaryA, VisitA)}}, {{Visit("B", CanaryB, VisitB)}} ]
        }
        """;

    private static string Customer(string letter, string canary) =>
        $$"""{"code": "CUS-{{letter}}", "name": "{{canary}} customer"}""";

    private static string Site(string letter, string canary) =>
        $$"""{"code": "SIT-{{letter}}", "customer": "CUS-{{letter}}", "name": "{{canary}} site", "timeZone": "Europe/Lisbon"}""";

    private static string System(string letter, string canary) =>
        $$"""{"code": "CT1", "site": "SIT-{{letter}}", "name": "{{canary}} tower", "kind": "open-recirculating"}""";

    private static string Visit(string letter, string canary, Guid id) =>
        $$"""
        {"id": "{{id}}", "site": "SIT-{{letter}}", "technician": "TEC", "arrived": "2025-07-01T08:00:00+01:00", "left": "2025-07-01T09:00:00+01:00",
         "notes": "{{canary}} note",
         "systems": [{"system": "CT1", "readings": [{"at": "tower", "test": "conductivity", "value": 1400, "unit": "uS/cm"}]}]}
        """;
}
