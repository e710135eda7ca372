using LogBook.Application.Tests.Mail;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Testing;

namespace LogBook.Application.Tests.Summaries;

public sealed class SummaryReaderTests
{
    [Fact]
    [Trait("goal", "S1")]
    public async Task Find_ByACustomer_GivesOwnSummariesOnly()
    {
        await using var house = await MailHouse.StartAsync();
        var visit = await house.ReceiveAsync(SampleFirm.Visit());
        var own = await house.Database.OfCustomerAsync("YAF");
        var other = await house.Database.OfCustomerAsync("PLU");

        var summary = await house.Summaries.FindAsync(own, visit.Id, Language.English);

        Assert.Equal(("Yaffleford College", "YAF-1", 1), (summary!.Customer, summary.SiteCode, summary.Version));
        Assert.Null(await house.Summaries.FindAsync(other, visit.Id, Language.English));
        Assert.Null(await house.Summaries.FindAsync(other, visit.Id, Language.English, version: 1));
        Assert.Null(await house.Summaries.FindAsync(own, Guid.Empty, Language.English));

        // The customer reads the same words as the firm does.
        Assert.Equal(
            Application.Summaries.SummaryHtml.Render((await house.Summaries.FindAsync(house.Database.Supervisor, visit.Id, Language.English))!),
            Application.Summaries.SummaryHtml.Render(summary));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Find_VisitMovedToAnotherCustomer_IsGoneForTheFirst()
    {
        await using var house = await MailHouse.StartAsync();
        var visit = await house.ReceiveAsync(SampleFirm.Visit());
        await house.Database.Get<VisitCare>().MoveAsync(house.Database.Supervisor, visit.Id, "PLU-1", "wrong site chosen");

        Assert.Null(await house.Summaries.FindAsync(await house.Database.OfCustomerAsync("YAF"), visit.Id, Language.English));
        Assert.Equal("PLU-1", (await house.Summaries.FindAsync(await house.Database.OfCustomerAsync("PLU"), visit.Id, Language.English))!.SiteCode);
    }

    [Fact]
    public async Task Find_OlderVersion_SaysWhatItSaidThen()
    {
        await using var house = await MailHouse.StartAsync();
        var visit = await house.ReceiveAsync(SampleFirm.Visit());
        await house.ReceiveAsync(SampleFirm.Amended(visit, inhibitor: 59));

        var first = await house.Summaries.FindAsync(house.Database.Supervisor, visit.Id, Language.English, version: 1);
        var second = await house.Summaries.FindAsync(house.Database.Supervisor, visit.Id, Language.English);

        Assert.Null(first!.ReissueReason);
        Assert.Equal("misread", second!.ReissueReason);
        Assert.Contains(first.Systems[0].Results, result => result.Result == "95\u00a0mg/L" && !result.IsOutside);
        Assert.Contains(second.Systems[0].Results, result => result.Result == "59\u00a0mg/L" && result.IsOutside);
    }
}
