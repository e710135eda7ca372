using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>The make-up water is another than usual: its source, or a softener that passes hardness.</summary>
/// <remarks>
/// Cycles and set point rest on the make-up, so this leads over what it explains. One reading may come from the wrong tap or a softener
/// just regenerated: it takes a second visit, or a second witness on the same visit. Conductivity alone, with ions that did not move,
/// speaks of the hand meter rather than of the water.
/// </remarks>
public sealed class MakeUpChanged : IFindingRule
{
    private const int RawReach = 12;
    private const double WellBeyond = 1.5;

    private static readonly Text Says = new(
        "{0} of the make-up is {1}, on this system usually {2} (limit {3} and three times its own spread, {4}). Cycles and set point rest on it: work them out anew once it is confirmed.",
        "{0} de la reposición es {1}, en este sistema suele ser {2} (límite {3} y tres veces su propia dispersión, {4}). Los ciclos y la consigna se apoyan en ello: recalcúlelos una vez confirmado.",
        "{0} da reposição é {1}, neste sistema costuma ser {2} (limite {3} e três vezes a própria dispersão, {4}). Os ciclos e o ponto de ajuste se apoiam nisso: recalcule-os quando confirmado.");

    private static readonly Text SaysSoftener = new(
        "{0} behind the softener is {1}, on this system usually {2} (limit {3} over it, {4}): the softener passes hardness.",
        "{0} tras el ablandador es {1}, en este sistema suele ser {2} (límite {3} por encima, {4}): el ablandador deja pasar dureza.",
        "{0} depois do abrandador é {1}, neste sistema costuma ser {2} (limite {3} acima, {4}): o abrandador deixa passar dureza.");

    private static readonly Text OfRaw = new("hardness passed by the softener", "dureza que deja pasar el ablandador", "dureza que passa pelo abrandador");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause("reading", "wrong tap, or a reading slipped", "grifo equivocado o una lectura errónea", "torneira errada ou uma leitura errada"),
        Looks.Cause(FindingKinds.MakeUpChanged, "the supplier changed source or blend", "el suministrador cambió de fuente o mezcla", "o fornecedor mudou de fonte ou mistura"),
        Looks.Cause("season", "the supply's usual swing over the year", "la variación habitual del suministro en el año", "a variação usual do fornecimento no ano"),
    ];

    private static readonly (string, Said)[] SoftenerCauses =
    [
        Looks.Cause(FindingKinds.MakeUpChanged, "salt is used up or regeneration does not run", "se acabó la sal o no se regenera", "o sal acabou ou não regenera"),
        Looks.Cause(FindingKinds.MakeUpChanged, "the by-pass of the softener is open", "el desvío del ablandador está abierto", "o desvio do abrandador está aberto"),
        Looks.Reading,
    ];

    private static readonly Said[] Next = [Looks.TestMakeUp, Looks.Say("Ask the site and the supplier about the water.", "Pregunte al sitio y al suministrador por el agua.", "Pergunte ao local e ao fornecedor sobre a água.")];

    private static readonly Said[] SoftenerNext =
    [
        Looks.Say("Test hardness before and behind the softener.", "Analice la dureza antes y después del ablandador.", "Teste a dureza antes e depois do abrandador."),
        Looks.Say("Look at salt, by-pass and the time of the last regeneration.", "Mire la sal, el desvío y la última regeneración.", "Veja o sal, o desvio e a última regeneração."),
        Looks.Say("Until it works again the cycles must be lower than the programme asks.", "Hasta que funcione, los ciclos deben ser menores que los del programa.", "Até voltar a funcionar, os ciclos devem ser menores que os do programa."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.MakeUpChanged;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        var compared = Compared(visit);
        if (compared.Count == 0)
        {
            if (MakeUpNormal.Tests.Any(test => visit.MakeUpReading(test) is not null))
            {
                yield return Verdict.NotJudged(null, VisitReasons.NoBaseline);
            }

            yield break;
        }

        var shifts = Shifts(compared, thresholds);
        yield return shifts.Count == 0 ? Verdict.Clear() : Verdict.Found(null, Shown(visit, shifts, compared, thresholds));
    }

    private static List<MakeUpShift> Compared(VisitFacts visit)
    {
        var compared = new List<MakeUpShift>(MakeUpNormal.Tests.Count);
        for (var i = 0; i < MakeUpNormal.Tests.Count; i++)
        {
            if (visit.MakeUpNormal.ShiftOf(visit, MakeUpNormal.Tests[i]) is { } shift)
            {
                compared.Add(shift);
            }
        }

        return compared;
    }

    private static List<MakeUpShift> Shifts(IEnumerable<MakeUpShift> compared, FindingThresholds thresholds) =>
        [.. compared.Where(shift => ExcessOf(shift, thresholds) > 1).OrderByDescending(shift => shift.IsSoftenedHardness).ThenByDescending(shift => Math.Abs(shift.Sigmas))];

    // How many times the limits a shift is; both limits must be passed, so the lesser counts. Fewer than twelve readings hide a season: twice as much is asked.
    private static double ExcessOf(MakeUpShift shift, FindingThresholds thresholds)
    {
        if (shift.IsSoftenedHardness)
        {
            var over = shift.Now.Value - shift.Normal;
            return Math.Min(over / thresholds.SoftenedHardness.Value, over / (2 * shift.Now.StandardUncertainty)) + 1e-9;
        }

        return Math.Min(Math.Abs(shift.Percent) / LimitOf(shift, thresholds), Math.Abs(shift.Sigmas) / thresholds.MakeUpSigmas.Value);
    }

    private static double LimitOf(MakeUpShift shift, FindingThresholds thresholds) => thresholds.MakeUpPercent.Value * (shift.IsFull ? 1 : 2);

    // A single ion just past its limit twice is a reagent or a season as often as another water: it must be well beyond, or another test must have moved along.
    private static bool? HasEvidence(VisitFacts visit, MakeUpShift now, List<MakeUpShift> compared, FindingThresholds thresholds)
    {
        if (visit.MakeUpNormal.ShiftOf(visit, now.Test) is not { } then)
        {
            return null;
        }

        var least = now.IsSoftenedHardness || IsSupported(now, compared, thresholds) ? 1 : WellBeyond;
        return ExcessOf(then, thresholds) > least && ExcessOf(now, thresholds) > least && Math.Sign(then.Sigmas) == Math.Sign(now.Sigmas);
    }

    // Tests that moved along bear a shift out where all of them together, each weighed by its spread, still say that it is past the limit.
    private static bool IsSupported(MakeUpShift shift, List<MakeUpShift> compared, FindingThresholds thresholds)
    {
        var along = compared.Where(other => other.Test != shift.Test && other.Percent / shift.Percent > 0.5 && Math.Abs(other.Sigmas) > 2).ToList();
        var weights = along.Append(shift).Select(moved => (moved.Percent, Weight: Math.Pow(moved.Normal / moved.Spread, 2))).ToList();
        return along.Count > 0 && Math.Abs(weights.Sum(w => w.Percent * w.Weight) / weights.Sum(w => w.Weight)) > LimitOf(shift, thresholds);
    }

    // Conductivity is the sum of the ions: where ions were tested and none moved along, it stands alone.
    private static bool StandsAlone(MakeUpShift shift, List<MakeUpShift> compared)
    {
        var ions = compared.Where(other => other.Test != TestCodes.Conductivity).ToList();
        return shift.Test == TestCodes.Conductivity && ions.Count > 0 && !ions.Exists(ion => ion.Percent / shift.Percent > 0.5);
    }

    private static bool TowerAgrees(VisitFacts visit, MakeUpShift shift)
    {
        if (shift.Test == TestCodes.Conductivity || visit.TowerReading(shift.Test) is not { IsCensored: false, Value: { } now })
        {
            return false;
        }

        var before = visit.Back().Skip(1).Select(v => v.TowerReading(shift.Test)?.Value.Value).Where(value => value is not null).Take(5).Select(value => value!.Value).ToList();
        if (before.Count < 3)
        {
            return false;
        }

        var moved = now.Value - Statistics.Median(before);
        return Math.Sign(moved) == Math.Sign(shift.Now.Value - shift.Normal) && Math.Abs(moved) > now.ExpandedUncertainty && Math.Abs(moved) > 0.15 * Statistics.Median(before);
    }

    private static Indication Shown(VisitFacts visit, List<MakeUpShift> shifts, List<MakeUpShift> compared, FindingThresholds thresholds)
    {
        var lead = shifts[0];
        var confirmed = shifts.Exists(shift => !StandsAlone(shift, compared)
            && (Confirm.ByEarlierVisit(visit, earlier => HasEvidence(earlier, shift, compared, thresholds))
                || (ExcessOf(shift, thresholds) >= 2 && (shifts.Count > 1 || TowerAgrees(visit, shift)))));
        var severity = confirmed ? Severity.Plan : Severity.Watch;
        var evidence = shifts.Select(shift => EvidenceOf(shift, thresholds)).ToList();
        if (lead.IsSoftenedHardness)
        {
            if (PassedOfRaw(visit, lead) is { } passed)
            {
                evidence.Add(EvidenceFigure.Of(OfRaw, passed, limitHigh: thresholds.SoftenerPassesPercent.Value));
                severity = passed.Value > thresholds.SoftenerPassesPercent.Value ? Severity.Act : severity;
            }

            return new Indication(severity, new Said(SaysSoftener, TestTexts.NameOf(lead.Test), lead.Now, new Amount(lead.Normal, "mg/L"), new Amount(thresholds.SoftenedHardness.Value, "mg/L"), thresholds.SoftenedHardness.Basis))
            {
                Evidence = evidence,
                Suggests = SoftenerCauses,
                LookAtNext = SoftenerNext,
            };
        }

        var limit = thresholds.MakeUpPercent.Value * (lead.IsFull ? 1 : 2);
        return new Indication(severity, new Said(Says, TestTexts.NameOf(lead.Test), lead.Now, new Amount(lead.Normal, lead.Now.Unit), new Amount(limit, "%"), thresholds.MakeUpPercent.Basis))
        {
            Evidence = evidence,
            Suggests = Causes,
            LookAtNext = Next,
        };
    }

    private static EvidenceFigure EvidenceOf(MakeUpShift shift, FindingThresholds thresholds)
    {
        var name = TestTexts.NameOf(shift.Test);
        var what = new Text(
            $"{name.In(Language.English)}, {TestTexts.NameOfPoint(SamplePoints.MakeUp).In(Language.English)}",
            $"{name.In(Language.Spanish)}, {TestTexts.NameOfPoint(SamplePoints.MakeUp).In(Language.Spanish)}",
            $"{name.In(Language.Portuguese)}, {TestTexts.NameOfPoint(SamplePoints.MakeUp).In(Language.Portuguese)}");
        var reach = shift.IsSoftenedHardness
            ? thresholds.SoftenedHardness.Value
            : Math.Max(thresholds.MakeUpPercent.Value * (shift.IsFull ? 1 : 2) / 100 * shift.Normal, thresholds.MakeUpSigmas.Value * shift.Spread);
        return EvidenceFigure.Of(what, shift.Now, shift.IsSoftenedHardness ? null : shift.Normal - reach, shift.Normal + reach);
    }

    private static Estimate? PassedOfRaw(VisitFacts visit, MakeUpShift shift)
    {
        var raw = visit.Back().Take(RawReach)
            .SelectMany(v => v.Tests)
            .FirstOrDefault(t => t.Reading.Test == shift.Test && t.Reading.At.Equals(SamplePoints.Raw, StringComparison.OrdinalIgnoreCase) && t.Reading.Phase != ReadingPhase.Left && t.Value.Value > 0);
        return raw is null ? null : shift.Now.Over(raw.Value).Scaled(100, "%");
    }
}
