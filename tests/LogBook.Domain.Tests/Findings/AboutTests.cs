using LogBook.Domain.Findings;

namespace LogBook.Domain.Tests.Findings;

public sealed class AboutTests
{
    [Theory]
    [InlineData("instrument", "HM 1")]
    [InlineData("lot", "LOT 04:12 B")]
    [InlineData("person", null)]
    public void CodeIn_CodesWithSpaces_AreTakenWhole(string part, string? code) =>
        Assert.Equal(code, About.CodeIn(About.Key(new About { Instrument = "hm 1", Lot = "lot 04:12 b" }), part));

    [Fact]
    public void CodeIn_NoSubject_HasNone() => Assert.Null(About.CodeIn(About.Key(null), "drum"));
}
