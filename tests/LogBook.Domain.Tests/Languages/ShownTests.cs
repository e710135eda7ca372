using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Tests.Languages;

public class ShownTests
{
    [Theory]
    [InlineData(4.536, 0.052, "1", Language.English, "4.54\u00a0±\u00a00.10")]
    [InlineData(4.536, 0.052, "1", Language.Spanish, "4,54\u00a0±\u00a00,10")]
    [InlineData(58312.4, 1170, "L", Language.English, "58,300\u00a0±\u00a02300\u00a0L")]
    [InlineData(58312.4, 1170, "L", Language.Portuguese, "58.300\u00a0±\u00a02300\u00a0L")]
    [InlineData(-7.42, 2.05, "%", Language.English, "-7\u00a0±\u00a04\u00a0%")]
    [InlineData(-0.2, 3.5, "%", Language.English, "0\u00a0±\u00a07\u00a0%")]
    [InlineData(12.5, 0, "L", Language.Spanish, "12,5\u00a0L")]
    public void Estimated_RoundsToTheUncertainty(double value, double random, string unit, Language language, string expected) =>
        Assert.Equal(expected, Shown.Estimated(new Estimate(value, unit, random), language));

    [Theory]
    [InlineData(1361, "uS/cm", Language.English, "1361\u00a0µS/cm")]
    [InlineData(48211, "m3", Language.English, "48,211\u00a0m³")]
    [InlineData(7.85, "[pH]", Language.Spanish, "pH\u00a07,85")]
    [InlineData(1000, "[CFU]/mL", Language.Portuguese, "1000\u00a0UFC/mL")]
    [InlineData(0.25, "1", Language.Portuguese, "0,25")]
    public void Entered_KeepsTheDigitsEntered(double value, string unit, Language language, string expected) =>
        Assert.Equal(expected, Shown.Entered(value, unit, language));

    [Theory]
    [InlineData(84.0, "d", Language.English, "84\u00a0d")]
    [InlineData(0.75, "1", Language.Spanish, "0,75")]
    [InlineData(0.2419, "1", Language.Portuguese, "0,242")]
    [InlineData(100.4, "%", Language.English, "100\u00a0%")]
    [InlineData(12.04, "L", Language.Spanish, "12\u00a0L")]
    [InlineData(7.504, "[pH]", Language.Spanish, "pH\u00a07,5")]
    public void PlainWithUnit_ClaimsNoMoreThanIsKnown(double value, string unit, Language language, string expected) =>
        Assert.Equal(expected, Shown.PlainWithUnit(value, unit, language));

    [Theory]
    [InlineData(-15.0, 15.0, "%", Language.Spanish, "-15 a 15\u00a0%")]
    [InlineData(7.5, 9.0, "[pH]", Language.Portuguese, "pH\u00a07,5 a 9")]
    [InlineData(null, 90.0, "d", Language.Spanish, "como máximo 90\u00a0d")]
    [InlineData(0.75, null, "1", Language.Portuguese, "no mínimo 0,75")]
    [InlineData(1350.0, 12345.0, "uS/cm", Language.Portuguese, "1350 a 12.345\u00a0µS/cm")]
    [InlineData(null, null, "d", Language.English, "")]
    public void Range_ReadsInTheLanguage(double? low, double? high, string unit, Language language, string expected) =>
        Assert.Equal(expected, Shown.Range(low, high, unit, language));

    [Fact]
    public void Said_NumbersAndAmounts_ReadAsPlain() => Assert.Equal(
        "84 de 90,5\u00a0d, pH\u00a07,5",
        new Said(new Text("{0} of {1}, {2}", "{0} de {1}, {2}", "{0} de {1}, {2}"), 84.0, new Amount(90.5, "d"), new Amount(7.5, "[pH]")).In(Language.Spanish));

    [Fact]
    public void Computed_HalfGoesAwayFromZero()
    {
        Assert.Equal("2.5", Shown.Computed(2.45, Language.English, 2));
        Assert.Equal("-2.5", Shown.Computed(-2.45, Language.English, 2));
    }

    [Fact]
    public void DayAndTime_IsInTheZoneOfTheSite() =>
        Assert.Equal("1 Jul 2025 10:05", Shown.DayAndTime(new DateTime(2025, 7, 1, 9, 5, 0, DateTimeKind.Utc), TimeZoneInfo.FindSystemTimeZoneById("Europe/London"), Language.English));
}
