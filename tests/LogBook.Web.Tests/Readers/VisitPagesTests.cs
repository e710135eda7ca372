using Bunit;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Help;
using LogBook.Web.Features.Visits;

namespace LogBook.Web.Tests.Readers;

public sealed class VisitPagesTests
{
    private static readonly Guid Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a11");

    [Fact]
    public async Task Visit_Customer_SeesReadingsAndNeitherActsNorVersions()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: OneVisitAsync);

        var page = pages.Render<VisitPage>($"/visits/{Id}", ("Id", Id));

        Assert.Contains("1350\u00a0µS/cm", page.Markup.Replace("&nbsp;", "\u00a0", StringComparison.Ordinal).Replace("&#160;", "\u00a0", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".visit-acts"));
        Assert.Empty(page.FindAll("#versions"));
        Assert.DoesNotContain("/amend", page.Markup, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PersonRole.Supervisor, true)]
    [InlineData(PersonRole.Customer, false)]
    public async Task Visit_CountersReadAgain_ShowTheFirmWhatWasTypedFirst(PersonRole role, bool shown)
    {
        await using var pages = await ReadPages.ForAsync(role, fill: async firm =>
        {
            var site = await firm.AddSiteAsync("YAF-1");
            var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350, id: Id);
            await firm.AddVisitAsync(site, visit with
            {
                Systems =
                [
                    visit.Systems[0] with
                    {
                        Meters = [new MeterReading { Meter = "MU", Dial = 502, FirstDial = 52, Total = 501, FirstTotal = 501 }],
                        Drums = [new DrumReading { Drum = "D-INH", Level = 41.5, Unit = "cm", FirstLevel = 14.5 }],
                        HoursRun = [new HoursReading { Output = "bleed", Hours = 118, FirstHours = 811 }],
                        Drawdowns = [new Drawdown { Pump = "P-INH", Millilitres = 25, Seconds = 60 }],
                        ClockOffByMin = -7,
                    },
                ],
            });
            return site.Customer;
        });

        var said = pages.Render<VisitPage>($"/visits/{Id}", ("Id", Id)).Nodes.OfType<AngleSharp.Dom.INode>().Aggregate(string.Empty, (all, node) => all + node.TextContent).Replace('\u00a0', ' ');

        Assert.Equal(shown, said.Contains("dial 502 (first typed as 52)", StringComparison.Ordinal));
        Assert.Equal(shown, said.Contains("total 501 (read again, the same)", StringComparison.Ordinal));
        Assert.Equal(shown, said.Contains("41.5 cm (first typed as 14.5 cm)", StringComparison.Ordinal));
        Assert.Equal(shown, said.Contains("118 h run (first typed as 811 h)", StringComparison.Ordinal));
        Assert.Contains("drawdown: 25 mL in 60 s", said, StringComparison.Ordinal);
        Assert.Contains("Controller clock -7 min fast", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Visits_EachState_IsSaid()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneVisitAsync);

        Assert.Contains("Closed", Assert.Single(pages.Render<VisitsPage>("/visits").FindAll("tbody tr")).TextContent, StringComparison.Ordinal);
        Assert.Equal("Nothing matches these filters", pages.Render<VisitsPage>("/visits?kind=cleaning").Find(".empty-title").TextContent);
    }

    [Fact]
    public async Task Visit_Unknown_IsAbsent()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneVisitAsync);
        var other = Guid.CreateVersion7();

        Assert.Equal("Nothing here", pages.Render<VisitPage>($"/visits/{other}", ("Id", other)).Find("h1").TextContent);
    }

    [Theory]
    [InlineData("")]
    [InlineData("attention?kind=feed-low")]
    [InlineData("attention/finding?kind=feed-low")]
    [InlineData("sites")]
    [InlineData("sites/YAF-1")]
    [InlineData("sites/YAF-1/systems/CT-1")]
    [InlineData("sites/YAF-1/systems/CT-1/sheet")]
    [InlineData("visits")]
    [InlineData("visits/01955b40-5e60-7c77-9a57-0a6f8a0d2a11")]
    [InlineData("search?q=x")]
    public void Help_OfEachPage_IsThereInThreeLanguages(string address)
    {
        var key = HelpPages.PathFor(address);

        var page = HelpPages.Find(key["/help/".Length..]);

        Assert.NotNull(page);
        Assert.All(page.Paragraphs, text => Assert.All(new[] { text.En, text.Es, text.Pt }, words => Assert.False(string.IsNullOrWhiteSpace(words))));
    }

    private static async Task<int?> OneVisitAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350, id: Id));
        return site.Customer;
    }
}
