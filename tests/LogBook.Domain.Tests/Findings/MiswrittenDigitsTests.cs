using LogBook.Domain.Findings;
using Xunit;

namespace LogBook.Domain.Tests.Findings;

public class MiswrittenDigitsTests
{
    [Fact]
    public void Of_ThreeDigits_AreExchangesAndStepsOfEach() =>
        Assert.Equal([20, 102, 110, 121, 130, 210, 220], MiswrittenDigits.Of(120).Order());

    [Fact]
    public void Of_Zero_IsOne() => Assert.Equal([1], MiswrittenDigits.Of(0));
}
