using LogBook.Domain.Dosing;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Settings;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Simulation;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Settings;

public sealed class ReEntrySheetTests
{
    private static readonly DateOnly On = new(2025, 9, 1);
    private static readonly DateOnly Today = new(2025, 11, 1);

    private static readonly Product Label = new()
    {
        Code = "N-15", Name = "Biocide N-15", Kind = ProductKind.Biocide, Oxidising = false, DensityKgPerL = 1.05, LabelMaxMgPerL = 150, LabelContactHours = 4,
    };

    [Fact]
    public void Of_SettingLeftOtherwiseThanTheProgramme_StandsAsLeftAndSaysSo()
    {
        var sheet = ReEntrySheet.Of(History([Visit("2025-08-20", Setting("setPointUsPerCm", 1232, 1250))]), On, Today);

        var line = sheet.Lines.Single(one => one.Setting.Name == "setPointUsPerCm");
        Assert.Equal((1250.0, new DateOnly(2025, 8, 20), 1232.0), (line.Setting.Value.Number!.Value, line.ReadOn!.Value, line.Programme!.Number!.Value));
        Assert.Equal(SettingPurpose.Bleed, sheet.Groups[0].Purpose);
    }

    [Fact]
    public void Of_ReadAfterTheDay_IsNotOnTheSheetButBesideTheLine()
    {
        var sheet = ReEntrySheet.Of(History([Visit("2025-08-20", Setting("setPointUsPerCm", 1232, 1232)), Visit("2025-10-01", Setting("setPointUsPerCm", 1232, 1300))]), On, Today);

        var line = sheet.Lines.Single(one => one.Setting.Name == "setPointUsPerCm");
        Assert.Equal(1232, line.Setting.Value.Number);
        var later = Assert.Single(line.Later);
        Assert.Equal((LaterChangeKind.Setting, new DateOnly(2025, 10, 1)), (later.Kind, later.On));
        Assert.Contains("1300", later.Says.In(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ReadBeforeTheProgrammeBegan_TheProgrammeCounts()
    {
        var newer = SimulatedCollege.Programme with { From = new DateOnly(2025, 8, 25), SetPointUsPerCm = 1400 };
        var sheet = ReEntrySheet.Of(History([Visit("2025-08-20", Setting("setPointUsPerCm", 1232, 1232))], SimulatedCollege.System with { Programmes = [SimulatedCollege.Programme, newer] }), On, Today);

        var line = sheet.Lines.Single(one => one.Setting.Name == "setPointUsPerCm");
        Assert.Equal((1400.0, (DateOnly?)null), (line.Setting.Value.Number!.Value, line.ReadOn));
    }

    [Fact]
    public void Of_PumpDrumStrokeAndLabelChangedLater_StandBesideTheirFeed()
    {
        var system = College with { Pumps = [.. College.Pumps, new Pump { Code = "P-B1", Drum = "D-B1", Output = "biocide-1", RatedLPerH = 6, From = new DateOnly(2025, 9, 20) }] };
        var visits = new[]
        {
            Visit("2025-08-20") with { },
            Visit("2025-09-10"),
        };
        visits[0] = With(visits[0], record => record with { Pumps = [new PumpReading { Pump = "P-B1", StrokeLeft = 60 }], Drums = [new DrumReading { Drum = "D-B1", ProductFound = "N-15" }] });
        visits[1] = With(visits[1], record => record with { Pumps = [new PumpReading { Pump = "P-B1", StrokeFound = 60, StrokeLeft = 80 }], Drums = [new DrumReading { Drum = "D-B1", ProductFound = "P-40" }] });

        var sheet = ReEntrySheet.Of(History(visits, system), On, Today, [new SetUpChange(new DateOnly(2025, 9, 5), ProductBefore: Label with { LabelMaxMgPerL = 200 }, ProductAfter: Label)]);

        var group = sheet.Groups.Single(one => one.Output == "biocide-1");
        Assert.Equal([LaterChangeKind.Label, LaterChangeKind.Stroke, LaterChangeKind.Drum, LaterChangeKind.Pump], group.Later.Select(change => change.Kind));
        Assert.Empty(sheet.Groups.Single(one => one.Output == "inhibitor").Later);

        // 19 min at 6 L/h instead of 3: twice the dose, above today's label.
        Assert.Equal(LabelStopKind.Dose, Assert.Single(group.Stops).Kind);
    }

    [Fact]
    public void Of_LaterProgrammeInAnotherUnit_IsNoChangeWhereItIsTheSameAmount()
    {
        var programme = SimulatedCollege.Programme;
        WaterSystem Later(double everyL) => SimulatedCollege.System with { Programmes = [programme, programme with { From = On.AddDays(30), Feeds = [programme.Feeds[0] with { EveryL = everyL }, programme.Feeds[1]] }] };
        var visit = With(Visit("2025-08-20"), record => record with { Settings = [new SettingReading { Name = "inhibitor/everyL", Found = SettingValue.Of(264.2), Left = SettingValue.Of(264.2), Unit = "[gal_us]" }] });
        ReEntryLine Line(WaterSystem system) => ReEntrySheet.Of(History([visit], system), On, Today).Lines.Single(one => one.Setting.Name == "inhibitor/everyL");

        Assert.Empty(Line(Later(1000)).Later);
        Assert.Null(Line(Later(1000)).Programme);

        // Half as much is a change, told with its unit.
        Assert.EndsWith("asks 500\u00a0L", Assert.Single(Line(Later(500)).Later).Says.In(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_LeftOtherwiseLater_HasUnitAndWordsAndLooksAtTheLastDigit()
    {
        var visit = With(Visit("2025-10-01"), record => record with
        {
            Settings =
            [
                new SettingReading { Name = "setPointUsPerCm", Left = SettingValue.Of(1230), Step = 10 },
                new SettingReading { Name = "highAlarmUsPerCm", Left = SettingValue.Of(1500) },
                new SettingReading { Name = "biocide-1/inhibitorMeanwhile", Left = SettingValue.Of("skips") },
                new SettingReading { Name = "biocide-1/days", Left = SettingValue.Of("tue, fri") },
            ],
        });

        var lines = ReEntrySheet.Of(History([visit]), On, Today).Lines.ToDictionary(line => line.Setting.Name, line => line.Later.Select(change => change.Says).ToList());

        // 1232 on a display that shows tens is 1230; "tue, fri" is "tue,fri".
        Assert.Empty(lines["setPointUsPerCm"]);
        Assert.Empty(lines["biocide-1/days"]);
        Assert.Contains("1500\u00a0µS/cm", Assert.Single(lines["highAlarmUsPerCm"]).In(Language.English), StringComparison.Ordinal);
        Assert.Contains("Pierde su turno", Assert.Single(lines["biocide-1/inhibitorMeanwhile"]).In(Language.Spanish), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_OrpProbeRenewed_StandsUnderTheFeedItControlsAndNotUnderBleed()
    {
        var programme = SimulatedCollege.Programme with
        {
            Feeds = [SimulatedCollege.Programme.Feeds[0], new Feed { Drum = "D-B1", Output = "biocide-1", Mode = FeedMode.ByOrp, SetPoint = 600, Differential = 10, Unit = "mV", Direction = FeedDirection.Up }],
        };
        var system = SimulatedCollege.System with { Programmes = [programme], Probes = [new Probe { Code = "C1", Of = ProbeKind.Conductivity }, new Probe { Code = "O1", Of = ProbeKind.Orp }] };
        Visit Renewed(string day, string? probe) => With(Visit(day), record => record with { Events = [new VisitEvent { Type = EventType.ProbeRenewed, Of = probe }] });

        var sheet = ReEntrySheet.Of(History([Renewed("2025-09-10", "O1"), Renewed("2025-09-20", "C1")], system), On, Today);
        var unnamed = ReEntrySheet.Of(History([Renewed("2025-09-10", null)], system), On, Today);

        string[] Later(ReEntrySheet of, SettingPurpose purpose, string? output) => [.. of.Groups.Single(group => group.Purpose == purpose && group.Output == output).Later.Select(change => change.Says.In(Language.English))];
        Assert.StartsWith("ORP probe renewed", Assert.Single(Later(sheet, SettingPurpose.Feed, "biocide-1")), StringComparison.Ordinal);
        Assert.StartsWith("conductivity probe renewed", Assert.Single(Later(sheet, SettingPurpose.Bleed, null)), StringComparison.Ordinal);
        Assert.Empty(Later(sheet, SettingPurpose.Feed, "inhibitor"));
        Assert.Single(Later(unnamed, SettingPurpose.Feed, "biocide-1"));
        Assert.Single(Later(unnamed, SettingPurpose.Bleed, null));
    }

    [Fact]
    public void GroupOf_Finding_IsTheLineOfItsOutputDrumPumpOrProbe()
    {
        var feeds = SimulatedCollege.Programme.Feeds;
        var system = SimulatedCollege.System with
        {
            Programmes = [SimulatedCollege.Programme with { Feeds = [feeds[0], new Feed { Drum = "D-B1", Output = "biocide-1", Mode = FeedMode.ByOrp, SetPoint = 600, Unit = "mV" }] }],
            Probes = [new Probe { Code = "C1", Of = ProbeKind.Conductivity }, new Probe { Code = "O1", Of = ProbeKind.Orp }],
        };
        var sheet = ReEntrySheet.Of(History([], system), On, Today);
        (SettingPurpose?, string?) Of(About? about) => SettingSubjects.GroupOf(sheet, system, about) is { } group ? (group.Purpose, group.Output) : (null, null);

        Assert.Equal((SettingPurpose.Feed, "biocide-1"), Of(new About { Output = "BIOCIDE-1" }));
        Assert.Equal((SettingPurpose.Feed, "biocide-1"), Of(new About { Drum = "d-b1" }));
        Assert.Equal((SettingPurpose.Feed, "inhibitor"), Of(new About { Pump = "P-INH", Drum = "D-INH" }));
        Assert.Equal((SettingPurpose.Feed, "biocide-1"), Of(new About { Probe = "O1" }));
        Assert.Equal((SettingPurpose.Bleed, null), Of(new About { Probe = "C1" }));
        Assert.Equal((SettingPurpose.Bleed, null), Of(new About { Output = "bleed" }));
        Assert.Equal((null, null), Of(new About { Test = TestCodes.Chloride }));
        Assert.Equal((null, null), Of(null));
    }

    [Fact]
    public void Of_AsItWas_LabelIsKept() => Assert.All(ReEntrySheet.Of(History([]), On, Today).Groups, group => Assert.Empty(group.Stops));

    [Fact]
    public void Of_DrumAndPumpThatBeginInTheFuture_TheLabelOfTodaysProductIsKept()
    {
        // From next month another product without a label on file and a pump of a tenth: neither is there today.
        var programme = SimulatedCollege.Programme with { Feeds = [SimulatedCollege.Programme.Feeds[0], SimulatedCollege.Programme.Feeds[1] with { RunMinutes = 40 }] };
        var system = SimulatedCollege.System with
        {
            Programmes = [programme],
            Drums = [.. College.Drums, College.Drums[1] with { Product = "P-40", From = Today.AddDays(30) }],
            Pumps = [.. College.Pumps, College.Pumps[1] with { RatedLPerH = 0.3, From = Today.AddDays(30) }],
        };

        var group = ReEntrySheet.Of(History([], system), On, Today).Groups.Single(one => one.Output == "biocide-1");

        Assert.Equal("N-15", group.Product!.Code);
        Assert.Equal(LabelStopKind.Dose, Assert.Single(group.Stops).Kind);

        // Once they are in, they count.
        Assert.Equal("P-40", ReEntrySheet.Of(History([], system), On, Today.AddDays(30)).Groups.Single(one => one.Output == "biocide-1").Product!.Code);
    }

    [Fact]
    public void Of_DosesOfAWeekAddUp_AreStoppedByTheLabelsWeek()
    {
        // Three doses of 100 mg/L a week are 374 with the volume at its low end; the label allows 150 a dose and 300 a week.
        var label = Label with { LabelMaxWeekMgPerL = 300 };
        var programme = SimulatedCollege.Programme with
        {
            Feeds = [SimulatedCollege.Programme.Feeds[0], SimulatedCollege.Programme.Feeds[1] with { Days = [Weekday.Monday, Weekday.Wednesday, Weekday.Friday] }],
        };

        var stop = Assert.Single(ReEntrySheet.Of(History([], SimulatedCollege.System with { Programmes = [programme] }, label), On, Today).Groups.Single(one => one.Output == "biocide-1").Stops);
        var asLeft = ReEntrySheet.Of(
            History([With(Visit("2025-08-20"), record => record with { Settings = [new SettingReading { Name = "biocide-1/days", Found = SettingValue.Of("tue"), Left = SettingValue.Of("tue") }] })], SimulatedCollege.System with { Programmes = [programme] }, label),
            On,
            Today);

        Assert.Equal((LabelStopKind.Week, 300.0), (stop.Kind, stop.Limit));
        Assert.Equal(374, stop.Value, 0.5);

        // What stands on the sheet counts: left at one day a week, nothing is stopped.
        Assert.Empty(asLeft.Groups.Single(one => one.Output == "biocide-1").Stops);
    }

    [Fact]
    public void Of_DosesCloserThanTheLabel_AreStoppedByItsGap()
    {
        var programme = SimulatedCollege.Programme with { Feeds = [SimulatedCollege.Programme.Feeds[0], SimulatedCollege.Programme.Feeds[1] with { Days = [Weekday.Tuesday, Weekday.Wednesday] }] };

        var stop = Assert.Single(ReEntrySheet.Of(History([], SimulatedCollege.System with { Programmes = [programme] }, Label with { LabelGapHours = 48 }), On, Today).Groups.Single(one => one.Output == "biocide-1").Stops);

        Assert.Equal((LabelStopKind.Gap, 24.0, 48.0), (stop.Kind, stop.Value, stop.Limit));
    }

    [Theory]
    [InlineData(85, 5.1, "drawdown of 20 Aug")]
    [InlineData(25, 3.0, "rating on file")]
    public void Of_PumpMeasured_TheLabelIsKeptForTheStrongerOfMeasuredAndRated(double millilitresPerMinute, double judged, string origin)
    {
        // 30 min at 3 L/h are 157.5 mg/L, at 5.1 L/h 267.8; with the volume at its low end 197 and 335. A weak day of the pump lowers nothing.
        var programme = SimulatedCollege.Programme with { Feeds = [SimulatedCollege.Programme.Feeds[0], SimulatedCollege.Programme.Feeds[1] with { RunMinutes = 30 }] };
        var visit = With(Visit("2025-08-20"), record => record with { Drawdowns = [new Drawdown { Pump = "P-B1", Millilitres = millilitresPerMinute, Seconds = 60 }] });

        var stop = Assert.Single(ReEntrySheet.Of(History([visit], SimulatedCollege.System with { Programmes = [programme] }), On, Today).Groups.Single(one => one.Output == "biocide-1").Stops);

        Assert.Equal(LabelStopKind.Dose, stop.Kind);
        Assert.Equal(0.5 * judged * 1.05e6 / 10_000 / 0.8, stop.Value, 0.1);
        Assert.Contains(origin, stop.Says.In(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_DosePlanWithoutHold_KeepsNothingAndIsStoppedByTheLabel()
    {
        var programme = SimulatedCollege.Programme with { Feeds = [SimulatedCollege.Programme.Feeds[0], SimulatedCollege.Programme.Feeds[1] with { HoldBleedShutMin = null }] };

        var sheet = ReEntrySheet.Of(History([], SimulatedCollege.System with { Programmes = [programme] }), On, Today);

        var stop = Assert.Single(sheet.Groups.Single(one => one.Output == "biocide-1").Stops);
        Assert.Equal((LabelStopKind.Contact, 0.0, 4.0), (stop.Kind, stop.Value, stop.Limit));
    }

    [Fact]
    public void Check_ReadBack_TellsWhatDiffersAndWhatNobodyLookedAt()
    {
        var sheet = ReEntrySheet.Of(History([]), On, Today);

        var back = sheet.Check(new Dictionary<string, SettingValue> { ["setPointUsPerCm"] = SettingValue.Of(1000), ["biocide-1/days"] = SettingValue.Of("tue, fri") });

        Assert.Equal([("setPointUsPerCm", false)], back.Where(line => line.Agrees == false).Select(line => (line.Line.Setting.Name, line.Agrees!.Value)));
        Assert.Equal("biocide-1/days", Assert.Single(back, line => line.Agrees == true).Line.Setting.Name);
        Assert.Equal(sheet.Lines.Count() - 2, back.Count(line => line.Agrees is null));
    }

    [Fact]
    public void ThenAndNow_ChangedWhileAway_IsToldApartFromChangedHere()
    {
        var view = SettingsThenAndNow.Of(History([Visit("2025-07-10", Setting("setPointUsPerCm", 1232, 1232)), Visit("2025-08-10", Setting("setPointUsPerCm", 1500, 1232))]), On);

        var step = view.Tracks.Single(track => track.Name == "setPointUsPerCm").Steps[^1];
        Assert.True(step.WhileAway);
        Assert.True(step.ChangedHere);
        Assert.Equal((1232.0, 1500.0, 1232.0), (step.Before!.Number!.Value, step.Found!.Number!.Value, step.Left!.Number!.Value));
    }

    [Fact]
    public void ThenAndNow_Targets_GoFromTargetOverSettingToMeasured()
    {
        var visit = With(Visit("2025-08-10"), record => record with
        {
            Readings =
            [
                new Reading { At = "tower", Test = "inhibitor", Value = 95, Unit = "mg/L" },
                new Reading { At = "make-up", Test = "conductivity", Source = ReadingSource.Reference, Value = 300, Unit = "uS/cm" },
                new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Reference, Value = 1220, Unit = "uS/cm" },
            ],
        });

        var view = SettingsThenAndNow.Of(History([visit]), On);

        var bleed = view.Targets[0];
        Assert.Equal(4.5, bleed.Target);
        Assert.InRange(bleed.AtSetting!.Result.Value.Value, 4.3, 4.6);
        var inhibitor = view.Targets.Single(line => line.Output == "inhibitor");
        Assert.Equal(100, inhibitor.Target);
        Assert.InRange(inhibitor.AtSetting!.Result.Value.Value, 90, 110);
        Assert.Equal((95.0, new DateOnly(2025, 8, 10)), (inhibitor.Measured!.Value, inhibitor.MeasuredOn!.Value));
    }

    [Fact]
    public void ThenAndNow_PumpMeasuredWeaker_FeedsWhatItGives()
    {
        Reading[] readings =
        [
            new Reading { At = "make-up", Test = "conductivity", Source = ReadingSource.Reference, Value = 300, Unit = "uS/cm" },
            new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Reference, Value = 1220, Unit = "uS/cm" },
        ];
        var pump = SimulatedCollege.System.Pumps.First(one => one.Output == "inhibitor");
        var halfOfIt = new Drawdown { Pump = pump.Code, Millilitres = pump.RatedLPerH!.Value / 2 * 1000 / 60, Seconds = 60 };

        double FedBy(Visit visit) => SettingsThenAndNow.Of(History([visit]), On).Targets.Single(line => line.Output == "inhibitor").AtSetting!.Result.Value.Value;
        var rated = FedBy(With(Visit("2025-08-10"), record => record with { Readings = readings }));
        var measured = FedBy(With(Visit("2025-08-10"), record => record with { Readings = readings, Drawdowns = [halfOfIt] }));

        Assert.Equal(0.5, measured / rated, 3);
    }

    private static WaterSystem College => SimulatedCollege.System with { Programmes = [SimulatedCollege.Programme] };

    private static SystemHistory History(IReadOnlyList<Visit> visits, WaterSystem? system = null, Product? label = null) => SystemHistory.From(
        new FirmSetUp(new ExchangeDocument
        {
            Format = "logbook-exchange",
            Version = 1,
            Sites = [new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London" }],
            Products =
            [
                new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor, DensityKgPerL = 1.12, DoseMgPerL = 100, Residual = new ProductResidual { Test = "inhibitor", MgPerLPerMgProduct = 1 } },
                label ?? Label,
            ],
            Systems = [system ?? College],
        }),
        "YAF-1",
        "CT-1",
        visits);

    private static Visit Visit(string day, params SettingReading[] settings)
    {
        var arrived = DateTime.SpecifyKind(DateTime.Parse(day + "T09:00:00", System.Globalization.CultureInfo.InvariantCulture), DateTimeKind.Utc);
        return new Visit
        {
            Id = Guid.CreateVersion7(new DateTimeOffset(arrived)),
            Site = "YAF-1",
            Technician = "RYA",
            Arrived = Moment.OfUtc(arrived),
            Left = Moment.OfUtc(arrived.AddHours(1)),
            Systems = [new VisitedSystem { System = "CT-1", Running = true, InUse = true, Settings = settings }],
        };
    }

    private static Visit With(Visit visit, Func<VisitedSystem, VisitedSystem> change) => visit with { Systems = [change(visit.Systems[0])] };

    private static SettingReading Setting(string name, double found, double left) => new() { Name = name, Found = SettingValue.Of(found), Left = SettingValue.Of(left), Step = 1 };
}
