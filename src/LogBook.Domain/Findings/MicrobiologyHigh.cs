using System.Runtime.CompilerServices;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Findings;

/// <summary>A count in an action band of the rule in force on the day of the sample, or above the programme's range.</summary>
/// <remarks>
/// Without a rule total counts and dip slides are judged by fixed limits; Legionella only by a rule or the programme. The band
/// decides at once. A late result is first seen on the day it came in. Never folded under another finding.
/// </remarks>
public sealed class MicrobiologyHigh : IReadsCounts
{
    private const int LongestLookBack = 12;

    private static readonly string[] Tests = [TestCodes.DipSlide, TestCodes.ColonyCount, TestCodes.Legionella];

    // In colonies per mL, for as long as the rule is held: asked for at every step.
    private static readonly ConditionalWeakTable<Rule, List<(double From, Severity Severity)>> Bands = [];

    private static readonly Text ByRule = new(
        "{0} {1}, sampled {2}: from {3} on, {4} asks for action. {5}",
        "{0} {1}, muestra del {2}: desde {3}, {4} pide actuar. {5}",
        "{0} {1}, amostra de {2}: a partir de {3}, {4} pede ação. {5}");

    private static readonly Text ByLimit = new(
        "{0} {1}, sampled {2}: the limit is {3} ({4}).", "{0} {1}, muestra del {2}: el límite es {3} ({4}).", "{0} {1}, amostra de {2}: o limite é {3} ({4}).");

    private static readonly Text OfProgramme = new("range of the programme", "rango del programa", "faixa do programa");
    private static readonly Text Count = new("count", "recuento", "contagem");
    private static readonly Text DipSlide = new("Dip slide", "Lámina de cultivo", "Lâmina de cultura");
    private static readonly Text ColonyCount = new("Colony count", "Recuento de colonias", "Contagem de colônias");
    private static readonly Text Legionella = new("Legionella", "Legionella", "Legionella");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.DoseMissed, "a biocide dose did not run or did not reach the water", "una dosis de biocida no se aplicó o no llegó al agua", "uma dose de biocida não foi aplicada ou não chegou à água"),
        Looks.Cause(FindingKinds.DoseUntreated, "the dose ran without circulation", "la dosis se aplicó sin circulación", "a dose foi aplicada sem circulação"),
        Looks.Cause("laboratory", "sample, transport or incubation", "muestra, transporte o incubación", "amostra, transporte ou incubação"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say(
            "Follow the plan of the site and the authority's table; a count is not a diagnosis.",
            "Siga el plan del sitio y la tabla de la autoridad; un recuento no es un diagnóstico.",
            "Siga o plano do local e a tabela da autoridade; uma contagem não é um diagnóstico."),
        Looks.Say("Check biocide drum, hours and dose plan.", "Compruebe bidón, horas y plan de dosis del biocida.", "Verifique bombona, horas e plano de dose do biocida."),
        Looks.LabelFirst,
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.MicrobiologyHigh;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var test in Tests)
        {
            if (Newest(visit, test) is { } newest && Judge(newest.At, newest.Result, test, thresholds) is { } verdict)
            {
                yield return verdict;
            }
        }
    }

    private static (VisitFacts At, TestResult Result)? Newest(VisitFacts visit, string test)
    {
        (VisitFacts At, TestResult Result)? newest = null;
        for (var at = visit.LatestWith(test); at is not null && visit.Place - at.Place < LongestLookBack; at = at.PreviousWith(test))
        {
            if (at.Newest(test) is { } result && (newest is not { } best || result.TakenAt > best.Result.TakenAt))
            {
                newest = (at, result);
            }
        }

        return newest;
    }

    private static Verdict? Judge(VisitFacts visit, TestResult result, string test, FindingThresholds thresholds)
    {
        var about = visit.History.Subjects.Test(test);
        var rule = RulesInForce.ForTest(visit.History, test, result.TakenAt);
        var bands = rule is null ? Fixed(test, thresholds) : Bands.GetValue(rule, BandsOf);
        if (rule is null && Range(visit, test) is { } high)
        {
            bands = [(high, Severity.Plan), .. bands.Where(band => band.Severity == Severity.Act && band.From > high)];
        }

        if (bands.Count == 0)
        {
            return null;
        }

        var lowest = LowestOf(bands);
        if (result.Reading.Qualifier == "<")
        {
            // Below a detection limit that itself lies above the lowest band: the band it belongs to is not known.
            return result.Value.Value <= lowest ? Verdict.Clear(about) : Verdict.NotJudged(about, VisitReasons.NotMeasured);
        }

        if (!(result.Value.Value >= lowest))
        {
            return Verdict.Clear(about);
        }

        var value = result.Value.Value;
        var sampled = visit.History.DayOf(result.TakenAt);
        var (from, severity) = bands.FindAll(band => value >= band.From).MaxBy(band => band.From);
        var known = visit.History.DayOf(result.Reading.ResultAt is { } at && at.Utc > visit.Visit.KnownFrom ? at.Utc : visit.Visit.KnownFrom);
        var says = rule?.Bands.Where(band => In(band.From, band.Unit) == from).Select(band => band.Says).FirstOrDefault() ?? "";
        var said = rule is not null
            ? new Said(ByRule, NameOf(test), new Amount(result.Value.Value, "[CFU]/mL"), sampled, new Amount(from, "[CFU]/mL"), rule.Name, says)
            : new Said(
                ByLimit,
                NameOf(test),
                new Amount(result.Value.Value, "[CFU]/mL"),
                sampled,
                new Amount(from, "[CFU]/mL"),
                Range(visit, test) == from ? OfProgramme : severity == Severity.Act ? thresholds.ColoniesAct.Basis : thresholds.ColoniesPlan.Basis);
        return Verdict.Found(
            about,
            new Indication(severity, said) { Evidence = [Figure(result, test, from, visit.History.Firm.Engine.Uncertainties)], Suggests = Causes, LookAtNext = Next },
            known,
            visit.Visit.Visit.Id);
    }

    private static double LowestOf(List<(double From, Severity Severity)> bands)
    {
        var lowest = bands[0].From;
        foreach (var band in bands)
        {
            lowest = Math.Min(lowest, band.From);
        }

        return lowest;
    }

    // Half a decade for a slide, a quarter for a plate: the interval is a factor, not a difference.
    private static EvidenceFigure Figure(TestResult result, string test, double limit, UncertaintyTable uncertainties)
    {
        var decades = uncertainties[test == TestCodes.DipSlide ? UncertaintyCodes.DipSlide : UncertaintyCodes.PlateCount].Value;
        var factor = Math.Pow(10, 2 * decades);
        var value = result.Value.Value;
        return new EvidenceFigure(Count, value, "[CFU]/mL", value / factor, value * factor, LimitHigh: limit);
    }

    private static List<(double From, Severity Severity)> Fixed(string test, FindingThresholds thresholds) => test == TestCodes.Legionella
        ? []
        : [(thresholds.ColoniesPlan.Value, Severity.Plan), (thresholds.ColoniesAct.Value, Severity.Act)];

    private static List<(double From, Severity Severity)> BandsOf(Rule rule)
    {
        var bands = new List<(double From, Severity Severity)>(rule.Bands.Count);
        for (var i = 0; i < rule.Bands.Count; i++)
        {
            if (In(rule.Bands[i].From, rule.Bands[i].Unit) is { } from)
            {
                bands.Add((from, rule.Bands[i].Severity));
            }
        }

        return bands;
    }

    private static double? Range(VisitFacts visit, string test) =>
        visit.Programme?.Ranges.FirstOrDefault(range => range.Test.Equals(test, StringComparison.OrdinalIgnoreCase)) is { High: { } high } range ? In(high, range.Unit) : null;

    private static double? In(double value, string unit) => Units.Convert(value, unit, "[CFU]/mL") is { HasValue: true } converted ? converted.Value : null;

    private static Text NameOf(string test) => test switch
    {
        TestCodes.DipSlide => DipSlide,
        TestCodes.ColonyCount => ColonyCount,
        _ => Legionella,
    };
}
