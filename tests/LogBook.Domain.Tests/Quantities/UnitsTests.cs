using CsCheck;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Tests.Quantities;

public sealed class UnitsTests
{
    [Fact]
    public void Convert_ThereAndBack_ReturnsTheEntryToTwelveDigits()
    {
        var pairs = Units.All.SelectMany(from => Units.All.Where(to => to.Dimension == from.Dimension).Select(to => (From: from.Code, To: to.Code))).ToArray();

        Gen.Select(Gen.Int[0, pairs.Length - 1], Gen.Double[1e-3, 1e7]).Sample((index, value) =>
        {
            var pair = pairs[index];
            var back = Units.Convert(Units.Convert(value, pair.From, pair.To).Value, pair.To, pair.From).Value;

            // A temperature goes through an offset of 32 °F: its twelve digits are those of the larger number.
            Assert.Equal(0, (back - value) / Math.Max(value, pair.From.Contains("deg") || pair.To.Contains("deg") ? 32 : 0), 1e-12);
        });
    }

    [Fact]
    public void All_EveryCodeOfTheFormat_HasAFactor() => Assert.Equal(UnitCodes.All.Order(), Units.All.Select(unit => unit.Code).Order());

    [Theory]
    [InlineData(null, "L", "unit-unknown")]
    [InlineData("gal", "L", "unit-unknown")]
    [InlineData("l", "L", "unit-unknown")]
    [InlineData("L", "kg", "unit-foreign")]
    [InlineData("%", "1", "unit-foreign")]
    public void Convert_MissingOrForeignUnit_HasNoValue(string? from, string to, string reason) =>
        Assert.Equal(reason, Assert.Single(Units.Convert(1, from, to).Reasons).Code);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void ToVolume_ImpossibleNumber_HasNoValue(double value) => Assert.False(Units.ToVolume(value, "L").HasValue);

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Factories_ImpossibleNumber_Throw(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Volume.FromLitres(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Conductivity.FromMicrosiemensPerCm(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Flow.FromLitresPerHour(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Mass.FromKilograms(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ph.From(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Concentration(value, "as Cl"));
    }

    [Fact]
    public void Temperature_BelowAbsoluteZero_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(-274));

    [Fact]
    public void Quantities_Compare_BySize()
    {
        Assert.True(Volume.FromUsGallons(1) < Volume.FromImperialGallons(1));
        Assert.True(Conductivity.FromMillisiemensPerCm(1) >= Conductivity.FromMicrosiemensPerCm(1000));
        Assert.True(Temperature.FromFahrenheit(77) <= Temperature.FromCelsius(25.0000001));
    }
}
