using CsCheck;
using LogBook.Domain.Quantities;
using LogBook.Domain.TestKits;

namespace LogBook.Domain.Tests.TestKits;

public sealed class TestKitsTests
{
    [Theory]
    [InlineData("as Ca", "as Mg")]
    [InlineData("as Cl2", "as Cl")]
    [InlineData("as product", "as PO4")]
    [InlineData("as SiO2", "as CaCO3")]
    public void Factor_OtherSubstance_HasNoValue(string from, string to) =>
        Assert.Equal(TestKitReasons.BasisForeign, Assert.Single(BasisConversion.Factor(from, to).Reasons));

    [Fact]
    public void Convert_ThereAndBack_ReturnsTheEntry() => Gen.Double[0.001, 1e4].Sample(value =>
    {
        var back = BasisConversion.Convert(BasisConversion.Convert(new Concentration(value, "as Ca"), Bases.AsCaCO3).Value, "as Ca").Value;

        Assert.Equal(1, back.MilligramsPerLitre / value, 1e-12);
        Assert.Equal("as Ca", back.Basis);
    });

    [Fact]
    public void Factor_SameBasis_IsOneEvenWhenUnknown() => Assert.Equal(1, BasisConversion.Factor("as Tracer", "as tracer").Value);

    [Fact]
    public void AlkalinityForms_AnyPAndM_SumToM() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 500]).Sample((share, m) =>
    {
        var forms = AlkalinityForms.Of(share * m, m).Value;

        Assert.Equal(m, forms.Hydroxide + forms.Carbonate + forms.Bicarbonate, 1e-9);
        Assert.True(forms is { Hydroxide: >= 0, Carbonate: >= 0, Bicarbonate: >= 0 });
    });

    [Fact]
    public void AlkalinityForms_PAboveM_HasNoValue() => Assert.Equal(TestKitReasons.PAboveM, Assert.Single(AlkalinityForms.Of(90, 80).Reasons));

    [Fact]
    public void Combined_FreeAboveTotal_IsRejected() => Assert.Equal(TestKitReasons.FreeAboveTotal, Assert.Single(Halogen.Combined(1, 1.2).Reasons));

    [Fact]
    public void Diluted_TotalBelowSample_HasNoValue() => Assert.Equal(
        TestKitReasons.DilutionBackwards, Assert.Single(Titration.Diluted(3, 10, 5).Reasons));

    [Fact]
    public void Alkalinity_NoSample_HasNoValue() => Assert.Equal(TestKitReasons.NoSample, Assert.Single(Titration.Alkalinity(5, 0.02, 0).Reasons));

    [Fact]
    public void ActiveShare_AtThePKa_IsHalf() => Assert.Equal(0.5, Halogen.ActiveShare(Ph.From(7.5), 7.5), 1e-12);
}
