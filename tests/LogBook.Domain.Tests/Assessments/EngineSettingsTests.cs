using System.Reflection;
using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds;

namespace LogBook.Domain.Tests.Assessments;

public sealed class EngineSettingsTests
{
    private static readonly EngineSettingChange ProbeError = new("thresholds:probeErrorPercent", 3);

    [Fact]
    public void Catalogue_HoldsEveryThresholdAndUncertaintyOnce()
    {
        var thresholds = typeof(FindingThresholds).GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.PropertyType == typeof(Threshold))
            .Select(p => $"thresholds:{p.Name}");
        var uncertainties = UncertaintyTable.Default.Rows.Select(row => $"uncertainties:{row.Code}");

        Assert.Equal(
            thresholds.Concat(uncertainties).Select(code => code.ToUpperInvariant()).Order(StringComparer.Ordinal),
            EngineSettingCatalogue.All.Select(setting => setting.Code.ToUpperInvariant()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Catalogue_EveryDefault_IsWithinItsRangeAndNamedInThreeLanguages() => Assert.All(EngineSettingCatalogue.All, setting =>
    {
        Assert.InRange(setting.Default, setting.Lowest, setting.Highest);
        Assert.True(setting.Lowest < setting.Highest);
        Assert.All(Enum.GetValues<Language>(), language => Assert.NotEmpty(setting.Name.In(language)));
        Assert.True(setting.Name.En == "pH" || setting.Name.En != setting.Name.Es, setting.Code);
        Assert.Empty(EngineSettings.Check([new EngineSettingChange(setting.Code, setting.Default)]));
    });

    [Fact]
    public void Catalogue_UnitOfAnUncertainty_IsThatOfItsTable() => Assert.All(
        EngineSettingCatalogue.All.Where(setting => setting.Group == SettingGroup.Uncertainties),
        setting => Assert.True(
            UncertaintyTable.Default[setting.Code.Split(':')[1]].Unit == setting.Unit || setting.Code == "uncertainties:" + UncertaintyCodes.Ph, setting.Code));

    [Fact]
    public void Of_Nothing_IsTheDefaults()
    {
        var settings = EngineSettings.Of([]);

        Assert.Equal((Assessment.EngineVersion, FindingThresholds.Default), (settings.Version, settings.Thresholds));
    }

    [Fact]
    public void Of_EverySetting_ChangesItAndTheMark() => Assert.All(EngineSettingCatalogue.All, setting =>
    {
        var value = setting.Default == setting.Highest ? setting.Lowest : setting.Highest;

        var settings = EngineSettings.Of([new EngineSettingChange(setting.Code.ToUpperInvariant(), value)]);

        var code = setting.Code.Split(':')[1];
        var found = setting.Group == SettingGroup.Uncertainties
            ? settings.Uncertainties[code].Value
            : ((Threshold)typeof(FindingThresholds).GetProperties().Single(p => p.Name.Equals(code, StringComparison.OrdinalIgnoreCase)).GetValue(settings.Thresholds)!).Value;
        Assert.Equal(value, found);
        Assert.StartsWith(Assessment.EngineVersion + "-", settings.Version, StringComparison.Ordinal);
    });

    [Fact]
    public void Version_SameChangesInAnyOrder_IsTheSame()
    {
        EngineSettingChange other = new("uncertainties:hand-conductivity", 0.5);

        Assert.Equal(EngineSettings.Of([ProbeError, other]).Version, EngineSettings.Of([other, ProbeError]).Version);
        Assert.NotEqual(EngineSettings.Of([ProbeError]).Version, EngineSettings.Of([ProbeError with { Value = 4 }]).Version);
        Assert.Equal(5, FindingThresholds.Default.ProbeErrorPercent.Value);
    }

    [Theory]
    [InlineData("thresholds:probeErrorPercent", 0.5, null, "Probe error as found: 0.5 % was found; expected is a number of 1 to 50 %.")]
    [InlineData("thresholds:probeErrorPercent", double.NaN, null, "Probe error as found: – was found; expected is a number of 1 to 50 %.")]
    [InlineData("thresholds:probeDriftPoints", 4.5, null, "Drift: as-found errors that it needs: 4.5 was found; expected is a whole number of 3 to 30.")]
    [InlineData("thresholds:shiftSites", 4.0, "CT-1", "Meter or lot off: sites that must show it is about several systems together; expected is one value for the whole firm.")]
    [InlineData("thresholds:nothing", 3.0, null, "thresholds:nothing is not a threshold or default uncertainty.")]
    [InlineData("thresholds:emptyChancePlan", 0.6, null, "Chance of an empty drum before the next visit: plan: 0.6 was found; expected is less than 0.5 (Chance of an empty drum before the next visit: act).")]
    public void Check_WhatCannotBe_IsSaidWithFieldValueAndExpected(string code, double value, string? system, string message)
    {
        var change = new EngineSettingChange(code, value, system is null ? null : "YAF-1", system);

        Assert.Equal(message, Assert.Single(EngineSettings.Check([change])).Message.Replace('\u00a0', ' '));
        Assert.True(code.EndsWith("emptyChancePlan", StringComparison.Ordinal) || EngineSettings.Of([change]).Version == Assessment.EngineVersion);
    }

    [Fact]
    public void Check_OrderWithinASystem_CountsTheFirmsOtherValue()
    {
        EngineSettingChange act = new("thresholds:emptyChanceAct", 0.8);
        EngineSettingChange plan = new("thresholds:emptyChancePlan", 0.6, "YAF-1", "CT-1");

        Assert.Empty(EngineSettings.Check([act, plan]));
        Assert.Single(EngineSettings.Check([plan]));
    }

    [Fact]
    public void For_SystemOfItsOwn_HoldsTheFirmsChangesAndItsOwn()
    {
        var settings = EngineSettings.Of([new("thresholds:pulsesPercent", 4), ProbeError, ProbeError with { Value = 7, Site = "yaf-1", System = "ct-1" }]);

        var own = settings.For("YAF-1", "CT-1");

        Assert.Equal((7.0, 4.0, 3.0), (own.Thresholds.ProbeErrorPercent.Value, own.Thresholds.PulsesPercent.Value, settings.Thresholds.ProbeErrorPercent.Value));
        Assert.Same(settings, settings.For("YAF-1", "CT-2"));
        Assert.NotEqual(settings.Version, own.Version);
        Assert.Equal("set for this system", own.Thresholds.ProbeErrorPercent.Basis.En);
    }

    [Fact]
    public void Engine_OfTheInstallation_IsWhatAnAssessmentUses()
    {
        // As found 4 % low: within the default 5 %, outside an installation's own 3 %.
        var builder = new HistoryBuilder();
        builder.Visit(0).Visit(28, record => record with { Probes = [HistoryBuilder.Probe(1183, 1232)] });
        EngineSettingChange[] sharp =
        [
            ProbeError, new("uncertainties:hand-conductivity", 0.1), new("uncertainties:hand-conductivity-proved", 0.1), new("uncertainties:compensation-15-35", 0.1), new("uncertainties:compensation-far", 0.1),
        ];
        var own = EngineSettings.Of(sharp);
        var ofSystem = EngineSettings.Of(sharp.Select(change => change with { Site = "YAF-1", System = "CT-1" }));

        SystemAssessment Judged(EngineSettings engine, AssessmentInputs? inputs) => SystemHistory.From(new FirmSetUp(builder.Document()) { Engine = engine }, "YAF-1", "CT-1", builder.Visits) is var history
            && inputs is null ? Assessment.Of(history, HistoryBuilder.Start.AddDays(29)) : Assessment.Of(history, HistoryBuilder.Start.AddDays(29), inputs!);

        Assert.Empty(Judged(EngineSettings.Default, null).All(FindingKinds.ProbeReadsOff));
        Assert.Single(Judged(own, null).All(FindingKinds.ProbeReadsOff));
        Assert.Single(Judged(own, AssessmentInputs.None).All(FindingKinds.ProbeReadsOff));
        Assert.Single(Judged(ofSystem, null).All(FindingKinds.ProbeReadsOff));
        Assert.Equal(own.Version, Judged(own, null).EngineVersion);
        Assert.Equal(ofSystem.For("YAF-1", "CT-1").Version, Judged(ofSystem, null).EngineVersion);
    }

    [Theory]
    [InlineData(3, 1.5, true)]
    [InlineData(6, 1.5, false)]
    [InlineData(3, 10, false)]
    public void Find_MeterOffOnSites_UsesTheInstallationsOwnThresholdAndUncertainty(double limit, double ofMeter, bool found)
    {
        // Five comparisons on three sites, all 5 % off: beyond 3 %, within 6 %; with an uncertainty of 10 % it may be chance.
        var meter = new ShiftState(FindingKinds.InstrumentShift, "HM-1", "conductivity");
        var known = HistoryBuilder.Start;
        foreach (var (site, day) in new[] { ("A", 1), ("A", 2), ("B", 3), ("B", 4), ("C", 5) })
        {
            meter.Comparisons.Add(new Comparison(site + "/CT-1", site, known.AddDays(-day), 5, 5, 1, 0.5));
        }

        var engine = EngineSettings.Of([new("thresholds:instrumentShiftPercent", limit), new("uncertainties:hand-conductivity-proved", ofMeter), new("uncertainties:hand-conductivity-unproved", 20)]);

        Assert.Equal(found, InstrumentShift.Find(meter, [], known, engine) is not null);
    }
}
