using LogBook.Application.History;
using LogBook.Testing.Readers;
using LogBook.Domain.Programmes;

namespace LogBook.Application.Tests.Readers;

public sealed class SheetQueryTests
{
    [Fact]
    public async Task OfAsync_MoreThanTwelveVisits_ShowsTheLastTwelveOldestFirst()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        for (var i = 0; i < 15; i++)
        {
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(i), 1200 + (i * 10)));
        }

        var sheet = await new SheetQuery(firm.Store).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1");

        Assert.Equal(12, sheet!.Visits.Count);
        var line = Assert.Single(sheet.Lines);
        Assert.Equal("1230", line.Cells[0].Text);
        Assert.Equal("1340", line.Cells[^1].Text);
        Assert.Equal(RangeStanding.Inside, line.Cells[0].Standing);
    }

    [Fact]
    public async Task OfAsync_ValueOutsideItsRange_IsMarked()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1200));

        var sheet = await new SheetQuery(firm.Store).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1");

        Assert.Equal(RangeStanding.Below, sheet!.Lines[0].Cells[0].Standing);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task OfAsync_ForeignCustomer_IsAbsent()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddSiteAsync("YAF-1");
        var other = await firm.AddSiteAsync("NUR-1");

        Assert.Null(await new SheetQuery(firm.Store).OfAsync(ReadingFirm.CustomerOf(other.Customer), "YAF-1", "CT-1"));
    }
}
