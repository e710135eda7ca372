using CsCheck;
using LogBook.Domain.Dosing;
using LogBook.Domain.Estimates;

namespace LogBook.Domain.Tests.Dosing;

public sealed class WashoutTests
{
    [Fact]
    public void ImpliedLevel_OfTheExpectedUse_IsTheTarget() =>
        Gen.Select(Gen.Double[1, 1e6], Gen.Double[1.1, 10], Gen.Double[1, 300], Gen.Double[0.9, 1.4]).Sample((makeUp, cycles, target, density) =>
        {
            var (m, c) = (Estimate.Exact(makeUp, "L"), Estimate.Exact(cycles));
            var used = Dose.ExpectedUse(m, c, target, density).Value;

            Assert.Equal(1, Dose.ImpliedLevel(used, m, c, density).Value.Value / target, 1e-12);
        });

    [Fact]
    public void LevelAfterFeed_VeryShort_IsTheInstantDose() => Assert.Equal(
        100, Washout.LevelAfterFeed(2e9, 20, 1, 1e-6).Value, 1e-3);

    [Fact]
    public void TimeAbove_NothingLeaves_HasNoValue() => Assert.Equal(
        DosingReasons.NeverBelow, Assert.Single(Washout.TimeAbove(100, 30, 20, 0).Reasons));

    [Fact]
    public void TimeAbove_DoseTooSmall_HasNoValue() => Assert.Equal(
        DosingReasons.NeverAbove, Assert.Single(Washout.TimeAbove(20, 30, 20, 1).Reasons));

    [Fact]
    public void ExpectedUse_CyclesZero_HasNoValue() => Assert.Equal(
        DosingReasons.CyclesZero, Assert.Single(Dose.ExpectedUse(Estimate.Exact(1, "L"), Estimate.Exact(0), 100).Reasons));
}
