using System.Diagnostics;
using System.Globalization;
using LogBook.Application.Data;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Visits;
using LogBook.Testing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit.Abstractions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>Sending over a bad line: every visit once, with its photos, and never told to be further than it is.</summary>
public sealed class SendingTests(ITestOutputHelper output)
{
    private const double ShareLost = 0.4;

    private static int Visits => Number("LOGBOOK_VISITS", 20);

    private static int Orders => Number("LOGBOOK_ORDERS", 200);

    [Fact]
    [Trait("goal", "R4")]
    public async Task Send_AnswersLost_ArrivesExactlyOnceWithAllPhotos()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address) { LosesAnswers = ShareLost };
        await using var tablet = await Tablet.StartAsync(link.Address, "sending");
        await tablet.RegisterAsync();
        var before = await CountAsync(host, db => db.Visits.CountAsync());
        var lasted = Stopwatch.StartNew();
        for (var number = 0; number < Visits; number++)
        {
            await EnqueueAsync(tablet, number);
        }

        var rounds = 0;
        while (await tablet.AskAsync<int>("queue.js", "async (queue) => { await queue.send(); return (await queue.visits()).filter((row) => row.state === 'device').length; }") > 0)
        {
            Assert.True(++rounds < 20 * Visits, "The queue does not empty.");
        }

        Assert.True(link.Lost > Visits / 5, $"Only {link.Lost} answers were lost: the line was too good to try anything.");
        var (visits, versions, photos) = (
            await CountAsync(host, db => db.Visits.CountAsync()) - before,
            await CountAsync(host, db => db.VisitVersions.CountAsync(version => version.Document.Contains("queued visit"))),
            await CountAsync(host, db => db.Photos.CountAsync()));
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{Visits} visits with a photo each, {link.Lost} answers lost, {rounds} rounds in {lasted.Elapsed.TotalSeconds:0} s: {visits} visits in {versions} versions and {photos} photos on the server."));
        Assert.Equal((Visits, Visits, Visits), (visits, versions, photos));
    }

    [Fact]
    [Trait("goal", "R10")]
    public async Task Labels_AnyOrderOfEvents_NeverRunAhead()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "labels");
        var lasted = Stopwatch.StartNew();

        var report = await tablet.Page.EvaluateAsync<LabelReport>(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Capture", "labels.js")), Orders);

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{report.Orders} orders in {lasted.Elapsed.TotalSeconds:0} s; labels checked: {string.Join(", ", report.Reached.OrderBy(label => label.Key, StringComparer.Ordinal).Select(label => $"{label.Value} {label.Key}"))}; {report.Ahead.Length} ran ahead, {report.Lost.Length} lost something."));
        Assert.Equal([], report.Ahead);
        Assert.Equal([], report.Lost);
        Assert.Equal(Orders, report.Orders);

        // Every label was seen, and each says what has happened: what came back and what stands twice are told apart from what waits and what is there.
        Assert.Equal(["conflict", "device", "mailed", "refused", "server", "settled"], report.Reached.Keys.Order(StringComparer.Ordinal));
        Assert.Equal("On this device", report.Said["device"]);
        Assert.Equal("On the server", report.Said["server"]);
        Assert.Equal("On the server, e-mailed", report.Said["mailed"]);
        Assert.Equal("Came back: to be corrected", report.Said["refused"]);
        Assert.Equal("Stands twice on the server: a supervisor settles it", report.Said["conflict"]);
        Assert.Equal("Settled by a supervisor: the other text stands, this one is kept beside it", report.Said["settled"]);
    }

    private static async Task EnqueueAsync(Tablet tablet, int number)
    {
        var visit = SampleFirm.Visit("YAF-1", string.Create(CultureInfo.InvariantCulture, $"2025-03-{(number % 24) + 1:00}T{7 + (number / 24):00}:00:00+00:00"));
        var photo = Guid.CreateVersion7();
        var hash = await tablet.AskAsync<string>(
            "photos.js",
            """
            async (photos, [id, visit, number]) => {
              const canvas = new OffscreenCanvas(64, 48);
              const pen = canvas.getContext("2d");
              pen.fillStyle = `hsl(${number * 17} 60% 50%)`;
              pen.fillRect(0, 0, 64, 48);
              const blob = await canvas.convertToBlob({ type: "image/png" });
              return photos.keep(id, visit, new Uint8Array(await blob.arrayBuffer()));
            }
            """,
            new object[] { photo.ToString("D"), visit.Id.ToString("D"), number });
        var document = VisitDocument.Canonical(VisitDocument.WithIds(visit with
        {
            Technician = "RYA",
            Notes = "queued visit",
            Photos = [new Photo { Id = photo, Of = "display", Sha256 = hash }],
        }));
        await tablet.AskAsync<object?>(
            "queue.js",
            "(queue, [id, document, photo]) => queue.enqueue({ id, version: 1, site: 'YAF-1', siteName: 'Yaffleford College', person: 'RYA', document, photos: [photo] })",
            new object[] { visit.Id.ToString("D"), document, photo.ToString("D") });
    }

    private static Task<int> CountAsync(JobHost host, Func<LogBookDb, Task<int>> count) =>
        host.App.Services.GetRequiredService<LogBookStore>().ReadAsync(Viewer.System("test"), count);

    private static int Number(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), CultureInfo.InvariantCulture, out var given) ? given : otherwise;

    private sealed class LabelReport
    {
        public int Orders { get; set; }

        public Dictionary<string, int> Reached { get; set; } = [];

        public string[] Ahead { get; set; } = [];

        public string[] Lost { get; set; } = [];

        public Dictionary<string, string> Said { get; set; } = [];
    }
}
