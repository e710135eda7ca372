using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Rounds.Planning;

public sealed class PackListTests
{
    private static readonly DateOnly Day = new(2025, 12, 8);

    private static readonly FirmSetUp Firm = new(new ExchangeDocument
    {
        Format = "logbook-exchange",
        Version = 1,
        Products =
        [
            new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor },
            new Product { Code = "A-38", Name = "Acid A-38", Kind = ProductKind.Acid },
            new Product { Code = "H-12", Name = "Biocide H-12", Kind = ProductKind.Biocide, Oxidising = true },
        ],
        Instruments =
        [
            new Instrument { Code = "HM-1", Kind = InstrumentKind.ConductivityMeter, Checks = [Check(Day.AddDays(-40)), Check(Day.AddDays(-10))] },
            new Instrument { Code = "HM-2", Kind = InstrumentKind.ConductivityMeter, Checks = [Check(Day.AddDays(-35))] },
        ],
        Lots =
        [
            new ReagentLot { Code = "IN-1", Test = "inhibitor", Expires = Day.AddDays(-1) },
            new ReagentLot { Code = "IN-2", Test = "inhibitor", Expires = Day.AddDays(200) },
            new ReagentLot { Code = "IN-3", Test = "inhibitor", Expires = Day.AddDays(20) },
            new ReagentLot { Code = "IN-0", Test = "inhibitor", Expires = Day.AddDays(-300) },
            new ReagentLot { Code = "CL-1", Test = "chloride" },
        ],
    });

    private static readonly WaterSystem Tower = new()
    {
        Site = "YAF-1", Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating,
        Programmes = [new Programme { From = new DateOnly(2025, 1, 6), Ranges = [new TestRange { At = "tower", Test = "inhibitor", Low = 80, High = 120, Unit = "mg/L" }, new TestRange { At = "tower", Test = "pH", Low = 7, High = 9, Unit = "[pH]" }] }],
    };

    private static readonly DrumAhead Drum = new("D-INH", "P-40", Day.AddDays(-14), 20, 1) { UsePerDayL = 1, UsePerDayUncertaintyL = 0.1, From = Day, To = Day.AddDays(9), CapacityL = 60 };

    [Fact]
    public void Tests_WithReagent_CountSamplesAndShowThePersonsLotFirst()
    {
        var ahead = new SystemAhead { Tests = [new("make-up", "inhibitor"), new("tower", "conductivity")], Lots = [new("RYA", "inhibitor", "IN-1"), new("PUM", "inhibitor", "IN-0")] };

        var test = Assert.Single(Of(ahead).Tests);

        Assert.Equal(("inhibitor", 2), (test.Test, test.Times));
        Assert.Equal(
            [("IN-1", LotStanding.Expired, true), ("IN-3", LotStanding.ExpiresSoon, false), ("IN-2", LotStanding.InDate, false)],
            test.Lots.Select(lot => (lot.Lot, lot.Standing, lot.IsInUse)));
    }

    [Fact]
    public void Bottles_DueBeforeTheNextVisit_AreTakenNow()
    {
        var ahead = new SystemAhead
        {
            Tests = [new("tower", "dip-slide")],
            Duties =
            [
                Duty(TestCodes.Legionella, Day.AddDays(13)),
                Duty(TestCodes.ColonyCount, Day.AddDays(14)),
                Duty(TestCodes.Legionella, Day.AddDays(9)) with { Kind = DutyKind.Retest, NotBefore = Day.AddDays(3) },
            ],
        };

        Assert.Equal([("dip-slide", null), ("legionella", Day.AddDays(13))], Of(ahead).Bottles.Select(bottle => (bottle.Test, bottle.By)));
    }

    [Fact]
    public void Product_Need_LastsUntilTheVisitAfterTheNextWithItsUncertainty()
    {
        var product = Assert.Single(Of(new SystemAhead { Drums = [Drum] }).Products);

        // Every 14 days: to last 28 days more, 42 from the reading. 42 × 1 − 20 = 22 L; k = 2: 2 √((42 × 0.1)² + 1²) = 8.63 L.
        Assert.Equal((Day.AddDays(28), 6.0, 60.0), (product.LastsUntil, product.StockL, product.CapacityL!.Value));
        Assert.Equal(8.63, product.UncertaintyL, 0.01);
        Assert.Equal(22 + 8.63, product.SuggestedL, 0.01);
    }

    [Fact]
    public void Product_EnoughThere_IsNone() => Assert.Equal(0, Assert.Single(Of(new SystemAhead { Drums = [Drum with { StockL = 90 }] }).Products).SuggestedL);

    [Fact]
    public void Product_PlantOutOfSeason_IsLeftOut() =>
        Assert.Empty(PackList.Of(Firm, "RYA", Day, [new PackStop("YAF-1", 14, [(Tower with { Operation = new Operation { Seasons = [new Season { From = "05-01", To = "09-30" }] } }, new SystemAhead { Drums = [Drum] })])]).Products);

    [Fact]
    public void Instruments_OfThePerson_AreDueFromTheThresholdOn()
    {
        var ahead = new SystemAhead { Instruments = [new("RYA", "HM-1"), new("RYA", "HM-2"), new("RYA", "HM-9"), new("PUM", "HM-3")] };

        Assert.Equal(
            [("HM-1", Day.AddDays(-10), false), ("HM-2", Day.AddDays(-35), true), ("HM-9", (DateOnly?)null, true)],
            Of(ahead).Instruments.Select(instrument => (instrument.Instrument, instrument.LastCheck, instrument.IsDue)));
    }

    [Fact]
    public void NeverTogether_AcidAndOxidiserInOneVan_AreNamedOnce()
    {
        var list = Of(new SystemAhead { Drums = [Drum, Drum with { Drum = "D-A", Product = "A-38" }, Drum with { Drum = "D-H", Product = "H-12" }] });

        Assert.Equal([("A-38", "H-12")], list.NeverTogether(Firm).Select(pair => (pair.First.Code, pair.Second.Code)));
        Assert.Empty(Of(new SystemAhead { Drums = [Drum with { Drum = "D-A", Product = "A-38" }, Drum with { Drum = "D-H", Product = "H-12", StockL = 200 }] }).NeverTogether(Firm));
    }

    private static PackList Of(SystemAhead ahead) => PackList.Of(Firm, "RYA", Day, [new PackStop("YAF-1", 14, [(Tower, ahead)])]);

    private static DutyAhead Duty(string test, DateOnly last) => new("R-" + test, "Rule", null, DutyKind.Interval, last.AddDays(-30), last) { Test = test };

    private static InstrumentCheck Check(DateOnly day) => new() { At = Moment.OfUtc(day.ToDateTime(new TimeOnly(8, 0), DateTimeKind.Utc)), Standard = 1413, Read = 1410, Unit = "uS/cm" };
}
