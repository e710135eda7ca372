using LogBook.Domain.History;

namespace LogBook.Domain.Tests.History;

public sealed class SeriesGapsTests
{
    private static readonly DateTime Start = new(2025, 3, 3, 9, 0, 0, DateTimeKind.Unspecified);

    [Fact]
    public void UsualInterval_OneLongGap_IsStillTheUsualOne() =>
        Assert.Equal(TimeSpan.FromDays(7), SeriesGaps.UsualInterval([Start, Start.AddDays(7), Start.AddDays(14), Start.AddDays(60), Start.AddDays(67)]));

    [Theory]
    [InlineData(11, false)]
    [InlineData(12, true)]
    public void IsGap_BeyondOnePointSixIntervals_IsAGap(int days, bool expected) =>
        Assert.Equal(expected, SeriesGaps.IsGap(Start, Start.AddDays(days), TimeSpan.FromDays(7)));

    [Fact]
    public void UsualInterval_TwoReadings_IsUnknownAndNothingIsAGap()
    {
        Assert.Null(SeriesGaps.UsualInterval([Start, Start.AddDays(7)]));
        Assert.False(SeriesGaps.IsGap(Start, Start.AddDays(700), null));
    }
}
