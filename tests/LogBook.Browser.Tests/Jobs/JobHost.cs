using System.Globalization;
using System.Text;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Browser.Tests.Capture;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing;
using LogBook.Testing.Mail;
using LogBook.Web.Hosting;
using LogBook.Web.Tests.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>
/// The host on loopback with a mail server beside it, on the morning of 31 March 2025: one site is due, its tower was visited
/// every 28 days before.
/// </summary>
public sealed class JobHost : IAsyncDisposable
{
    /// <summary>The technician of the round.</summary>
    public const string Technician = "r.yaffle@quernwath.example";

    /// <summary>The supervisor.</summary>
    public const string Supervisor = "i.wendle@quernwath.example";

    /// <summary>The due site, whose customer reads Spanish.</summary>
    public const string Site = "PLU-1";

    private JobHost(LogBookWebApp app, SmtpInbox inbox, DemoClock clock)
    {
        App = app;
        Inbox = inbox;
        Clock = clock;
    }

    /// <summary>The clock of the host.</summary>
    public DemoClock Clock { get; }

    /// <summary>The host.</summary>
    public LogBookWebApp App { get; }

    /// <summary>The mail server.</summary>
    public SmtpInbox Inbox { get; }

    /// <summary>Where the host listens.</summary>
    public Uri Address { get; private set; } = null!;

    /// <summary>The technician as the application sees them.</summary>
    public Viewer TechnicianViewer { get; private set; } = null!;

    /// <summary>Starts both.</summary>
    /// <param name="now">What its clock shows then; that morning when null.</param>
    public static async Task<JobHost> StartAsync(DateTime? now = null)
    {
        // The clock runs on from that morning: saving a draft waits by it.
        var clock = new DemoClock(TimeProvider.System);
        clock.Start(now ?? new DateTime(2025, 3, 31, 8, 5, 0, DateTimeKind.Utc));
        var inbox = new SmtpInbox();
        var app = new LogBookWebApp(clock: clock, settings: new Dictionary<string, string>(inbox.Settings) { ["urls"] = "http://127.0.0.1:0" }) { MoreServices = PublishedCapture.AddTo };
        app.UseKestrel(0);
        app.StartServer();
        var host = new JobHost(app, inbox, clock) { Address = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()) };
        await app.AddFirmAsync();
        var imports = app.Services.GetRequiredService<ExchangeImport>();
        await using (var setUp = SampleFirm.SetUp())
        {
            Assert.DoesNotContain((await imports.ImportAsync(Viewer.System("test"), setUp)).Issues, issue => issue.Blocks);
        }

        await using var visits = new MemoryStream(Encoding.UTF8.GetBytes(EarlierVisits));
        Assert.DoesNotContain((await imports.ImportAsync(Viewer.System("test"), visits)).Issues, issue => issue.Blocks);
        host.TechnicianViewer = new Viewer(await app.AddUserAsync(Technician, PersonRole.Technician, person: "RYA"), Technician, "RYA", PersonRole.Technician, null, Language.English);
        await app.AddUserAsync(Supervisor, PersonRole.Supervisor, person: "IWE");
        return host;
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await App.DisposeAsync();
        await Inbox.DisposeAsync();
    }

    // 660 m³ of make-up in each 28 days; the other site was visited a week before and is not due.
    private static string EarlierVisits => $$"""
        {
          "format": "logbook-exchange", "version": 1,
          "visits": [
            {{Visit(1, "PLU-1", "2025-01-06T09:05:00+00:00", dial: 1_200_000, inhibitorCm: "45", inhibitorAddedL: "0", biocideCm: "38", biocideAddedL: "0", bleedHours: 100)}},
            {{Visit(2, "PLU-1", "2025-02-03T09:05:00+00:00", dial: 1_860_000, inhibitorCm: "31.5", inhibitorAddedL: "26", biocideCm: "25.8", biocideAddedL: "8", bleedHours: 245)}},
            {{Visit(3, "PLU-1", "2025-03-03T09:05:00+00:00", dial: 2_520_000, inhibitorCm: "45", inhibitorAddedL: "0", biocideCm: "26.4", biocideAddedL: "8", bleedHours: 390)}},
            {{Visit(4, "YAF-1", "2025-03-24T09:05:00+00:00", dial: 2_520_000, inhibitorCm: "45", inhibitorAddedL: "0", biocideCm: "26.4", biocideAddedL: "8", bleedHours: 390)}}
          ]
        }
        """;

    private static string Visit(int number, string site, string arrived, int dial, string inhibitorCm, string inhibitorAddedL, string biocideCm, string biocideAddedL, int bleedHours) => string.Create(
        CultureInfo.InvariantCulture,
        $$"""
        {
          "id": "0198b000-0000-7000-8000-00000000000{{number}}", "site": "{{site}}", "technician": "RYA", "kind": "routine", "arrived": "{{arrived}}", "left": "{{arrived.Replace("T09:05", "T10:05", StringComparison.Ordinal)}}",
          "systems": [{
            "system": "CT-1", "running": true, "inUse": true,
            "readings": [
              {"at": "tower", "test": "conductivity", "source": "controller", "value": 1226, "unit": "uS/cm"},
              {"at": "tower", "test": "conductivity", "source": "reference", "instrument": "HM-1", "value": 1232, "unit": "uS/cm"},
              {"at": "make-up", "test": "conductivity", "source": "reference", "instrument": "HM-1", "value": 300, "unit": "uS/cm"},
              {"at": "make-up", "test": "chloride", "value": 23, "unit": "mg/L"},
              {"at": "make-up", "test": "calcium", "value": 82, "unit": "mg/L"},
              {"at": "make-up", "test": "alkalinity", "value": 75, "unit": "mg/L"},
              {"at": "tower", "test": "chloride", "value": 103.5, "unit": "mg/L"},
              {"at": "tower", "test": "calcium", "value": 365, "unit": "mg/L"},
              {"at": "tower", "test": "alkalinity", "value": 320, "unit": "mg/L"},
              {"at": "tower", "test": "iron", "value": 0.4, "unit": "mg/L"},
              {"at": "tower", "test": "temperature", "value": 27, "unit": "Cel"},
              {"at": "tower", "test": "pH", "value": 8.6, "unit": "[pH]"},
              {"at": "tower", "test": "inhibitor", "value": 100, "unit": "mg/L"}
            ],
            "probes": [{"probe": "C1", "of": "conductivity", "settledMin": 5, "asFound": 1226, "reference": 1232, "instrument": "HM-1", "unit": "uS/cm"}],
            "meters": [{"meter": "MU", "dial": {{dial}}, "total": {{dial - 200_000}}}],
            "drums": [
              {"drum": "D-INH", "level": {{inhibitorCm}}, "unit": "cm", "addedL": {{inhibitorAddedL}}, "spareL": 25},
              {"drum": "D-B1", "level": {{biocideCm}}, "unit": "cm", "addedL": {{biocideAddedL}}, "spareL": 25}
            ],
            "hoursRun": [
              {"output": "bleed", "hours": {{bleedHours}}},
              {"output": "inhibitor", "hours": {{8.7 * number:0.0}}},
              {"output": "biocide-1", "hours": {{2.5 * number:0.0}}}
            ],
            "pumps": [{"pump": "P-INH", "strokeFound": 60, "speedFound": 100}, {"pump": "P-B1", "strokeFound": 80, "speedFound": 100}],
            "switches": [
              {"output": "bleed", "found": "automatic", "left": "automatic"},
              {"output": "inhibitor", "found": "automatic", "left": "automatic"},
              {"output": "biocide-1", "found": "automatic", "left": "automatic"}
            ]
          }]
        }
        """);
}
