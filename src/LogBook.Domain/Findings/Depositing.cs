using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Calcium (or alkalinity, or silica) concentrates less than chloride: the difference stays in the system.</summary>
/// <remarks>
/// Calcium carbonate takes as much alkalinity as calcium, both as CaCO3 (the equation of its formation). Where alkalinity was tested, is not
/// lowered by acid and lacks less than half of what calcium does, the calcium test speaks alone: other scales take calcium only, so that it
/// is believed at the third visit.
/// </remarks>
public sealed class Depositing : IFindingRule
{
    private const int ApproachPoints = 4;
    private const double DaysApart = 6;

    // Two results just past 2u are chance once in some thousand visits, and there are thousands of visits: a headline wants more.
    private const double HeadlineUncertainties = 3;
    private const double WitnessShare = 0.5;

    private static readonly Text Says = new(
        "{0} concentrates to {1} of what the water does; on this system it is usually {2} (limit {3} of that, {4}). The rest stays in the system.",
        "{0} se concentra a {1} de lo que lo hace el agua; en este sistema suele ser {2} (límite {3} de ello, {4}). El resto queda en el sistema.",
        "{0} concentra-se a {1} do que a água o faz; neste sistema costuma ser {2} (limite {3} disso, {4}). O resto fica no sistema.");

    private static readonly Text SaysFixed = new(
        "{0} concentrates to {1} of what the water does (limit {2}, {3}). The rest stays in the system.",
        "{0} se concentra a {1} de lo que lo hace el agua (límite {2}, {3}). El resto queda en el sistema.",
        "{0} concentra-se a {1} do que a água o faz (limite {2}, {3}). O resto fica no sistema.");

    private static readonly Text Ratio = new("cycles by the scaling ion over cycles by the conservative one", "ciclos por el ion incrustante entre ciclos por el conservativo", "ciclos pelo íon incrustante sobre ciclos pelo conservativo");
    private static readonly Text Approach = new("rise of the approach temperature", "subida de la temperatura de aproximación", "subida da temperatura de aproximação");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.Scaling, "scale forms on warm surfaces", "se forma incrustación en superficies calientes", "forma-se incrustação em superfícies quentes"),
        Looks.Cause(FindingKinds.CyclesHigh, "the water is more concentrated than it should be", "el agua está más concentrada de lo debido", "a água está mais concentrada do que deveria"),
        Looks.Cause(FindingKinds.MakeUpChanged, "make-up hardness changed lately, or a reading slipped", "la dureza de la reposición cambió hace poco, o hay una lectura errónea", "a dureza da reposição mudou há pouco, ou uma leitura está errada"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Test hardness of tower and make-up again, in one go.", "Analice otra vez la dureza de torre y reposición, a la vez.", "Teste de novo a dureza da torre e da reposição, juntas."),
        Looks.Say("Look at fill and exchanger for scale; read the approach temperature.", "Busque incrustación en relleno e intercambiador; lea la temperatura de aproximación.", "Procure incrustação no enchimento e no trocador; leia a temperatura de aproximação."),
        Looks.Say("Check inhibitor level and pH.", "Compruebe el nivel de inhibidor y el pH.", "Verifique o nível de inibidor e o pH."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.Depositing;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        Reason? because = null;
        foreach (var test in DepositNormal.Ions)
        {
            if (visit.TowerReading(test) is null)
            {
                continue;
            }

            if (Lagging(visit, test, thresholds) is { } found)
            {
                yield return found.Lags ? Verdict.Found(null, Shown(visit, test, found.Ratio, thresholds)) : Verdict.Clear();

                // One sign is one finding: alkalinity and silica speak where calcium cannot.
                yield break;
            }

            because ??= DepositNormal.RatioOf(visit, test) is { HasValue: false } none ? none.Reasons[0] : VisitReasons.NoBaseline;
        }

        if (because is not null)
        {
            yield return Verdict.NotJudged(null, because);
        }
    }

    /// <summary>Whether something falls out of the water at a visit; null where it cannot be judged.</summary>
    internal static bool? IsFound(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var test in DepositNormal.Ions)
        {
            if (Lagging(visit, test, thresholds) is { } found)
            {
                return found.Lags;
            }
        }

        return null;
    }

    private static (Estimate Ratio, bool Lags)? Lagging(VisitFacts visit, string test, FindingThresholds thresholds)
    {
        // Hypochlorite raises chloride: with an oxidant only the own ratio tells. Alkalinity loses a little in every tower, and more to acid.
        var own = visit.DepositNormal.Of(test);
        if ((own is null && (test == TestCodes.Alkalinity || CyclesDisagree.FeedsOxidant(visit)))
            || (test == TestCodes.Alkalinity && DepositNormal.FeedsAcid(visit))
            || DepositNormal.RatioOf(visit, test) is not { HasValue: true, Value: var ratio })
        {
            return null;
        }

        var (limit, usual) = own is null ? (thresholds.DepositFixed.Value, Estimate.Exact(1)) : (thresholds.DepositShare.Value * own.Value, own);
        return (ratio, ratio.Value < limit && usual.Minus(ratio) is { } shortfall && shortfall.Value > shortfall.ExpandedUncertainty);
    }

    private static Indication Shown(VisitFacts visit, string test, Estimate ratio, FindingThresholds thresholds)
    {
        var own = visit.DepositNormal.Of(test);
        var usual = own?.Value ?? 1;

        // Visits close together rest on the same make-up: they are one witness.
        var apart = TimeSpan.FromDays(Math.Max(DaysApart, 2 * visit.FadingDays));
        bool? Lagged(VisitFacts earlier, VisitFacts later) => earlier.Visit.At > later.Visit.At - apart || Confirm.RestOnOneMakeUp(earlier, later, test) ? null : Lagging(earlier, test, thresholds)?.Lags;
        var shortfall = (own ?? Estimate.Exact(1)).Minus(ratio);
        var isSure = shortfall.Value > HeadlineUncertainties * shortfall.StandardUncertainty;
        var confirmed = Confirm.ByEarlierVisit(visit, earlier => Lagged(earlier, visit) is { } lagged
            ? lagged && (!(MissingAlkalinity(visit, test, shortfall) < WitnessShare) || Confirm.ByEarlierVisit(earlier, first => Lagged(first, earlier)))
            : null);
        var rise = ApproachRise(visit);
        var warms = rise is not null && rise.Value > thresholds.ApproachRise.Value && rise.Value > rise.ExpandedUncertainty;

        // A ratio this low asks for a repeated test (findings); a second sign at the same visit stands for it.
        var severity = Confirm.Severity(confirmed && isSure, ratio.Value < thresholds.DepositOnce.Value * usual && (warms || MissingAlkalinity(visit, test, shortfall) >= WitnessShare));
        var name = TestTexts.NameOf(test);
        var evidence = new List<EvidenceFigure>
        {
            EvidenceFigure.Of(Ratio, ratio, own is null ? thresholds.DepositFixed.Value : thresholds.DepositShare.Value * usual),
        };
        if (rise is not null)
        {
            evidence.Add(EvidenceFigure.Of(Approach, rise, limitHigh: thresholds.ApproachRise.Value));
            severity = severity == Severity.Plan && warms ? Severity.Act : severity;
        }

        return new Indication(
            severity,
            own is null
                ? new Said(SaysFixed, name, ratio, thresholds.DepositFixed.Value, thresholds.DepositFixed.Basis)
                : new Said(Says, name, ratio, usual, thresholds.DepositShare.Value, thresholds.DepositShare.Basis))
        {
            Evidence = evidence,
            Suggests = Causes,
            LookAtNext = Next,
        };
    }

    // Share of what calcium lacks that alkalinity lacks too; null where it cannot tell.
    private static double? MissingAlkalinity(VisitFacts visit, string test, Estimate shortfall)
    {
        if (test != TestCodes.Calcium || DepositNormal.FeedsAcid(visit) || visit.DepositNormal.Of(TestCodes.Alkalinity) is not { } usual
            || DepositNormal.RatioOf(visit, TestCodes.Alkalinity) is not { HasValue: true, Value: var ratio }
            || visit.MakeUp(TestCodes.Calcium) is not { HasValue: true, Value: var calcium } || visit.MakeUp(TestCodes.Alkalinity) is not { HasValue: true, Value: { Value: > 0 } alkalinity })
        {
            return null;
        }

        return (usual.Value - ratio.Value) * alkalinity.Value / (shortfall.Value * calcium.Value);
    }

    // Approach now against the own median of earlier visits.
    private static Estimate? ApproachRise(VisitFacts visit)
    {
        if (visit.TowerReading(TestCodes.Approach)?.Value is not { } now)
        {
            return null;
        }

        var before = new List<double>(12);
        for (var at = visit.PreviousWith(TestCodes.Approach); at is not null && before.Count < 12; at = at.PreviousWith(TestCodes.Approach))
        {
            if (at.TowerReading(TestCodes.Approach) is { } earlier)
            {
                before.Add(earlier.Value.Value);
            }
        }

        return before.Count < ApproachPoints ? null : now.Minus(Estimate.Exact(Statistics.Median(before), now.Unit));
    }
}
