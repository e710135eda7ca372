using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Findings;

/// <summary>Water that attacks metal: a coupon above its band, a high pH on new galvanised steel, or an index alone.</summary>
/// <remarks>
/// The format does not tell how long a coupon hung. Two results of one metal within 30 days of each other cannot both have hung 30 days, so
/// such a result stays "watch".
/// </remarks>
public sealed class Corrosive : IFindingRule
{
    private const double CouponUncertaintyShare = 0.1;

    private static readonly Text SaysCoupon = new(
        "{0} is {1} (limits {2} and {3}, {4}).", "{0} es {1} (límites {2} y {3}, {4}).", "{0} é {1} (limites {2} e {3}, {4}).");

    private static readonly Text SaysGalvanised = new(
        "pH is {0} on galvanised steel in use since {1}; in its first {2} weeks the limit is {3} ({4}).",
        "El pH es {0} sobre acero galvanizado en uso desde {1}; en sus primeras {2} semanas el límite es {3} ({4}).",
        "O pH é {0} sobre aço galvanizado em uso desde {1}; nas primeiras {2} semanas o limite é {3} ({4}).");

    private static readonly Text SaysIndex = new(
        "The Langelier index is {0}: the water would rather dissolve than deposit (limit {1}, {2}). An index alone proves no attack.",
        "El índice de Langelier es {0}: el agua tiende a disolver más que a depositar (límite {1}, {2}). Un índice solo no prueba ataque.",
        "O índice de Langelier é {0}: a água tende mais a dissolver que a depositar (limite {1}, {2}). Um índice sozinho não prova ataque.");

    private static readonly Text Rate = new("corrosion rate of the coupon", "velocidad de corrosión del cupón", "taxa de corrosão do cupom");
    private static readonly Text PhOf = new("pH of the tower water", "pH del agua de la torre", "pH da água da torre");
    private static readonly Text Index = new("Langelier index", "índice de Langelier", "índice de Langelier");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.ResidualLow, "too little inhibitor", "poco inhibidor", "inibidor de menos"),
        Looks.Cause(FindingKinds.RangeOut, "pH or oxidant out of range", "pH u oxidante fuera de rango", "pH ou oxidante fora da faixa"),
        Looks.Cause("laboratory", "exposure too short, or a rack without flow", "exposición corta o soporte sin caudal", "exposição curta ou suporte sem vazão"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Check exposure and flow of the coupon rack.", "Compruebe exposición y caudal del soporte de cupones.", "Verifique exposição e vazão do suporte de cupons."),
        Looks.Say("Check inhibitor, pH and oxidant since the coupon was hung.", "Revise inhibidor, pH y oxidante desde que se colgó el cupón.", "Verifique inibidor, pH e oxidante desde que o cupom foi pendurado."),
        Looks.Say("Look for pits, not only at the mean.", "Busque picaduras, no solo la media.", "Procure pites, não só a média."),
    ];

    private static readonly Said[] GalvanisedNext =
    [
        Looks.Say("Keep pH below the limit until the zinc has aged; look for white deposit.", "Mantenga el pH bajo el límite hasta que el zinc envejezca; busque depósito blanco.", "Mantenha o pH abaixo do limite até o zinco envelhecer; procure depósito branco."),
        Looks.Say("Ask the tower's maker for its passivation advice.", "Pida al fabricante de la torre su consejo de pasivación.", "Peça ao fabricante da torre a orientação de passivação."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.Corrosive;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (Newest(visit, TestCodes.CorrosionSteel) is { Result: { } steel, At: { } ofSteel })
        {
            yield return Coupon(visit, ofSteel, steel, TestCodes.CorrosionSteel, (thresholds.CouponSteelPlan, thresholds.CouponSteelAct), thresholds);
        }

        if (Newest(visit, TestCodes.CorrosionCopper) is { Result: { } copper, At: { } ofCopper })
        {
            yield return Coupon(visit, ofCopper, copper, TestCodes.CorrosionCopper, (thresholds.CouponCopperPlan, thresholds.CouponCopperAct), thresholds);
        }

        if (NewGalvanised(visit, thresholds) is { } since && visit.TowerReading(TestCodes.Ph) is { } ph)
        {
            var about = visit.History.Subjects.Test(TestCodes.Ph);
            yield return ph.Value.Value > thresholds.NewGalvanisedPh.Value
                ? Verdict.Found(about, ShownGalvanised(visit, ph.Value, since, thresholds))
                : Verdict.Clear(about);
        }

        if (visit.Unsettled is null && WaterIndex.Langelier(visit) is { HasValue: true, Value: var index })
        {
            yield return index.High < thresholds.LangelierLow.Value
                ? Verdict.Found(null, new Indication(Severity.Watch, new Said(SaysIndex, index, new Amount(thresholds.LangelierLow.Value, "1"), thresholds.LangelierLow.Basis))
                {
                    Evidence = [EvidenceFigure.Of(Index, index, limitLow: thresholds.LangelierLow.Value)],
                    Suggests = Causes,
                    LookAtNext = Next,
                })
                : Verdict.Clear();
        }
    }

    // A laboratory's result comes weeks after its visit: the newest known counts.
    private static (VisitFacts? At, TestResult? Result) Newest(VisitFacts visit, string test)
    {
        const int reach = 12;
        (VisitFacts? At, TestResult? Result) newest = default;
        for (var at = visit.LatestWith(test); at is not null && visit.Place - at.Place < reach; at = at.PreviousWith(test))
        {
            var tests = at.Tests;
            for (var i = 0; i < tests.Count; i++)
            {
                if (tests[i].Reading.Test == test && (newest.Result is null || tests[i].TakenAt > newest.Result.TakenAt))
                {
                    newest = (at, tests[i]);
                }
            }
        }

        return newest;
    }

    private static Verdict Coupon(VisitFacts visit, VisitFacts at, TestResult result, string test, (Threshold Plan, Threshold Act) limits, FindingThresholds thresholds)
    {
        var about = visit.History.Subjects.Test(test);
        var rate = result.Value.Value;
        if (result.Reading.Qualifier == "<" || rate <= limits.Plan.Value)
        {
            return Verdict.Clear(about);
        }

        var hung = at.Back().Skip(1).SelectMany(v => v.Tests).Where(t => t.Reading.Test == test).Select(t => (result.TakenAt - t.TakenAt).TotalDays).Where(days => days > 0).DefaultIfEmpty(double.MaxValue).Min();
        var severity = hung < thresholds.CouponDays.Value ? Severity.Watch : rate > limits.Act.Value ? Severity.Act : Severity.Plan;
        var estimate = new Estimate(rate, result.Value.Unit, CouponUncertaintyShare * rate);
        var known = result.Reading.ResultAt is { } came && came.Utc > at.Visit.KnownFrom ? came.Utc : at.Visit.KnownFrom;
        return Verdict.Found(
            about,
            new Indication(severity, new Said(SaysCoupon, TestTexts.NameOf(test), estimate, new Amount(limits.Plan.Value, result.Value.Unit), new Amount(limits.Act.Value, result.Value.Unit), limits.Plan.Basis))
            {
                Evidence = [EvidenceFigure.Of(Rate, estimate, limitHigh: limits.Plan.Value)],
                Suggests = Causes,
                LookAtNext = Next,
            },
            visit.History.DayOf(known),
            at.Visit.Visit.Id);
    }

    private static DateOnly? NewGalvanised(VisitFacts visit, FindingThresholds thresholds) =>
        visit.History.System.NewGalvanisedFrom is { } since && since <= visit.Day && visit.Day <= since.AddDays((int)(7 * thresholds.NewGalvanisedWeeks.Value))
        && (visit.History.System.Metals.Count == 0 || visit.History.System.Metals.Contains(Metal.Galvanised))
            ? since
            : null;

    private static Indication ShownGalvanised(VisitFacts visit, Estimate ph, DateOnly since, FindingThresholds thresholds)
    {
        var limit = thresholds.NewGalvanisedPh;
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            NewGalvanised(earlier, thresholds) is not null && earlier.TowerReading(TestCodes.Ph) is { } before ? before.Value.Value > limit.Value : null);
        return new Indication(
            confirmed || ph.Low > limit.Value ? Severity.Plan : Severity.Watch,
            new Said(SaysGalvanised, ph, since, thresholds.NewGalvanisedWeeks.Value, limit.Value, limit.Basis))
        {
            Evidence = [EvidenceFigure.Of(PhOf, ph, limitHigh: limit.Value)],
            Suggests = Causes,
            LookAtNext = GalvanisedNext,
        };
    }
}
