using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class StateRulesTests
{
    [Fact]
    public void SwitchNotAutomatic_Left_IsActAtOnce() =>
        Assert.Equal(Severity.Act, Switched(SwitchPosition.ForcedOn, SwitchPosition.ForcedOn).Assess().Open(FindingKinds.SwitchNotAutomatic)!.Severity);

    [Fact]
    public void SwitchNotAutomatic_FoundAndPutBack_IsPlanWithItsHours()
    {
        var finding = Switched(SwitchPosition.ForcedOn, SwitchPosition.Automatic).Assess().Open(FindingKinds.SwitchNotAutomatic);

        // 28 days × 4.3 h.
        Assert.Equal(Severity.Plan, finding!.Severity);
        Assert.Equal(120.4, finding.Evidence[0].Value!.Value, 0.11);
    }

    [Fact]
    public void SwitchNotAutomatic_WithAReason_IsNone() =>
        Assert.Empty(Switched(SwitchPosition.ForcedOff, SwitchPosition.ForcedOff, "laid up for the winter").Assess().All(FindingKinds.SwitchNotAutomatic));

    [Fact]
    public void SettingsChanged_SetPointByTwelvePercent_IsAct()
    {
        var finding = Set(1380).Assess().Open(FindingKinds.SettingsChanged);

        Assert.Equal(Severity.Act, finding!.Severity);
        Assert.Equal((1380, 1232, 1232), (finding.Evidence[0].Value!.Value, finding.Evidence[0].LimitLow!.Value, finding.Evidence[0].LimitHigh!.Value));
    }

    [Fact]
    public void SettingsChanged_SetPointByFivePercent_IsPlan() => Assert.Equal(Severity.Plan, Set(1294).Assess().Open(FindingKinds.SettingsChanged)!.Severity);

    [Fact]
    public void SettingsChanged_WithinTheDisplayStep_IsNone() => Assert.Empty(Set(1233).Assess().All(FindingKinds.SettingsChanged));

    [Fact]
    public void SettingsChanged_NotRead_IsNotAChange() => Assert.Empty(new HistoryBuilder().Every(28, 2)
        .Visit(56, record => record with { Settings = [new SettingReading { Name = "setPointUsPerCm", NotRead = true }] }).Assess().All(FindingKinds.SettingsChanged));

    [Fact]
    public void SettingsChanged_ChangedByTheTechnician_IsComparedWithAsLeft() => Assert.Empty(new HistoryBuilder().Every(28, 2)
        .Visit(56, record => record with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1232), Left = SettingValue.Of(1300) }] })
        .Visit(84, record => record with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1300), Left = SettingValue.Of(1300) }] })
        .Assess().All(FindingKinds.SettingsChanged));

    [Fact]
    public void SettingsChanged_AskedByANewProgramme_IsNone()
    {
        var builder = new HistoryBuilder { LaterProgrammes = [new Programme { From = new DateOnly(2025, 2, 20), SetPointUsPerCm = 1300 }] };

        Assert.Empty(builder.Every(28, 2)
            .Visit(56, record => record with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1300), Left = SettingValue.Of(1300) }] })
            .Assess().All(FindingKinds.SettingsChanged));
    }

    private static HistoryBuilder Switched(SwitchPosition found, SwitchPosition left, string? reason = null) => new HistoryBuilder().Every(28, 2)
        .Visit(56, record => record with { Switches = [new SwitchReading { Output = "bleed", Found = found, Left = left, Reason = reason }] });

    private static HistoryBuilder Set(double found) => new HistoryBuilder().Every(28, 2).Visit(56, record => record with
    {
        Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(found), Left = SettingValue.Of(found), Step = 1 }],
    });
}
