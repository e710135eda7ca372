using LogBook.Domain.Clocks;

namespace LogBook.Domain.Tests.Clocks;

public sealed class RuleAdoptionTests
{
    private static readonly RuleTemplate Template = RuleTemplates.All.Single(template => template.Rule.Code == "NYS-LEG");

    private static readonly DateOnly Day = new(2026, 3, 1);

    [Fact]
    public void Adopt_New_BeginsOnTheDayAndKeepsSourceAndCheck()
    {
        var adoption = RuleAdoption.Of(Template, Day, "I. Wendle asked on 20 February 2026", [])!;

        Assert.Equal((Day, (DateOnly?)null), (adoption.Rule.From, adoption.Rule.To));
        Assert.Contains("10 NYCRR", adoption.Rule.Source, StringComparison.Ordinal);
        Assert.Contains("I. Wendle asked", adoption.Rule.Source, StringComparison.Ordinal);
        Assert.Equal(Template.Rule.Bands, adoption.Rule.Bands);
        Assert.Equal((3.0, Template.KeepYears), (adoption.Rule.KeepYears, adoption.Rule.KeepYears));
        Assert.Null(adoption.Ended);
    }

    [Fact]
    public void Adopt_Again_EndsTheVersionBeforeTheDayBefore()
    {
        var first = RuleAdoption.Of(Template, Day, "x", [])!.Rule;

        var second = RuleAdoption.Of(Template, Day.AddDays(100), "y", [first])!;

        Assert.Equal(Day.AddDays(99), second.Ended!.To);
        Assert.Equal(Day, second.Ended.From);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Adopt_Backwards_IsRefused(int days) =>
        Assert.Null(RuleAdoption.Of(Template, Day.AddDays(days), "y", [RuleAdoption.Of(Template, Day, "x", [])!.Rule]));

    [Theory]
    [InlineData("2016-07-05", false)]
    [InlineData("2016-07-06", true)]
    [InlineData("2026-05-06", true)]
    [InlineData("2026-05-07", false)]
    public void Adopt_TemplateThatEnds_KeepsItsEndAndItsDates(string from, bool isTaken)
    {
        // The template's own dates: 6 July 2016 to 6 May 2026.
        var ending = RuleTemplates.All.Single(template => template.Rule is { Code: "NYC-LEG", To: not null });

        var adoption = RuleAdoption.Of(ending, DateOnly.ParseExact(from, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture), "x", []);

        Assert.Equal(isTaken ? new DateOnly(2026, 5, 6) : null, adoption?.Rule.To);
        Assert.Equal(isTaken, adoption is not null);
    }

    [Fact]
    public void Promises_AreInOrderAndHaveASource()
    {
        Assert.Equal(PromiseTemplate.All.OrderBy(promise => promise.SummaryWithinHours ?? double.MaxValue), PromiseTemplate.All);
        Assert.All(PromiseTemplate.All, promise => Assert.NotEqual(promise.SummaryWithinHours is null, promise.SummaryByMonthDay is null));
        Assert.All(PromiseTemplate.All, promise => Assert.NotEmpty(promise.Source));
    }
}
