using System.Globalization;
using LogBook.Application.RecordPacks;
using LogBook.Application.Summaries;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Summaries;
using LogBook.Domain.Visits;

namespace LogBook.Application.Tests.RecordPacks;

[Trait("goal", "record-pack")]
public sealed class PlanTableTests
{
    [Fact]
    public void Of_DrumRefilledWithAnotherProduct_NamesTheOneOfItsTime()
    {
        var rows = RowsOf(Language.English);

        // The first version of the drum held P-40 until 2024; N-15 since then, and N-20 from July of the period on.
        var name = rows.Single(row => row.Name.StartsWith("Drum D-B1", StringComparison.Ordinal)).Name;
        Assert.StartsWith("Drum D-B1, Biocide N-15 → Biocide N-20 (", name, StringComparison.Ordinal);
        Assert.Contains("2025", name, StringComparison.Ordinal);
        Assert.DoesNotContain("P-40", name, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EverySetting_StandsWithUnitAndInWords()
    {
        var rows = RowsOf(Language.Spanish).ToDictionary(row => row.Name, row => row.Value.Replace('\u00a0', ' '));

        var dose = rows.Single(row => row.Key.StartsWith("Bidón D-B1", StringComparison.Ordinal)).Value;
        Assert.All(
            [
                "modo de dosificación: Según plan de dosis", "semanas: 1, 3", "días: mar, vie", "horas de inicio: 21:30", "19 min", "60 min", "1150 µS/cm", "240 min",
                "inhibidor durante una dosis de biocida: Espera", "dosificación más larga permitida: 30 min", "espera a: inhibitor",
            ],
            words => Assert.Contains(words, dose, StringComparison.Ordinal));
        var acid = rows.Single(row => row.Key.StartsWith("Bidón D-AC", StringComparison.Ordinal)).Value;
        Assert.Contains("Dosificar baja la lectura", acid, StringComparison.Ordinal);

        // Its output is that of the only pump on the drum.
        Assert.Contains(rows.Keys, key => key.EndsWith(", acid", StringComparison.Ordinal));
        Assert.Contains("A mano", rows.Single(row => row.Key.StartsWith("Bidón D-HAND", StringComparison.Ordinal)).Value, StringComparison.Ordinal);
        Assert.Equal("Abre en la consigna, cierra por debajo", rows["la purga actúa"]);
        Assert.Equal("2500 µS/cm", rows["valor a 20 mA"]);
        Assert.Equal("140 min", rows["purga más larga permitida"]);
    }

    [Theory]
    [InlineData("2025-03-03", "Biocide N-15")]
    [InlineData("2025-08-04", "Biocide N-20")]
    public void Deliveries_ProductNotWrittenDown_IsThatOfItsDay(string day, string product)
    {
        var arrived = DateTime.SpecifyKind(DateTime.Parse(day + "T09:00:00", CultureInfo.InvariantCulture), DateTimeKind.Utc);
        var visit = new Visit
        {
            Id = Guid.CreateVersion7(), Site = "YAF-1", Technician = "RYA", Arrived = Moment.OfUtc(arrived), Left = Moment.OfUtc(arrived.AddHours(1)),
            Systems = [new VisitedSystem { System = "CT-1", Drums = [new DrumReading { Drum = "D-B1", AddedL = 20 }] }],
        };
        var pack = Pack([visit]);

        var row = Assert.Single(StockTables.Deliveries(new RecordWords(pack, Language.English)).Rows);
        var summary = SummaryBuilder.Build(new SummarySource("Quernwath Cooling Water Services", pack.Firm, visit, [], []), Language.English);

        Assert.Equal(product, row.Cells[3]);
        Assert.Contains(SummaryPlainText.Render(summary).Split('\n'), line => line.Contains($"{product}: 20", StringComparison.Ordinal));
    }

    private static IReadOnlyList<(string Name, string Value)> RowsOf(Language language) =>
        [.. PlanTable.Of(new RecordWords(Pack([]), language)).Rows.Select(row => ((string)row.Cells[2]!, (string)row.Cells[3]!))];

    private static RecordPack Pack(IReadOnlyList<Visit> visits)
    {
        Drum Drum(string code, string product, DateOnly? from = null) => new() { Code = code, Product = product, Shape = DrumShape.ByWeight, From = from };
        var system = new WaterSystem
        {
            Site = "YAF-1", Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating,
            Drums = [Drum("D-B1", "P-40"), Drum("D-B1", "N-20", new DateOnly(2025, 7, 1)), Drum("D-B1", "N-15", new DateOnly(2024, 5, 1)), Drum("D-AC", "A-38"), Drum("D-HAND", "P-40")],
            Pumps = [new Pump { Code = "P-B1", Drum = "D-B1", Output = "biocide-1" }, new Pump { Code = "P-AC", Drum = "D-AC", Output = "acid" }],
            Programmes =
            [
                new Programme
                {
                    From = new DateOnly(2023, 1, 2), SetPointUsPerCm = 1232, BleedActs = BleedActs.OnRise, LongestBleedMin = 140, MaRange = new MaRange { At4Ma = 0, At20Ma = 2500, Unit = "uS/cm" },
                    Feeds =
                    [
                        new Feed
                        {
                            Drum = "D-B1", Output = "biocide-1", Mode = FeedMode.DosePlan, Weeks = [1, 3], Days = [Weekday.Tuesday, Weekday.Friday], Starts = ["21:30"], RunMinutes = 19, LongestFeedMin = 30,
                            BleedDownFirst = new BleedDown { Minutes = 60, ToUsPerCm = 1150 }, HoldBleedShutMin = 240, InhibitorMeanwhile = InhibitorMeanwhile.Waits, WaitsFor = ["inhibitor"],
                        },
                        new Feed { Drum = "D-AC", Mode = FeedMode.ByPh, SetPoint = 8.2, Differential = 0.1, Unit = "[pH]", Direction = FeedDirection.Down },
                        new Feed { Drum = "D-HAND", Mode = FeedMode.ByHand },
                    ],
                },
            ],
        };
        Product Named(string code, string name, ProductKind kind) => new() { Code = code, Name = name, Kind = kind };
        var firm = new FirmSetUp(new ExchangeDocument
        {
            Format = "logbook-exchange",
            Version = 1,
            Sites = [new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London" }],
            Products = [Named("P-40", "Inhibitor P-40", ProductKind.Inhibitor), Named("N-15", "Biocide N-15", ProductKind.Biocide), Named("N-20", "Biocide N-20", ProductKind.Biocide), Named("A-38", "Acid A-38", ProductKind.Acid)],
            Systems = [system],
        });
        return new RecordPack
        {
            FirmName = "Quernwath Cooling Water Services", Site = firm.Sites["YAF-1"], CustomerName = "Yaffleford College", From = new DateOnly(2025, 1, 1), To = new DateOnly(2025, 12, 31), JudgedOn = new DateOnly(2025, 12, 31),
            MadeAt = new DateTime(2026, 1, 2, 8, 0, 0, DateTimeKind.Utc), MadeBy = "I. Wendle", Zone = TimeZoneInfo.Utc, Firm = firm, Systems = [new PackSystem(SystemHistory.From(firm, "YAF-1", "CT-1", visits), [])],
            Visits = [.. visits.Select(visit => new PackVisit(visit, [], null, null, null, null, null, visit.Arrived.Utc))], Promises = [], Photos = [], TellsVersions = true,
        };
    }
}
