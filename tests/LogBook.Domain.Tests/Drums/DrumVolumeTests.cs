using CsCheck;
using LogBook.Domain.Drums;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Drums;

public sealed class DrumVolumeTests
{
    private static readonly Product P40 = new() { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor, DensityKgPerL = 1.12 };
    private static readonly Drum Upright = new()
    {
        Code = "D", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62, UnusableL = 2,
    };

    private static readonly Drum Lying = new()
    {
        Code = "D", Product = "P-40", Shape = DrumShape.HorizontalCylinder, DiameterCm = 120, LengthCm = 250,
    };

    private static readonly Drum Strapped = new()
    {
        Code = "D", Product = "P-40", Shape = DrumShape.Table, Points = [[0, 0], [10, 80], [50, 480], [60, 500]],
    };

    [Fact]
    public void HorizontalCylinderShare_OfALevelAndItsMirror_AddUpToOne() => Gen.Double[0, 1].Sample(x => Assert.Equal(
        1, TankGeometry.HorizontalCylinderShare(x) + TankGeometry.HorizontalCylinderShare(1 - x), 1e-12));

    [Fact]
    public void HorizontalCylinderShare_FilmOfLiquid_IsNeverNegativeAndRises()
    {
        // The arc cosine form loses its digits here and gives -2e-9 for a level of 1e-17.
        double[] shares = [.. Enumerable.Range(1, 17).Select(n => TankGeometry.HorizontalCylinderShare(Math.Pow(10, -n)))];

        Assert.All(shares, share => Assert.InRange(share, 0, 0.06));
        Assert.Equal(shares.OrderDescending(), shares);
    }

    [Fact]
    public void LitresPerCm_LyingCylinder_IsTheSlopeOfTheVolume() => Gen.Double[5, 115].Sample(level =>
    {
        double At(double cm) => DrumVolume.FromLevel(Lying, cm, "cm", P40).Value.Value;

        var slope = (At(level + 0.001) - At(level - 0.001)) / 0.002;

        Assert.Equal(1, DrumVolume.LitresPerCm(Lying, level).Value / slope, 1e-5);
    });

    [Fact]
    public void FromLevel_UprightDrum_IsInProportionWithDipUncertainty()
    {
        var volume = DrumVolume.FromLevel(Upright, 31, "cm", P40).Value;

        Assert.Equal(30, volume.Value, 1e-9);
        Assert.Equal(60 / 62.0, volume.StandardUncertainty, 1e-9);
    }

    [Theory]
    [InlineData(50, "%", 30)]
    [InlineData(30, "L", 30)]
    [InlineData(10, "[gal_us]", 37.85411784)]
    [InlineData(12.2047244094, "[in_i]", 30)]
    public void FromLevel_OtherUnits_GiveLitres(double level, string unit, double litres) =>
        Assert.Equal(litres, DrumVolume.FromLevel(Upright, level, unit, P40).Value.Value, 1e-6);

    [Fact]
    public void FromLevel_ByWeight_TakesTareAndDensity()
    {
        var scale = new Drum { Code = "D", Product = "P-40", Shape = DrumShape.ByWeight, TareKg = 3, CapacityL = 60 };

        var volume = DrumVolume.FromLevel(scale, 36.6, "kg", P40).Value;

        Assert.Equal(30, volume.Value, 1e-9);
        Assert.Equal(0.5 / 1.12, volume.StandardUncertainty, 1e-9);
    }

    [Theory]
    [InlineData(5, 40)]
    [InlineData(10, 80)]
    [InlineData(30, 280)]
    [InlineData(60, 500)]
    public void FromLevel_Table_IsLinearBetweenPoints(double cm, double litres) =>
        Assert.Equal(litres, DrumVolume.FromLevel(Strapped, cm, "cm", P40).Value.Value, 1e-9);

    [Theory]
    [InlineData(-1, "cm", "level-outside")]
    [InlineData(62.1, "cm", "level-outside")]
    [InlineData(101, "%", "level-outside")]
    [InlineData(61, "L", "level-outside")]
    [InlineData(double.NaN, "cm", "level-outside")]
    [InlineData(10, "kg", "level-unit-for-shape")]
    [InlineData(10, "uS/cm", "level-unit-for-shape")]
    [InlineData(10, null, "unit-unknown")]
    public void FromLevel_ImpossibleOrForeign_HasNoValue(double level, string? unit, string reason) =>
        Assert.Equal(reason, Assert.Single(DrumVolume.FromLevel(Upright, level, unit, P40).Reasons).Code);

    [Fact]
    public void FromLevel_LyingDrumNearTheBottom_StillHasUncertainty() =>
        Assert.True(DrumVolume.FromLevel(Lying, 0, "cm", P40).Value.StandardUncertainty > 1);

    [Fact]
    public void FromLevel_TableThatFalls_HasNoValue() => Assert.Equal(
        DrumReasons.TableUnsound,
        Assert.Single(DrumVolume.FromLevel(Strapped with { Points = [[0, 0], [10, 80], [20, 70]] }, 5, "cm", P40).Reasons));

    [Fact]
    public void Usable_BelowTheHeel_IsNothing()
    {
        var low = DrumVolume.FromLevel(Upright, 1.5, "L", P40).Value;

        Assert.Equal(0, DrumVolume.Usable(low, Upright).Value);
        Assert.True(DrumVolume.IsAtHeel(low, Upright));
    }

    [Fact]
    public void Used_WithDelivery_HasTheUncertaintyOfTwoLevels()
    {
        var older = DrumVolume.FromLevel(Upright, 10, "cm", P40).Value;
        var newer = DrumVolume.FromLevel(Upright, 40, "cm", P40).Value;

        var used = DrumVolume.Used(older, newer, addedL: 50);

        Assert.Equal(50 - (30 * 60 / 62.0), used.Value, 1e-9);
        Assert.Equal(Math.Sqrt(2) * 60 / 62, used.StandardUncertainty, 1e-9);
    }
}
