using System.Text.Json;
using Bunit;
using LogBook.Application.Data;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Calculators;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Tests.Readers;

public sealed class DosePlanPageTests
{
    [Fact]
    public async Task SetPoint_Prefilled_SaysWhereEachNumberComesFrom()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: CollegeAsync);
        var page = Open(pages);

        Assert.Equal("4.5", page.Find("#set-point-cycles").GetAttribute("value"));
        Assert.StartsWith("median of the last 2 make-up readings", Note(page, "set-point-make-up"), StringComparison.Ordinal);
        Assert.StartsWith("90th percentile of the last 2", Note(page, "set-point-ion-chloride"), StringComparison.Ordinal);

        page.Find("#set-point").Submit();

        // 300 µS/cm x 4.5 x (1 - 0.025 x 3.5), by hand 1231.9.
        Assert.Contains("1230", page.Find("#set-point-result").TextContent, StringComparison.Ordinal);
        Assert.Contains("competent person approves", page.Find("#set-point-result").TextContent, StringComparison.Ordinal);
        Assert.Contains("PHREEQC", page.Find("#set-point-result").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SetPoint_LimitEntered_NamesTheIon()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: CollegeAsync);
        var page = Open(pages);

        page.Find("#set-point-limit-chloride").Change("46");
        page.Find("#set-point").Submit();

        // 46 mg/L over 23 mg/L.
        Assert.Contains("Chloride limits: 46\u00a0mg/L allow 2.00 cycles", page.Find("#set-point-result").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SetPoint_DischargeLimitOnFile_StandsThereWithItsSourceAndLimits()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: firm => CollegeAsync(firm, College with { DischargeUsPerCm = 1000, DischargeSource = "permit 12" }));
        var page = Open(pages);

        Assert.Equal("1000", page.Find("#set-point-discharge").GetAttribute("value"));
        Assert.StartsWith("limit of the discharge (permit 12)", Note(page, "set-point-discharge"), StringComparison.Ordinal);

        page.Find("#set-point").Submit();

        Assert.Contains("limit of the discharge (permit 12)", page.Find("#set-point-result").TextContent, StringComparison.Ordinal);
        Assert.Contains("1000\u00a0µS/cm", page.Find("#set-point-result").TextContent, StringComparison.Ordinal);

        // Whoever takes it out is told that it is left out.
        page.Find("#set-point-discharge").Change("");
        page.Find("#set-point").Submit();
        Assert.Contains("Conductivity", page.Find("#limits-cleared").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Feed_BadNumber_NamesFieldValueAndExpected()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: CollegeAsync);
        var page = Open(pages);

        page.Find("#feed-pump").Change("1o");
        page.Find("#feed-level").Change("1.200");
        page.Find("#feed").Submit();

        var problems = page.Find("#feed-problems").TextContent;
        Assert.Contains("Pump output: “1o”; expected is 0.001 to 10,000\u00a0L/h", problems, StringComparison.Ordinal);
        Assert.Contains("Level aimed at, as product: “1.200” can be", problems, StringComparison.Ordinal);
        Assert.Equal("1o", page.Find("#feed-pump").GetAttribute("value"));
        Assert.Empty(page.FindAll("#feed-result"));
    }

    [Fact]
    public async Task Feed_DecimalComma_IsUnderstoodInPortuguese()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, Language.Portuguese, CollegeAsync);
        var page = Open(pages);

        page.Find("#feed-pump").Change("1,5");
        page.Find("#feed").Submit();

        // trade.md 6.2: 47.6 s each m3 at 1.5 L/h for 100 mg/L at 4.5 cycles.
        Assert.Contains("47,6", page.Find("#feed-result").TextContent, StringComparison.Ordinal);
        Assert.Contains("Com o ajuste atual", page.Find("#feed-result").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "calculators")]
    public async Task Feed_DoseAboveTheLabel_StopsWithoutASetting()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: CollegeAsync);
        var page = Open(pages);

        page.Find("#feed-output").Change("biocide-1");
        page.Find("#feed-level").Change("140");
        page.Find("#feed").Submit();

        Assert.Contains("Stop: Biocide N-15", page.Find("#feed-result").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Run for each dose:", page.Find("#feed-result").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#feed-result button, #feed-result input"));

        page.Find("#feed-level").Change("100");
        page.Find("#feed").Submit();

        Assert.Contains("Run for each dose:", page.Find("#feed-result").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Stop:", page.Find("#feed-result").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "calculators")]
    public async Task Hold_ShorterThanTheLabel_ProposesTheLabelsContact()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: CollegeAsync);
        var page = Open(pages);

        page.Find("#hold-hold").Change("60");
        page.Find("#hold").Submit();

        var said = page.Find("#hold-result").TextContent;
        Assert.Contains("shorter than the label's contact: 4\u00a0h at least", said, StringComparison.Ordinal);
        Assert.Contains("Stop: Biocide N-15 would be kept for 1\u00a0h", said, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "calculators")]
    public async Task Hold_DosesOfAWeekAddUp_IsStoppedByTheLabelsWeek()
    {
        // Three doses of 100 mg/L a week are 375 with the volume at its low end; the label allows 300 a week.
        var plan = College.Programmes[0];
        var dense = College with { Programmes = [plan with { Feeds = [plan.Feeds[0], plan.Feeds[1] with { Days = [Weekday.Monday, Weekday.Wednesday, Weekday.Friday] }] }] };
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: firm => CollegeAsync(firm, dense));
        var page = Open(pages);

        page.Find("#hold").Submit();

        Assert.Contains("Stop: Biocide N-15 would add up to 375\u00a0mg/L within a week", page.Find("#hold-result").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#hold-result .calc-answer"));
    }

    [Fact]
    public async Task Ahead_WhatIf_StandsBesideTodayAndTheLabelIsNotTriedOut()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: CollegeAsync);
        var page = Open(pages);

        Assert.Equal(8, page.FindAll("#dose-table tbody tr").Count);
        Assert.Equal("None found by these numbers.", page.Find("#faults").TextContent);
        Assert.Equal(2, page.FindAll("#ahead-compare thead th").Count);

        page.Find("#if-hold").Change("1440");
        page.Find("#if").Submit();

        Assert.Contains("Hold too long", page.Find("#faults-if").TextContent, StringComparison.Ordinal);
        Assert.Equal(3, page.FindAll("#ahead-compare thead th").Count);

        page.Find("#if-run").Change("60");
        page.Find("#if").Submit();

        Assert.Empty(page.FindAll("#faults-if"));
        Assert.Contains("the label allows", page.FindAll(".problems")[0].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ahead_HoldCleared_IsWithoutHoldAndNotAsToday()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: CollegeAsync);
        var page = Open(pages);

        page.Find("#if-hold").Change("");
        page.Find("#if").Submit();

        // Without a hold nothing of the label's contact is kept.
        Assert.Contains("would be kept for 0\u00a0h", page.FindAll(".problems")[0].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Feed_PumpTypedWhereNoneIsOnFile_HasTheUsualUncertainty()
    {
        await using var pages = await ReadPages.ForAsync(
            PersonRole.Supervisor, fill: firm => CollegeAsync(firm, College with { Pumps = [College.Pumps[0], College.Pumps[1] with { RatedLPerH = null }] }));
        var page = Open(pages);

        page.Find("#feed-output").Change("biocide-1");
        page.Find("#feed-pump").Change("3");
        page.Find("#feed").Submit();

        Assert.Contains("± 10\u00a0%", Note(page, "feed-pump"), StringComparison.Ordinal);

        // 100 mg/L in 10,000 L of 1.05 kg/L at 3 L/h: 19 min, with 20 % of the volume and 10 % of the pump at 95 %.
        Assert.Contains("19", page.Find("#feed-result .calc-answer").TextContent, StringComparison.Ordinal);
        Assert.Contains("±", page.Find("#feed-result .calc-answer").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void CalcField_TypedWithNothingOnFile_IsAsUncertainAsItsKind()
    {
        var table = LogBook.Domain.Estimates.UncertaintyTable.Default;
        CalcField Typed(string key, string unit)
        {
            var field = new CalcField(key, CalcTexts.Volume, unit, 0, 1e6, null, true, Language.English) { UsualShare = CalcUsual.ShareOf(table, key, unit), Text = "200" };
            Assert.True(field.Read(Language.English));
            return field;
        }

        Assert.Equal(40, Typed("volume", "L").Estimate!.StandardUncertainty, 9);
        Assert.Equal(20, Typed("pump", "L/h").Estimate!.StandardUncertainty, 9);
        Assert.Equal(40, Typed("valve", "L/h").Estimate!.StandardUncertainty, 9);

        // 1 % scatter, 3 % unproved meter, 2 % compensation.
        Assert.Equal(200 * Math.Sqrt(14) / 100, Typed("make-up", "uS/cm").Estimate!.StandardUncertainty, 6);
    }

    [Fact]
    public async Task SetPoint_LimitOnFileCleared_IsListedAsNotKnown()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: firm => CollegeAsync(firm, College with { Metals = [Metal.Stainless] }));
        var page = Open(pages);
        page.Find("#set-point").Submit();
        Assert.Empty(page.FindAll("#limits-cleared"));

        page.Find("#set-point-limit-chloride").Change("");
        page.Find("#set-point").Submit();

        Assert.Contains("Chloride", page.Find("#limits-cleared").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ma_ValueOfTheProgramme_IsScaled()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: CollegeAsync);
        var page = Open(pages);

        page.Find("#ma-value").Change("1250");
        page.Find("#ma-current").Change("21");
        page.Find("#ma").Submit();

        Assert.Contains("should give 12.00\u00a0mA", page.Find("#ma-result").TextContent, StringComparison.Ordinal);
        Assert.Contains("Outside 4 to 20 mA", page.Find("#ma-result").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_SetUpWithGaps_SaysWhatIsMissing()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: async firm => (await firm.AddSiteAsync("YAF-1")).Customer);

        var page = Open(pages);

        Assert.Contains("the volume", page.Find("#ahead-missing").TextContent, StringComparison.Ordinal);
        page.Find("#set-point").Submit();
        Assert.Contains("Conductivity of the make-up: missing", page.Find("#set-point-problems").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Page_CustomersAccount_SeesNothing()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: CollegeAsync);

        Assert.Equal("Nothing here", Open(pages).Find("h1").TextContent);
    }

    private static IRenderedComponent<DosePlanPage> Open(ReadPages pages) =>
        pages.Render<DosePlanPage>("/sites/YAF-1/systems/CT-1/dose-plan", ("Code", "YAF-1"), ("System", "CT-1"));

    private static string Note(IRenderedComponent<DosePlanPage> page, string id) => page.Find($"#{id}-note").TextContent.Trim();

    private static Task<int?> CollegeAsync(ReadingFirm firm) => CollegeAsync(firm, College);

    private static async Task<int?> CollegeAsync(ReadingFirm firm, WaterSystem college)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.Store.WriteAsync(Viewer.System("test"), async db =>
        {
            var row = await db.Systems.AsTracking().SingleAsync(one => one.Id == site.System);
            row.Document = JsonSerializer.Serialize(college, ExchangeJson.Default.WaterSystem);
        });
        foreach (var product in new[]
        {
            new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor, DensityKgPerL = 1.12, DoseMgPerL = 100 },
            new Product { Code = "N-15", Name = "Biocide N-15", Kind = ProductKind.Biocide, Oxidising = false, DensityKgPerL = 1.05, DoseMgPerL = 100, LabelMaxMgPerL = 150, LabelMaxWeekMgPerL = 300, LabelGapHours = 24, LabelContactHours = 4 },
        })
        {
            await firm.AddAsync(new SetUpRow { Kind = SetUpKind.Product, Code = product.Code, CodeKey = CodeKeys.Of(product.Code), Name = product.Name, Document = JsonSerializer.Serialize(product, ExchangeJson.Default.Product) });
        }

        foreach (var week in new[] { 0, 1 })
        {
            var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7 * week), 1220);
            Reading[] makeUp =
            [
                new() { At = "make-up", Test = "conductivity", Source = ReadingSource.Reference, Value = 300, Unit = "uS/cm" },
                new() { At = "make-up", Test = "chloride", Value = 23, Unit = "mg/L" },
            ];
            await firm.AddVisitAsync(site, visit with { Systems = [visit.Systems[0] with { Readings = makeUp }] });
        }

        return site.Customer;
    }

    private static WaterSystem College => new()
    {
        Site = "YAF-1", Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating, VolumeL = 10_000, FullLoadKw = 700, BleedValveLPerH = 1000,
        Outputs = [new() { Code = "bleed", Drives = OutputDrives.Bleed }, new() { Code = "inhibitor", Drives = OutputDrives.Feed }, new() { Code = "biocide-1", Drives = OutputDrives.Feed }],
        Meters = [new() { Code = "MU", Measures = MeterMeasures.MakeUp, Unit = "L", Digits = 7, LitresPerPulse = 10 }],
        Drums =
        [
            new() { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62, UnusableL = 2 },
            new() { Code = "D-B1", Product = "N-15", Shape = DrumShape.VerticalCylinder, CapacityL = 25, HeightCm = 40, UnusableL = 1 },
        ],
        Pumps = [new() { Code = "P-INH", Drum = "D-INH", Output = "inhibitor", RatedLPerH = 1.5 }, new() { Code = "P-B1", Drum = "D-B1", Output = "biocide-1", RatedLPerH = 3 }],
        Programmes =
        [
            new()
            {
                From = new DateOnly(2025, 1, 6), TargetCycles = 4.5, SetPointUsPerCm = 1232, DifferentialUsPerCm = 25, HighAlarmUsPerCm = 1480, MaRange = new MaRange { At4Ma = 0, At20Ma = 2500, Unit = "uS/cm" },
                Feeds =
                [
                    new() { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.ByMakeUpVolume, EveryL = 1000, RunSeconds = 47.6, TargetMgPerL = 100 },
                    new()
                    {
                        Drum = "D-B1", Output = "biocide-1", Mode = FeedMode.DosePlan, Weeks = [1, 2, 3, 4], Days = [Weekday.Tuesday, Weekday.Friday], Starts = ["21:30"], RunMinutes = 19,
                        BleedDownFirst = new BleedDown { Minutes = 60, ToUsPerCm = 1150 }, HoldBleedShutMin = 240, InhibitorMeanwhile = InhibitorMeanwhile.Waits,
                    },
                ],
                MakeUp = new MakeUpWater { ConductivityUsPerCm = 300 },
            },
        ],
    };
}
