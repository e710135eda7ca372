using CsCheck;
using LogBook.Domain.Cycles;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.SetPoints;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.SetPoints;

public sealed class SetPointCalculatorTests
{
    private static readonly SetPointCase Umb1 = new() { TargetCycles = 6, Conductivity = new MakeUpReadings([260]), Ions = Ions(("chloride", [22]), ("silica", [6])) };

    [Fact]
    public void Of_TargetAlone_ConductivityUnderReads()
    {
        var proposal = SetPointCalculator.Of(Umb1).Value;

        // trade.md 6.1: 1,560 µS/cm scaled by f(6) = 1 - 0.025 x 5.
        Assert.Equal(1560 * 0.875, proposal.SetPoint.Result.Value.Value, 1e-9);
        Assert.Null(proposal.Limiting);
        Assert.InRange(proposal.MeanCycles.Value, 5.85, 5.99);
    }

    [Fact]
    public void Of_ChlorideScarce_IsNamedAndLimits()
    {
        var stainless = new WaterSystem { Site = "UMB-1", Code = "CT-1", Name = "Tower", Kind = SystemKind.OpenRecirculating, Metals = [Metal.Stainless] };
        var proposal = SetPointCalculator.Of(Umb1 with { Ions = Ions(("chloride", [50])), Limits = IonLimits.Of(stainless, null) }).Value;

        Assert.Equal((TestCodes.Chloride, IonLimitKind.Metal), (proposal.Limiting!.Test, proposal.Limiting.Kind));
        Assert.Equal(200 / 50.0, proposal.CyclesAtSetPoint, 1e-9);
        Assert.Contains(proposal.NotKnown, limit => limit.Test == TestCodes.Silica);
        Assert.Contains("British Stainless Steel Association", proposal.Limiting.Basis.In(Language.English), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mg/L", null, 250.0)]
    [InlineData("ug/L", null, 0.25)]
    [InlineData("mg/L", "as NaCl", 151.656)] // 35.45 / 58.44 by IUPAC abridged atomic weights (Na 22.990, Cl 35.45)
    [InlineData("mg/L", "as SiO2", null)]
    [InlineData("uS/cm", null, null)]
    public void IonLimits_RangeInAnotherUnitOrBasis_IsConvertedOrNamed(string unit, string? basis, double? most)
    {
        var plain = new WaterSystem { Site = "UMB-1", Code = "CT-1", Name = "Tower", Kind = SystemKind.OpenRecirculating };
        var programme = new Programme { From = new DateOnly(2026, 1, 1), Ranges = [new TestRange { At = SamplePoints.Tower, Test = TestCodes.Chloride, High = 250, Unit = unit, Basis = basis }] };

        var limit = IonLimits.Of(plain, programme).SingleOrDefault(one => one.Test == TestCodes.Chloride);

        Assert.Equal(most is null ? [TestCodes.Chloride] : [], IonLimits.NotConverted(programme));
        Assert.Equal(most is null, limit is null);
        Assert.Equal(most ?? 0, limit?.Most ?? 0, 0.01);
    }

    [Fact]
    public void IonLimits_DischargeOnFile_IsThereWithItsSourceAndLimits()
    {
        var permitted = new WaterSystem { Site = "UMB-1", Code = "CT-1", Name = "Tower", Kind = SystemKind.OpenRecirculating, DischargeUsPerCm = 1000, DischargeSource = "permit 12 of 3 March" };

        var limits = IonLimits.Of(permitted, null);

        Assert.Equal((TestCodes.Conductivity, 1000.0, "limit of the discharge (permit 12 of 3 March)"), limits.Where(one => one.Kind == IonLimitKind.Discharge).Select(one => (one.Test, one.Most, one.Basis.En)).Single());
        Assert.Equal(1000, SetPointCalculator.Of(Umb1 with { Limits = limits }).Value.SetPoint.Result.Value.Value, 1e-6);
        Assert.DoesNotContain(IonLimits.Of(permitted with { DischargeUsPerCm = null }, null), one => one.Kind == IonLimitKind.Discharge);
    }

    [Fact]
    public void Of_DischargeConductivityLimited_IsTheSetPoint()
    {
        var proposal = SetPointCalculator.Of(Umb1 with { Limits = [new IonLimit(TestCodes.Conductivity, 1000, IonLimitKind.Discharge, new Text("permit", "permiso", "licença"))] }).Value;

        Assert.Equal(1000, proposal.SetPoint.Result.Value.Value, 1e-6);
        Assert.Equal(IonLimitKind.Discharge, proposal.Limiting!.Kind);
    }

    [Fact]
    public void Of_MakeUpAboveTheLimit_HasNoValue() => Assert.Equal(
        SetPointReasons.MakeUpAboveLimit,
        Assert.Single(SetPointCalculator.Of(Umb1 with { Limits = [new IonLimit(TestCodes.Chloride, 20, IonLimitKind.Entered, new Text("", "", ""))] }).Reasons));

    [Fact]
    public void Percentile_TwelveReadings_IsDefinitionSevenOfHyndmanAndFan()
    {
        // By hand: (12 - 1) x 0.9 + 1 = 10.9th of the ordered readings 1 to 12.
        Assert.Equal(10.9, new MakeUpReadings([12, 1, 11, 2, 10, 3, 9, 4, 8, 5, 7, 6, 400]).Percentile(0.9).Value, 1e-12);
        Assert.Equal(7, new MakeUpReadings([7]).Percentile(0.9).Value);
        Assert.False(new MakeUpReadings([]).Percentile(0.9).HasValue);
    }

    [Fact]
    public void CyclesAt_ConductivityOfCycles_ComesBack() => Gen.Select(Gen.Double[50, 2000], Gen.Double[1, 12], Gen.Double[0, 0.03]).Sample((makeUp, cycles, bend) =>
    {
        var law = ConductivityLaw.Of(makeUp, bend).Value;

        Assert.Equal(cycles, law.CyclesAt(law.At(cycles).Value).Value, 1e-9);
    });

    [Fact]
    public void At_UsualBend_IsTheOneRatioOfTheChapter() => Gen.Double[1, 12].Sample(cycles => Assert.Equal(
        CyclesOfConcentration.ConductivityRatioOverTrue(cycles).Value * cycles, ConductivityLaw.Of(1).Value.At(cycles).Value, 1e-12));

    private static Dictionary<string, MakeUpReadings> Ions(params (string Test, double[] Readings)[] ions) => ions.ToDictionary(ion => ion.Test, ion => new MakeUpReadings(ion.Readings));
}
