using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;
using Xunit;

namespace LogBook.Domain.Tests.Simulation;

public class LookAheadTests
{
    private static readonly Site College = new() { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London" };

    private static readonly WaterSystem Tower = SimulatedCollege.System with { FullLoadKw = 700 };

    private static readonly Programme Plan = SimulatedCollege.Programme with
    {
        MakeUp = new MakeUpWater { ConductivityUsPerCm = 300, CalciumMgPerLAsCaCO3 = 82, ChlorideMgPerL = 23 },
    };

    private static readonly FirmSetUp Firm = new(new ExchangeDocument
    {
        Format = "logbook-exchange",
        Version = 1,
        Products =
        [
            new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor, DensityKgPerL = 1.12, DoseMgPerL = 100 },
            new Product { Code = "N-15", Name = "Biocide N-15", Kind = ProductKind.Biocide, DensityKgPerL = 1.05, LabelGapHours = 24, LabelContactHours = 4 },
            new Product { Code = "N-20", Name = "Biocide N-20", Kind = ProductKind.Biocide, DensityKgPerL = 1.03 },
        ],
    });

    [Fact]
    public void Run_FourWeeks_DosesAsThePlanSays()
    {
        var (result, missing) = LookAhead.Run(Firm, College, Tower, Plan);

        Assert.Empty(missing);
        Assert.Equal(new DateOnly(2025, 6, 30), result!.From);
        Assert.Equal(8, result.Doses.Count);
        Assert.All(result.Doses, d => Assert.Equal(19, (d.Ended!.Value - d.Started!.Value).TotalMinutes, 1e-3));
        Assert.All(result.Doses, d => Assert.Equal(240, (d.HeldUntil!.Value - d.Ended!.Value).TotalMinutes, 1e-3));
        Assert.All(result.Doses, d => Assert.Equal("N-15", d.Product));
        Assert.Equal(4 * 7 * 24, result.Hours.Count);
        Assert.Empty(result.Clashes);

        // 0.95 L of density 1.05 into 10 m3 add 99.75 mg/L; the rest of the last dose leaves with an hour of bleed-down.
        var biocide = result.Products.ToList().IndexOf("N-15");
        var before = result.Hours.Last(h => h.Utc < result.Doses[3].BleedDownFrom).MgPerL[biocide];
        var dosed = result.Hours.First(h => h.Utc > result.Doses[3].Ended).MgPerL[biocide];
        Assert.InRange(dosed - (before * 0.9), 98, 104);
        Assert.InRange(before, 20, 45);
    }

    [Fact]
    public void Run_Hold_RisesAsTheClosedFormSays()
    {
        var (result, _) = LookAhead.Run(Firm, College, Tower, Plan, loadShare: 0.7);
        var dose = result!.Doses[2];

        // Reference/12, bleed_hold_rise: cm E t / V with the hour-by-hour load from feed to release, cycles likewise.
        var conductance = 0.0;
        for (var minute = dose.Started!.Value.AddMinutes(0.5); minute < dose.HeldUntil; minute = minute.AddMinutes(1))
        {
            conductance += 300 * (700 * 0.7 * 1.26 / 60) * new LoadProfile().At(TimeZoneInfo.ConvertTimeFromUtc(minute, TimeZoneInfo.FindSystemTimeZoneById("Europe/London"))) / 10000;
        }

        double Cond(double c) => c * (1 - (0.025 * ((c / 300) - 1)));
        var before = 1150.0;
        for (var i = 0; i < 60; i++)
        {
            before += dose.StartUsPerCm!.Value - Cond(before);
        }

        var rise = Cond(before + conductance) - Cond(before);
        Assert.Equal(dose.StartUsPerCm!.Value + rise, dose.EndUsPerCm!.Value, 2.0);
        Assert.True(result.Peak.UsPerCm >= dose.EndUsPerCm.Value - 0.01);
    }

    [Fact]
    public void Run_TwoBiocides_ToldWhereTheyMeet()
    {
        var tower = Tower with
        {
            Outputs = [.. Tower.Outputs, new Output { Code = "biocide-2", Drives = OutputDrives.Feed }],
            Drums = [.. Tower.Drums, new Drum { Code = "D-B2", Product = "N-20", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 60 }],
            Pumps = [.. Tower.Pumps, new Pump { Code = "P-B2", Drum = "D-B2", Output = "biocide-2", RatedLPerH = 4 }],
        };
        Feed Second(Weekday day, string start) => new() { Drum = "D-B2", Output = "biocide-2", Mode = FeedMode.DosePlan, Weeks = [2], Days = [day], Starts = [start], RunMinutes = 20 };

        var (far, _) = LookAhead.Run(Firm, College, tower, Plan with { Feeds = [.. Plan.Feeds, Second(Weekday.Thursday, "02:00")] });
        var (near, _) = LookAhead.Run(Firm, College, tower, Plan with { Feeds = [.. Plan.Feeds, Second(Weekday.Wednesday, "10:00")] });
        var (within, _) = LookAhead.Run(Firm, College, tower, Plan with { Feeds = [.. Plan.Feeds, Second(Weekday.Tuesday, "23:30")] });

        Assert.Empty(far!.Clashes);
        var gap = Assert.Single(near!.Clashes);
        Assert.Equal((LookAheadClashKind.GapTooShort, "biocide-1", "biocide-2", 24.0), (gap.Kind, gap.First, gap.Second, gap.GapHours));
        Assert.InRange(gap.Hours, 11.1, 12.2);
        Assert.Equal([LookAheadClashKind.DueDuringTheOther, LookAheadClashKind.GapTooShort], within!.Clashes.Select(c => c.Kind).Order());
    }

    [Fact]
    public void Run_SetUpWithGaps_SaysWhatIsMissing()
    {
        var (result, missing) = LookAhead.Run(Firm, College, Tower with { VolumeL = null, BleedValveLPerH = null }, Plan with { MakeUp = null });

        Assert.Null(result);
        Assert.Equal(["volumeL", "bleedValveLPerH", "makeUp.conductivityUsPerCm"], missing.Select(m => m.Path));
    }

    [Fact]
    public void Run_MeasuredFeeds_AreNamedAsLeftOut()
    {
        var acid = new Feed { Drum = "D-B1", Output = "biocide-1", Mode = FeedMode.ByOrp, SetPoint = 650, Differential = 20 };

        var (result, _) = LookAhead.Run(Firm, College, Tower, Plan with { Feeds = [Plan.Feeds[0], acid] });

        Assert.Equal(["biocide-1"], result!.LeftOut);
        Assert.Empty(result.Doses);

        // A level of none would be a statement about a product that nobody worked out.
        Assert.Equal(["P-40"], result.Products);
        Assert.All(result.Hours, hour => Assert.Single(hour.MgPerL));
    }
}
