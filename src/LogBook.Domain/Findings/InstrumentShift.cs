using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Findings;

/// <summary>A hand meter that shows the same offset on several sites, or reads off in a standard.</summary>
/// <remarks>
/// Each comparison is a probe's error against what that probe usually shows, cleanings and calibrations taken back. The median over
/// at least three sites and five comparisons of the last 30 days, none older than the last good check, must lie beyond the limit and
/// two standard errors, the meter's own usual uncertainty included; sites of other meters must not have moved with it.
/// A standard read off decides alone. Three truly fouled probes look alike, which is why the first advice is to prove the meter.
/// </remarks>
internal static class InstrumentShift
{
    // Comparisons from before the meter changed dilute the median: shorter stretches are tried too.
    private static readonly double[] StretchDays = [10, 14, 21, 30];

    private const double LeastAgreeing = 0.75;

    private static readonly Text Says = new(
        "Hand meter {0} reads {1} off on {2} sites ({3} comparisons, standard error {4}; limit {5}, {6}), while other meters' sites have not moved: prove it in a standard before any probe is judged by it.",
        "El medidor portátil {0} lee con {1} de desvío en {2} sitios ({3} comparaciones, error estándar {4}; límite {5}, {6}), y los sitios de otros medidores no se han movido: compruébelo en un patrón antes de juzgar sondas con él.",
        "O medidor portátil {0} lê com {1} de desvio em {2} locais ({3} comparações, erro padrão {4}; limite {5}, {6}), e os locais de outros medidores não se moveram: verifique-o em um padrão antes de julgar sondas com ele.");

    private static readonly Text SaysStandard = new(
        "Hand meter {0} read {1} in a standard of {2}: {3} off (limit {4}, {5}).",
        "El medidor portátil {0} leyó {1} en un patrón de {2}: {3} de desvío (límite {4}, {5}).",
        "O medidor portátil {0} leu {1} em um padrão de {2}: {3} de desvio (limite {4}, {5}).");

    private static readonly Text Offset = new("offset of the hand meter", "desvío del medidor portátil", "desvio do medidor portátil");
    private static readonly Text InStandard = new("reading in the standard against its value", "lectura en el patrón frente a su valor", "leitura no padrão contra seu valor");
    private static readonly Text CheckAgain = new(
        "Check probe {1} of {0} again: it was set by this meter on {2}.",
        "Revise otra vez la sonda {1} de {0}: se ajustó con este medidor el {2}.",
        "Confira de novo a sonda {1} de {0}: foi ajustada por este medidor em {2}.");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause("reading", "the hand meter reads wrong: cell dirty, constant changed, compensation set otherwise", "el medidor portátil lee mal: celda sucia, constante cambiada, otra compensación", "o medidor portátil lê errado: célula suja, constante mudada, outra compensação"),
        Looks.Cause(FindingKinds.ProbeFouled, "several probes are fouled at once", "varias sondas sucias a la vez", "várias sondas sujas ao mesmo tempo"),
    ];

    private static readonly Said SetNothing = Looks.Say(
        "Set no probe by this meter until it has read right in a standard.",
        "No ajuste ninguna sonda con este medidor hasta que lea bien en un patrón.",
        "Não ajuste nenhuma sonda por este medidor até que leia certo em um padrão.");

    // What a proved meter may be off by is no shift: its own error and its compensation now, and half of the mean of them over the three
    // or so checks that the usual error of a probe spans (see SystemSeries).
    private static double OfMeter(UncertaintyTable table) => 100 * Math.Sqrt((1 + (1 / 12.0))
        * (Math.Pow(table.Share(UncertaintyCodes.HandConductivityProved), 2) + Math.Pow(table.Share(UncertaintyCodes.CompensationNear25), 2)));

    /// <summary>Whether an instrument is looked at: conductivity meters, and codes that are not on file.</summary>
    public static bool IsJudged(Instrument? instrument) => instrument is null or { Kind: InstrumentKind.ConductivityMeter };

    /// <summary>Share by which the meter reads high, from the error of probes against it.</summary>
    /// <param name="probeErrorPercent">Display over reference minus one, %.</param>
    public static double ShareOf(double probeErrorPercent) => (1 / (1 + (probeErrorPercent / 100))) - 1;

    /// <summary>The evidence of the sites, or null when there is none.</summary>
    public static ShiftStatistic? Find(ShiftState meter, IEnumerable<Comparison> others, DateTime known, EngineSettings engine)
    {
        var (thresholds, ofMeter) = (engine.Thresholds, OfMeter(engine.Uncertainties));
        var since = meter.GoodCheck ?? DateTime.MinValue;
        foreach (var days in StretchDays.Where(d => d <= thresholds.ShiftDays.Value))
        {
            var stretch = meter.Comparisons.Where(c => c.At > known.AddDays(-days) && c.At > since && c.At <= known).ToList();
            if (stretch.Count < thresholds.ShiftComparisons.Value)
            {
                continue;
            }

            var found = ShiftStatistic.Of(stretch);
            var uncertainty = Math.Sqrt((found.StandardError * found.StandardError) + (ofMeter * ofMeter));
            if (found.Sites >= thresholds.ShiftSites.Value && Math.Abs(found.Median) > thresholds.InstrumentShiftPercent.Value && Math.Abs(found.Median) > 2 * uncertainty
                && found.Agreeing >= LeastAgreeing && found.ShownBySites(thresholds.InstrumentShiftPercent.Value, thresholds.ShiftSites.Value)
                && !Moved([.. others.Where(c => c.At > known.AddDays(-days) && c.At <= known)], found, thresholds.InstrumentShiftPercent.Value))
            {
                return found;
            }
        }

        return null;
    }

    /// <summary>Whether what serves for comparison has moved the same way: then it is not the meter or the lot.</summary>
    public static bool Moved(IReadOnlyList<Comparison> others, ShiftStatistic found, double limit)
    {
        if (others.Count < 2)
        {
            return false;
        }

        var statistic = ShiftStatistic.Of(others);
        return Math.Sign(statistic.Median) == Math.Sign(found.Median) && Math.Abs(statistic.Median) > Math.Max(limit / 2, Math.Abs(found.Median) / 2);
    }

    /// <summary>First comparison that shows the shift, within the days that count.</summary>
    public static DateTime Onset(ShiftState meter, DateTime known, double median, FindingThresholds thresholds) => meter.Comparisons
        .Where(c => c.At > known.AddDays(-thresholds.ShiftDays.Value) && c.At > (meter.GoodCheck ?? DateTime.MinValue) && c.At <= known && c.Percent * Math.Sign(median) > Math.Abs(median) / 2)
        .Select(c => (DateTime?)c.At).Min() ?? known;

    /// <summary>Moment from which the comparisons show no shift any more; null while they do or are too few.</summary>
    public static DateTime? Unmoved(ShiftState meter, DateTime known, FindingThresholds thresholds)
    {
        var stretch = meter.Comparisons.Where(c => c.At > known.AddDays(-thresholds.ShiftDays.Value) && c.At > meter.OpenedAt && c.At <= known).ToList();
        if (stretch.Count < thresholds.ShiftComparisons.Value)
        {
            return null;
        }

        var found = ShiftStatistic.Of([.. stretch.Select(c => c with { Percent = c.Change })]);
        return found.Sites >= thresholds.ShiftSites.Value && Math.Abs(found.Median) < thresholds.InstrumentShiftPercent.Value / 2 ? stretch.Min(c => c.At) : null;
    }

    public static Indication BySites(ShiftState meter, ShiftStatistic found, IReadOnlyList<(string Place, string Probe, DateOnly Day)> set, FindingThresholds thresholds)
    {
        var share = 100 * ShareOf(found.Median);
        var limit = thresholds.InstrumentShiftPercent;
        return new Indication(
            Severity.Act,
            new Said(Says, meter.Code, new Amount(share, "%"), (double)found.Sites, (double)found.Count, new Amount(found.StandardError, "%"), new Amount(limit.Value, "%"), limit.Basis))
        {
            Evidence = [new EvidenceFigure(Offset, share, "%", share - (2 * found.StandardError), share + (2 * found.StandardError), -limit.Value, limit.Value)],
            Suggests = Causes,
            LookAtNext = Next(set),
        };
    }

    public static Indication ByStandard(
        string code, InstrumentCheck check, double off, IReadOnlyList<(string Place, string Probe, DateOnly Day)> set, FindingThresholds thresholds) => new(
        Severity.Act,
        new Said(
            SaysStandard, code, new Amount(check.Read, check.Unit), new Amount(check.Standard, check.Unit), new Amount(100 * off, "%"), new Amount(thresholds.StandardPercent.Value, "%"), thresholds.StandardPercent.Basis))
    {
        Evidence = [new EvidenceFigure(InStandard, 100 * off, "%", LimitLow: -thresholds.StandardPercent.Value, LimitHigh: thresholds.StandardPercent.Value)],
        Suggests = [Causes[0]],
        LookAtNext = Next(set),
    };

    private static IReadOnlyList<Said> Next(IReadOnlyList<(string Place, string Probe, DateOnly Day)> set) =>
        [Looks.ProveMeter, SetNothing, .. set.Select(one => new Said(CheckAgain, one.Place, one.Probe, one.Day))];
}
