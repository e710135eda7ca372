using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Rounds;

/// <summary>
/// Several sites like that of <see cref="HistoryBuilder"/>, each visited every 14 days, one day after the other. Noise is a fixed
/// sequence, the same each time. A test changes what meters and lots read.
/// </summary>
internal sealed class RoundBuilder
{
    private const double EveryDays = 14;

    public static readonly DateTime Start = HistoryBuilder.Start;

    public IReadOnlyList<string> Sites { get; set; } = ["S-1", "S-2", "S-3", "S-4", "S-5", "S-6"];

    public int VisitsEach { get; set; } = 14;

    /// <summary>Meter used at a site.</summary>
    public Func<string, string> MeterAt { get; set; } = site => site is "S-5" or "S-6" ? "HM-1" : "HM-2";

    /// <summary>Reading of a meter over the truth on a day.</summary>
    public Func<string, double, double> MeterFactor { get; set; } = (_, _) => 1;

    /// <summary>Error of a probe on a day, as a share of the truth.</summary>
    public Func<string, double, double> ProbeError { get; set; } = (_, _) => 0;

    /// <summary>Lot used at a site on a day.</summary>
    public Func<string, double, string> LotAt { get; set; } = (_, _) => "IN-1";

    /// <summary>Result of a lot over the truth.</summary>
    public Func<string, double> LotFactor { get; set; } = _ => 1;

    /// <summary>True inhibitor at a site on a day, mg/L.</summary>
    public Func<string, double, double> Inhibitor { get; set; } = (_, _) => 100;

    /// <summary>Product used at a site over the usual.</summary>
    public Func<string, double> UseFactor { get; set; } = _ => 1;

    public Func<string, IReadOnlyList<InstrumentCheck>> Checks { get; set; } = _ => [];

    public Func<Visit, Visit> Change { get; set; } = visit => visit;

    /// <summary>Whether the technician sets the probe to the meter when it is more than 5 % off.</summary>
    public bool SetsProbes { get; set; }

    public static double Noise(int i, double share)
    {
        // Ten values of a normal sample with mean 0 and deviation 1, in an order without trend.
        double[] z = [0.3, -1.2, 0.8, -0.4, 1.5, -0.7, 0.1, -1.6, 1.0, 0.2];
        return 1 + (share * z[i % 10]);
    }

    public static double DayOf(int site, int visit) => (visit * EveryDays) + site;

    public static InstrumentCheck Check(double day, double read) => new() { At = Moment.OfUtc(Start.AddDays(day).AddHours(-2)), Standard = 1413, Read = read, Unit = "uS/cm" };

    public FirmAssessment Assess(double? untilDay = null, IEnumerable<Visit>? visits = null) => RoundAssessment.Of(Histories(visits), AsOf(untilDay));

    public DateTime AsOf(double? untilDay = null) => Start.AddDays(untilDay ?? ((VisitsEach * EveryDays) + 1)).AddHours(3);

    public IReadOnlyList<SystemHistory> Histories(IEnumerable<Visit>? visits = null)
    {
        var firm = new FirmSetUp(Document());
        var all = (visits ?? Visits()).ToList();
        return [.. Sites.Select(site => SystemHistory.From(firm, site, "CT-1", all))];
    }

    public List<Visit> Visits()
    {
        var visits = new List<Visit>();
        for (var s = 0; s < Sites.Count; s++)
        {
            var site = Sites[s];
            var set = 1.0;
            var builder = new HistoryBuilder { InhibitorPerDayL = new HistoryBuilder().InhibitorPerDayL * UseFactor(site) };
            for (var v = 0; v < VisitsEach; v++)
            {
                var (day, n) = (DayOf(s, v), (7 * s) + (3 * v));
                var meter = MeterAt(site);
                var truth = HistoryBuilder.ConductivityAt(4.5);
                var reference = Math.Round(truth * MeterFactor(meter, day) * Noise(n, 0.01));
                var found = Math.Round(truth * (1 + ProbeError(site, day)) * set * Noise(n + 4, 0.008));
                var left = SetsProbes && Math.Abs((found / reference) - 1) > 0.05 ? reference : found;
                set *= left / found;
                var lot = LotAt(site, day);
                builder.Visit(day, record => record with
                {
                    Readings =
                    [
                        .. record.Readings.Where(r => r.Test is not (TestCodes.Inhibitor or TestCodes.Conductivity or TestCodes.Chloride)),
                        HistoryBuilder.Tower(TestCodes.Chloride, Math.Round(103.5 * Noise(n + 1, 0.02), 1), "mg/L"),
                        HistoryBuilder.MakeUp(TestCodes.Chloride, Math.Round(23 * Noise(n + 5, 0.02), 1), "mg/L"),
                        HistoryBuilder.Tower(TestCodes.Conductivity, reference, "uS/cm") with { Source = ReadingSource.Reference, Instrument = meter },
                        HistoryBuilder.MakeUp(TestCodes.Conductivity, Math.Round(300 * MeterFactor(meter, day) * Noise(n + 6, 0.01)), "uS/cm") with { Source = ReadingSource.Reference, Instrument = meter },
                        HistoryBuilder.Tower(TestCodes.Inhibitor, Math.Round(Inhibitor(site, day) * LotFactor(lot) * Noise(n + 2, 0.06)), "mg/L") with { Lot = lot },
                    ],
                    Probes = [HistoryBuilder.Probe(found, reference, left) with { Instrument = meter, Calibrated = left != found }],
                });
            }

            var number = (short)(s + 1);
            visits.AddRange(builder.Visits.Select((visit, v) => Change(visit with { Id = new Guid(v + 1, number, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 1), Site = site, Technician = number <= 4 ? "PUM" : "RYA" })));
        }

        return visits;
    }

    public static IReadOnlyList<Finding> Headlines(FirmAssessment firm, params string[] kinds) =>
    [
        .. firm.Systems.SelectMany(system => system.Findings).Select(finding => finding.In(Language.English))
            .Where(finding => kinds.Contains(finding.Kind) && finding.State == FindingState.Open && finding.Severity > Severity.Watch),
    ];

    public ExchangeDocument Document()
    {
        var one = new HistoryBuilder().Document();
        return one with
        {
            Instruments = [.. new[] { "HM-1", "HM-2" }.Select(code => new Instrument { Code = code, Kind = InstrumentKind.ConductivityMeter, Checks = Checks(code) })],
            Lots = [new ReagentLot { Code = "IN-1", Test = "inhibitor", Step = 1 }, new ReagentLot { Code = "IN-2", Test = "inhibitor", Step = 1 }, new ReagentLot { Code = "IN-3", Test = "inhibitor", Step = 1 }],
            Sites = [.. Sites.Select(code => one.Sites[0] with { Code = code, VisitEveryDays = 14 })],
            Systems = [.. Sites.Select(code => one.Systems[0] with { Site = code })],
        };
    }
}

internal static class RoundExtensions
{
    public static Finding? Round(this FirmAssessment firm, string kind) =>
        firm.Round.Findings.Select(finding => finding.In(Language.English)).LastOrDefault(finding => finding.Kind == kind);
}
