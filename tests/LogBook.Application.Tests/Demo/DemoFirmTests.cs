using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LogBook.Application.Demo;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Application.Tests.Demo;

public class DemoFirmTests(DemoFirmFixture fixture) : IClassFixture<DemoFirmFixture>
{
    private ExchangeDocument Document => fixture.Firm.Document;

    [Fact]
    public void Create_SameSeedTwice_GivesTheSameBytes()
    {
        var again = DemoFirm.Create().Document;
        var other = DemoFirm.Create(seed: 4).Document;

        Assert.Equal(Hash(Document), Hash(again));
        Assert.NotEqual(Hash(Document), Hash(other));
    }

    [Fact]
    public void Create_InAnotherCulture_GivesTheSameBytes()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("pt-BR");
            Assert.Equal(Hash(Document), Hash(DemoFirm.Create().Document));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Visits_CoverEighteenMonthsWithVersion7Ids()
    {
        var ids = Document.Visits.Select(v => v.Id).ToList();

        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(Document.Visits, v => Assert.Equal(7, v.Id.Version));
        Assert.All(Document.Visits, v => Assert.InRange(v.Arrived.Utc, new DateTime(2025, 7, 1, 0, 0, 0, DateTimeKind.Utc), new DateTime(2026, 12, 31, 23, 0, 0, DateTimeKind.Utc)));
        Assert.Equal(Document.Visits.Select(v => v.Arrived.Utc).Order(), Document.Visits.Select(v => v.Arrived.Utc));
        Assert.All(Document.Sites, s => Assert.True(Document.Visits.Count(v => v.Site == s.Code) >= 15, s.Code));
    }

    [Fact]
    public void Visits_HoldAsManyValuesAsARoundDoes()
    {
        var values = Document.Visits.Select(v => v.Systems[0])
            .Select(s => s.Readings.Count + s.Meters.Count + s.Drums.Count + s.HoursRun.Count + s.Switches.Count + s.Settings.Count(n => n.Found is not null) + s.Probes.Count)
            .Order()
            .ToList();

        Assert.InRange(values[values.Count / 2], 25, 50);
        Assert.All(values, v => Assert.InRange(v, 20, 95));
    }

    [Fact]
    public void Settings_AreWalkedFullyAboutEvery90Days()
    {
        foreach (var site in Document.Sites)
        {
            var walks = Document.Visits.Where(v => v.Site == site.Code && v.Systems[0].Settings.Count > 14).Select(v => v.Arrived.Utc).ToList();
            Assert.True(walks.Count >= 4, site.Code);
            Assert.All(walks.Zip(walks.Skip(1)).Where(p => !IdleBetween(site.Code, p.First, p.Second)), pair => Assert.True((pair.Second - pair.First).TotalDays <= 125, $"{site.Code}: {pair.First:d} to {pair.Second:d}"));
        }
    }

    [Fact]
    public void References_AllLeadSomewhere()
    {
        var people = Document.People.Select(p => p.Code).ToHashSet();
        var lots = Document.Lots.Select(l => l.Code).ToHashSet();
        var instruments = Document.Instruments.Select(i => i.Code).ToHashSet();
        var products = Document.Products.Select(p => p.Code).ToHashSet();
        var systems = Document.Systems.ToDictionary(s => (s.Site, s.Code));

        Assert.All(Document.Visits, v =>
        {
            Assert.Contains(v.Technician, people);
            foreach (var visited in v.Systems)
            {
                var system = systems[(v.Site, visited.System)];
                Assert.All(visited.Readings, r => Assert.True(r.Lot is null || lots.Contains(r.Lot)));
                Assert.All(visited.Readings, r => Assert.True(r.Instrument is null || instruments.Contains(r.Instrument)));
                Assert.All(visited.Drums, d => Assert.Contains(d.Drum, system.Drums.Select(x => x.Code)));
                Assert.All(visited.Drums, d => Assert.True(d.ProductFound is null || products.Contains(d.ProductFound)));
                Assert.All(visited.HoursRun, h => Assert.Contains(h.Output, system.Outputs.Select(x => x.Code)));
            }
        });
        Assert.All(Document.Systems.SelectMany(s => s.Drums), d => Assert.Contains(d.Product, products));
    }

    [Fact]
    public void Counters_NeverRunBackwards()
    {
        foreach (var group in Document.Visits.GroupBy(v => v.Site))
        {
            var hours = new Dictionary<string, double>();
            double? total = null;
            foreach (var visited in group.Select(v => v.Systems[0]))
            {
                foreach (var reading in visited.HoursRun)
                {
                    Assert.True(reading.Hours >= hours.GetValueOrDefault(reading.Output), $"{group.Key} {reading.Output}");
                    hours[reading.Output] = reading.Hours;
                }

                var now = visited.Meters[0].Total;
                Assert.True(total is null || now >= total, group.Key);
                total = now;
            }
        }
    }

    [Fact]
    public void Customers_AreWrittenToInThreeLanguages()
    {
        var languages = Document.Customers.SelectMany(c => c.Contacts).Select(c => c.Language).Distinct().ToList();

        Assert.Contains(Language.English, languages);
        Assert.Contains(Language.Spanish, languages);
        Assert.Contains(Language.Portuguese, languages);
        Assert.All(Document.Customers.SelectMany(c => c.Contacts), c => Assert.EndsWith(".example", c.Email, StringComparison.Ordinal));
    }

    [Fact]
    public void Control_StaysHealthyThroughout()
    {
        var truths = fixture.TruthOf("YAF-1", "2025-07-01", "2026-12-31");
        var visits = Document.Visits.Where(v => v.Site == "YAF-1").ToList();
        var setPoint = Programme("YAF-1").SetPointUsPerCm!.Value;

        Assert.All(truths, t => Assert.InRange(t.Cycles, 4.5 * 0.85, 4.5 * 1.15));
        Assert.All(truths, t => Assert.InRange(t.InhibitorMgPerL, 75, 130));
        Assert.All(visits, v => Assert.InRange(Reference(v) / setPoint, 0.88, 1.12));
        Assert.All(visits.SelectMany(v => v.Systems[0].Readings).Where(r => r.Test == TestCodes.DipSlide), r => Assert.True(r.Value < 1e4, $"{r.Value}"));
    }

    [Fact]
    public void HealthyMonths_LookHealthyAtEverySite()
    {
        foreach (var system in Document.Systems.Where(s => s.Kind == SystemKind.OpenRecirculating))
        {
            var programme = system.Programmes[0];
            var visits = Document.Visits.Where(v => v.Site == system.Site && v.Arrived.Utc < new DateTime(2025, 10, 1, 0, 0, 0, DateTimeKind.Utc)).ToList();
            var truths = fixture.TruthOf(system.Site, "2025-07-15", "2025-09-30");

            Assert.InRange(visits.Average(v => Reference(v) / programme.SetPointUsPerCm!.Value), 0.90, 1.06);
            Assert.InRange(truths.Average(t => t.Cycles) / programme.TargetCycles!.Value, 0.88, 1.12);
            Assert.InRange(truths.Average(t => t.InhibitorMgPerL) / programme.Feeds[0].TargetMgPerL!.Value, 0.75, 1.30);
        }
    }

    [Fact]
    public void St1_ProbeFouls_TruthRisesWhileDisplayStays()
    {
        var setPoint = Programme("NUR-1").SetPointUsPerCm!.Value;
        var week14 = fixture.TruthOf("NUR-1", "2026-01-05", "2026-01-05").Single();
        var cleaned = Visit("NUR-1", "2026-07-06").Systems[0].Probes[0];
        var last = fixture.TruthOf("NUR-1", "2026-09-01", "2026-12-31");

        Assert.InRange(week14.DisplayUsPerCm / setPoint, 0.93, 1.01);
        Assert.InRange(week14.ConductivityUsPerCm / week14.DisplayUsPerCm, 1.06, 1.13);
        Assert.Equal(2, Document.Visits.Count(v => v.Site == "NUR-1" && v.Systems[0].Probes[0] is { Calibrated: true, AfterCleaning: null }));
        Assert.True(cleaned.AfterCleaning > 1.12 * cleaned.AsFound, $"{cleaned.AsFound} to {cleaned.AfterCleaning}");
        Assert.Equal(4.5, last.Average(t => t.Cycles), 0.4);
    }

    [Fact]
    public void St2_PulsesLost_TotalStandsWhileDialMoves_ThenRegisterRollsOver()
    {
        var meters = Document.Visits.Where(v => v.Site == "GRO-1").Select(v => (On: v.Arrived.Utc, Meter: v.Systems[0].Meters[0])).ToList();
        var lost = meters.Where(m => m.On >= Utc(2025, 12, 9) && m.On < Utc(2025, 12, 25)).ToList();
        var stuck = meters.Where(m => m.On >= Utc(2025, 12, 26) && m.On < Utc(2026, 2, 3)).ToList();
        var renewed = meters.Where(m => m.On >= Utc(2026, 2, 3)).Select(m => m.Meter).ToList();

        Assert.Single(lost.Select(m => m.Meter.Total).Distinct());
        Assert.True(lost[^1].Meter.Dial - lost[0].Meter.Dial > 300);
        Assert.Single(stuck.Select(m => m.Meter.Dial).Distinct());
        Assert.True(renewed[0].Replaced);
        var rollovers = renewed.Zip(renewed.Skip(1)).Count(p => p.Second.Dial < p.First.Dial);
        Assert.Equal(1, rollovers);
        Assert.All(renewed, m => Assert.InRange(m.Dial!.Value, 0, 99999));
        Assert.InRange(fixture.TruthOf("GRO-1", "2025-12-09", "2025-12-09").Single().InhibitorMgPerL, 0, 1);
    }

    [Fact]
    public void St3_LeftInHand_HoursJumpAndDrumIsEmpty()
    {
        var (before, after) = (Visit("SNE-1", "2025-11-17").Systems[0], Visit("SNE-1", "2025-12-08").Systems[0]);

        Assert.InRange(Hours(after, "inhibitor") - Hours(before, "inhibitor"), 495, 510);
        Assert.Equal(SwitchPosition.ForcedOn, after.Switches.Single(s => s.Output == "inhibitor").Found);
        Assert.DoesNotContain(before.Switches, s => s.Output == "inhibitor");
        Assert.InRange(before.Drums[0].Level!.Value / 75 * 100, 50, 70);
        Assert.InRange(after.Drums[0].Level!.Value / 75 * 100, 0, 3);
        Assert.InRange(fixture.TruthOf("SNE-1", "2025-12-08", "2025-12-08").Single().InhibitorMgPerL, 0, 30);
    }

    [Fact]
    public void St4_Reset_FourteenSettingsDifferAndCyclesFall()
    {
        var after = Visit("UMB-1", "2026-03-17").Systems[0];
        var truth = fixture.TruthOf("UMB-1", "2026-03-17", "2026-03-17").Single();

        Assert.True(after.Settings.Count(s => s.Found != s.Left) >= 14, $"{after.Settings.Count(s => s.Found != s.Left)}");
        Assert.InRange(truth.Cycles, 3.5, 4.4);
        Assert.InRange(Hours(after, "biocide-1") - Hours(Visit("UMB-1", "2026-03-03").Systems[0], "biocide-1"), 0, 0.6);
        Assert.True(after.Readings.Single(r => r.Test == TestCodes.DipSlide).Value >= 1e4);
        Assert.Equal(Programme("UMB-1").SetPointUsPerCm, Visit("UMB-1", "2026-03-31").Systems[0].Settings.Single(s => s.Name == "setPointUsPerCm").Found!.Number);
    }

    [Fact]
    public void St5_Leak_BleedFallsWhileMakeUpAndConductivityStay()
    {
        var healthy = Change("PLU-1", "2025-09-03", "2025-12-24");
        var leaking = Change("PLU-1", "2026-06-10", "2026-09-02");
        var worst = fixture.TruthOf("PLU-1", "2026-10-20", "2026-11-24");

        Assert.True(leaking.BleedHoursPerDay < 0.25 * healthy.BleedHoursPerDay, $"{healthy.BleedHoursPerDay} to {leaking.BleedHoursPerDay} h/d");
        Assert.InRange(leaking.MakeUpPerDay / healthy.MakeUpPerDay, 0.85, 1.25);
        Assert.All(worst, t => Assert.InRange(t.Cycles, 1.8, 3.1));
    }

    [Fact]
    public void St7_PumpWears_HoursStayWhileInhibitorFalls()
    {
        var late = fixture.TruthOf("WEN-1", "2026-08-20", "2026-09-20");
        var renewed = fixture.TruthOf("WEN-1", "2026-11-15", "2026-12-31");

        Assert.InRange(late.Average(t => t.InhibitorMgPerL), 15, 32);
        Assert.InRange(renewed.Average(t => t.InhibitorMgPerL), 65, 95);
        Assert.InRange(Change("WEN-1", "2026-08-03", "2026-08-31").InhibitorHoursPerM3 / Change("WEN-1", "2025-08-04", "2025-09-01").InhibitorHoursPerM3, 0.9, 1.1);
    }

    [Fact]
    public void St8_SoftenerFails_CalciumShowsConductivityDoesNot()
    {
        var after = Visit("JOR-1", "2026-05-29").Systems[0];
        var makeUp = after.Readings.Single(r => r.At == "make-up" && r.Test == TestCodes.Calcium);
        var tower = after.Readings.Single(r => r.At == "tower" && r.Test == TestCodes.Calcium);

        Assert.InRange((makeUp.Drops * makeUp.PerDrop)!.Value, 170, 250);
        Assert.InRange((tower.Drops * tower.PerDrop)!.Value, 330, 620);
        Assert.InRange(Reference(Visit("JOR-1", "2026-05-29")) / Programme("JOR-1").SetPointUsPerCm!.Value, 0.88, 1.12);
    }

    [Fact]
    public void St11_WrongProductOnThePump_NoInhibitorButBiocide()
    {
        var truth = fixture.TruthOf("TOL-1", "2026-06-17", "2026-06-17").Single();
        var (swapped, found) = (Visit("TOL-1", "2026-06-03").Systems[0].Drums[0], Visit("TOL-1", "2026-06-17").Systems[0].Drums[0]);

        Assert.True(truth.InhibitorMgPerL < 2);
        Assert.InRange(truth.BiocideMgPerL, 40, 130);
        Assert.True(swapped.Swapped);
        Assert.Null(swapped.ProductFound);
        Assert.Equal("N-15", found.ProductFound);
    }

    [Fact]
    public void St13AndSt14_LotAndMeterShiftTheirSitesOnly()
    {
        double InhibitorRatio(string site) => Document.Visits
            .Where(v => v.Site == site && v.Arrived.Utc >= Utc(2026, 8, 1))
            .Average(v => v.Systems[0].Readings.Single(r => r.Test == TestCodes.Inhibitor).Value!.Value / fixture.Firm.Truths.Single(t => t.VisitId == v.Id).InhibitorMgPerL);

        double MeterRatio(string site) => Document.Visits
            .Where(v => v.Site == site && v.Arrived.Utc >= Utc(2026, 9, 1))
            .Average(v => Reference(v) / fixture.Firm.Truths.Single(t => t.VisitId == v.Id).ConductivityUsPerCm);

        Assert.InRange(InhibitorRatio("NUR-1"), 1.08, 1.22);
        Assert.InRange(InhibitorRatio("YAF-1"), 0.88, 1.10);
        Assert.InRange(MeterRatio("TOL-1"), 1.035, 1.085);
        Assert.InRange(MeterRatio("NUR-1"), 0.97, 1.03);
        Assert.DoesNotContain(Document.Instruments.Single(i => i.Code == "HM-2").Checks, c => c.At.Utc >= Utc(2026, 9, 1));
    }

    [Fact]
    public void St15_OrpProbeCoats_DisplayStaysResidualGoes()
    {
        var readings = Visit("UMB-1", "2026-10-13").Systems[0].Readings;

        Assert.InRange(readings.Single(r => r.Test == TestCodes.Orp).Value!.Value, 610, 760);
        Assert.InRange(readings.Single(r => r.Test == TestCodes.FreeHalogen).Value!.Value, 0, 0.1);
    }

    [Fact]
    public void RecordOnlySystem_HasTestsAndNoEngineParts()
    {
        var loop = Document.Systems.Single(s => s.Kind == SystemKind.ClosedLoop);

        Assert.Empty(loop.Outputs);
        Assert.True(Document.Visits.Count(v => v.Systems.Any(s => s.System == loop.Code && s.Readings.Count >= 4)) >= 5);
    }

    [Fact]
    public void Answers_NameSitesAndDaysOfTheDocument()
    {
        Assert.All(fixture.Firm.Answers.Lines, a =>
        {
            Assert.True(a.Site is null || Document.Sites.Any(s => s.Code == a.Site));
            Assert.True(a.Latest >= a.Onset);
            Assert.True(a.Kinds.Count > 0 || a.MostPlanOrAct is not null);
        });
        Assert.Equal(1, fixture.Firm.Answers.Lines.Single(a => a.Story == "ST12").MostPlanOrAct);
    }

    [Fact]
    public void Document_IsReadBackWithoutAnIssue()
    {
        var read = ExchangeReader.ReadAndCheck(ExchangeWriter.Write(Document), Domain.History.FirmSetUp.Empty);

        Assert.Empty(read.Issues);
        Assert.Equal(12, Document.Sites.Count);
        Assert.Equal(Document.Visits.Count, read.Document!.Visits.Count);
    }

    [Fact]
    public void Answers_TellEveryStoryWithItsDays()
    {
        var lines = fixture.Firm.Answers.Lines;
        var sites = Document.Sites.Select(s => s.Code).ToHashSet();

        Assert.Equal(Enumerable.Range(1, 15).Select(i => $"ST{i}").Order(StringComparer.Ordinal), lines.Select(l => l.Story).Where(s => s != "hold").Distinct().Order(StringComparer.Ordinal));
        Assert.All(lines.SelectMany(l => l.Kinds), kind => Assert.Contains(kind, Domain.Findings.FindingKinds.All));
        Assert.All(lines.SelectMany(l => l.Forbidden), f =>
        {
            Assert.NotEmpty(f.Kinds);
            Assert.True(f.Until >= f.From);
            Assert.All(f.Kinds.Concat(f.UnlessWith), kind => Assert.Contains(kind, Domain.Findings.FindingKinds.All));
            Assert.All(f.Sites, site => Assert.Contains(site, sites));
        });
        Assert.All(lines, l => Assert.True(l.Over is null || l.Over >= l.Latest, l.Story));

        // Found at the latest on a day on which somebody came, except where time alone tells.
        Assert.All(lines.Where(l => l.Site is not null && l.Kinds.Count > 0 && l.Story is not ("ST1" or "ST7" or "ST10")), l => Assert.Contains(
            Document.Visits, v => v.Site == l.Site && DateOnly.FromDateTime(v.Arrived.Utc) == l.Latest));
    }

    [Theory]
    [InlineData("ST13", "2026-07-07")]
    [InlineData("ST14", "2026-09-02")]
    public void Answers_AboutALotOrAMeter_CountFromTheThirdSite(string story, string third)
    {
        var line = fixture.Firm.Answers.Lines.Single(l => l.Story == story);
        var days = line.Sites
            .Select(site => Document.Visits.First(v => v.Site == site && DateOnly.FromDateTime(v.Arrived.Utc) >= line.Onset))
            .Select(v => DateOnly.FromDateTime(v.Arrived.Utc))
            .Order()
            .ToList();

        Assert.Equal(DateOnly.ParseExact(third, "yyyy-MM-dd"), days[2]);
        Assert.Equal(days[2], line.Forbidden.Single().From);
        Assert.Equal(days[2].AddDays(14), line.Latest);
    }

    [Fact]
    public void St6_Overflow_ThinsTheWaterWhileVisitsAreMadeUp()
    {
        var invented = new[] { "2026-03-19", "2026-04-10", "2026-05-18" }.Select(d => Visit("LAN-1", d)).ToList();
        var before = Visit("LAN-1", "2026-02-17").Systems[0];
        var june = Visit("LAN-1", "2026-06-09");
        var truth = fixture.TruthOf("LAN-1", "2026-05-18", "2026-06-09");
        var dials = invented.Select(v => v.Systems[0].Meters[0]).ToList();

        Assert.All(invented, v => Assert.Equal("TNU", v.Technician));
        Assert.All(invented, v => Assert.InRange((v.Left!.Value.Utc - v.Arrived.Utc).TotalMinutes, 6, 9));
        Assert.All(invented, v => Assert.Null(v.Systems[0].Probes[0].SettledMin));
        Assert.Equal([1290, 1300, 1290], invented.Select(Reference));
        Assert.Equal([134000, 134000, 134000], dials.Zip([before.Meters[0], .. dials], (now, then) => now.Dial - then.Dial));
        Assert.Equal([134000, 134000, 134000], dials.Zip([before.Meters[0], .. dials], (now, then) => now.Total - then.Total));
        Assert.All(truth, t => Assert.InRange(t.Cycles, 2.0, 2.6));
        Assert.Equal("PUM", june.Technician);
        Assert.InRange(Reference(june), 650, 900);
        Assert.InRange(Hours(june.Systems[0], "bleed") - Hours(before, "bleed"), 0, 25);
        Assert.InRange(Reference(Visit("LAN-1", "2026-08-04")), 1150, 1400);
    }

    [Fact]
    public void Feeds_OfOxidantAndAcid_HoldTheirLevels()
    {
        var brewery = Document.Systems.Single(s => s.Site == "JOR-1").Programmes[0].Feeds[2];
        var hotel = Document.Systems.Single(s => s.Site == "LAN-1").Programmes[0].Feeds[2];
        var acids = Document.Visits.Where(v => v.Site == "WEN-1").Skip(5)
            .Select(v => v.Systems[0].Readings.Single(r => r is { At: "tower", Test: TestCodes.Ph, Source: ReadingSource.Controller }).Value!.Value)
            .ToList();
        var solids = Document.Visits.Where(v => v.Site == "LAN-1" && v.Arrived.Utc < Utc(2026, 2, 1)).Skip(1)
            .Select(v => v.Systems[0].Readings.Single(r => r.Test == TestCodes.FreeHalogen).Value!.Value)
            .ToList();

        Assert.Equal((FeedMode.DosePlan, FeedMode.Feeder), (brewery.Mode, hotel.Mode));
        Assert.All(acids, ph => Assert.InRange(ph, 8.05, 8.25));
        Assert.InRange(solids.Average(), 0.2, 0.6);
        Assert.All(Document.Visits.Where(v => v.Site == "LAN-1"), v => Assert.Equal("kg", v.Systems[0].Drums.Single(d => d.Drum == "D-HAL").Unit));
    }

    [Fact]
    public void Hurried_VisitLeavesTestsOutAndDoesNotWait()
    {
        var hurried = new[] { Visit("GRO-1", "2026-08-11"), Visit("WRE-1", "2026-08-10") };

        Assert.All(hurried, v => Assert.Equal("TNU", v.Technician));
        Assert.All(hurried, v => Assert.InRange((v.Left!.Value.Utc - v.Arrived.Utc).TotalMinutes, 15, 22));
        Assert.All(hurried, v => Assert.InRange(v.Systems[0].Probes[0].SettledMin!.Value, 2, 4));
        Assert.Contains(hurried, v => v.Systems[0].Readings.Count < Visit(v.Site, v.Site == "GRO-1" ? "2026-08-04" : "2026-07-27").Systems[0].Readings.Count);
    }

    [Fact]
    public void DemoScale_MakesTheSizeAskedFor()
    {
        var document = DemoScale.Create(systems: 40, years: 0.25);

        Assert.Equal(40, document.Sites.Count);
        Assert.Equal(40, document.Systems.Count);
        Assert.Equal(40, document.Customers.Count);
        Assert.Equal(document.Visits.Count, document.Visits.Select(v => v.Id).Distinct().Count());
        Assert.InRange(document.Visits.Count, 40 * 2, 40 * 14);
    }

    [Fact]
    public void St9_ClockSlips_DoseRunsAtNightIntoStillWater()
    {
        var found = Visit("WRE-1", "2025-12-15").Systems[0];
        var dosed = Hours(found, "biocide-1") - Hours(Visit("WRE-1", "2025-12-01").Systems[0], "biocide-1");

        Assert.InRange(found.ClockOffByMin!.Value, -662, -658);
        Assert.InRange(dosed, 0.3, 0.8);
        Assert.True(fixture.TruthOf("WRE-1", "2025-12-15", "2025-12-15").Single().BiocideMgPerL < 5);
        Assert.InRange(fixture.TruthOf("WRE-1", "2025-09-01", "2025-11-24").Average(t => t.Cycles), 6.8, 9.0);
        Assert.Contains(found.Additions, a => a.Product == "N-20");
    }

    [Fact]
    public void St10_StartWithoutDisinfection_LateSampleLateRetest()
    {
        var start = Visit("HOB-1", "2026-05-06");
        var samples = Document.Visits.Where(v => v.Site == "HOB-1" && v.Arrived.Utc >= Utc(2026, 5, 1) && v.Arrived.Utc < Utc(2026, 7, 1))
            .SelectMany(v => v.Systems[0].Readings)
            .Where(r => r.Test == TestCodes.Legionella)
            .ToList();

        Assert.Equal(VisitKind.StartUp, start.Kind);
        Assert.Contains(start.Systems[0].Events, e => e.Type == EventType.Started && e.At!.Value.Text.StartsWith("2026-05-04", StringComparison.Ordinal));
        Assert.DoesNotContain(start.Systems[0].Events, e => e.Type == EventType.Disinfected);
        Assert.Equal(["2026-05-27", "2026-06-16"], samples.Select(r => r.TakenAt!.Value.Text[..10]));
        Assert.Equal(300, samples[0].Value);
        Assert.Equal("2026-06-07", samples[0].ResultAt!.Value.Text[..10]);
    }

    private bool IdleBetween(string site, DateTime from, DateTime to)
    {
        var visits = Document.Visits.Where(v => v.Site == site && v.Arrived.Utc >= from && v.Arrived.Utc <= to).Select(v => v.Arrived.Utc).ToList();
        return visits.Zip(visits.Skip(1)).Any(p => (p.Second - p.First).TotalDays > 60);
    }

    private static DateTime Utc(int year, int month, int day) => new(year, month, day, 0, 0, 0, DateTimeKind.Utc);

    private static string Hash(ExchangeDocument document) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(ExchangeWriter.Write(document))));

    private static double Hours(VisitedSystem system, string output) => system.HoursRun.Single(h => h.Output == output).Hours;

    private static double Reference(Visit visit) => visit.Systems[0].Readings
        .Single(r => r is { At: "tower", Test: TestCodes.Conductivity, Source: ReadingSource.Reference }).Value!.Value;

    private Programme Programme(string site) => Document.Systems.Single(s => s.Site == site && s.Code == "CT-1").Programmes[0];

    private Visit Visit(string site, string day) =>
        Document.Visits.Single(v => v.Site == site && v.Arrived.Text.StartsWith(day, StringComparison.Ordinal));

    private (double BleedHoursPerDay, double MakeUpPerDay, double InhibitorHoursPerM3) Change(string site, string from, string to)
    {
        var (first, last) = (Visit(site, from), Visit(site, to));
        var days = (last.Arrived.Utc - first.Arrived.Utc).TotalDays;
        var (a, b) = (first.Systems[0], last.Systems[0]);
        var makeUp = b.Meters[0].Dial!.Value - a.Meters[0].Dial!.Value;
        return ((Hours(b, "bleed") - Hours(a, "bleed")) / days, makeUp / days, (Hours(b, "inhibitor") - Hours(a, "inhibitor")) / makeUp);
    }
}
