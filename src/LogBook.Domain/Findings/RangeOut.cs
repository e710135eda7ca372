using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Any other ranged test outside its range: pH, iron, ORP, turbidity, temperature.</summary>
/// <remarks>Conductivity, residuals and counts have rules of their own.</remarks>
public sealed class RangeOut : IFindingRule
{
    private static readonly HashSet<string> OwnRules = new(StringComparer.OrdinalIgnoreCase)
    {
        TestCodes.Conductivity, TestCodes.DipSlide, TestCodes.ColonyCount, TestCodes.Legionella, TestCodes.CorrosionSteel, TestCodes.CorrosionCopper,
    };

    private static readonly Text Above = new("{0} is {1}, above {2}.", "{0}: {1}, por encima de {2}.", "{0}: {1}, acima de {2}.");
    private static readonly Text Below = new("{0} is {1}, below {2}.", "{0}: {1}, por debajo de {2}.", "{0}: {1}, abaixo de {2}.");

    private static readonly Text Acid = new(
        "pH is {0}: stop the acid at its switch, then repeat the reading.",
        "pH {0}: pare el ácido en su selector y repita la lectura.",
        "pH {0}: pare o ácido na sua chave e repita a leitura.");

    private static readonly Text Result = new("result in the tower water", "resultado en el agua de la torre", "resultado na água da torre");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Reading,
        Looks.Cause(FindingKinds.MakeUpChanged, "the make-up changed", "cambió la reposición", "a reposição mudou"),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.RangeOut;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Programme is null)
        {
            yield break;
        }

        // All that have a range and no rule of their own, and the pH in any case.
        var ranged = visit.TowerTests.Ranged;
        for (var i = 0; i <= ranged.Length; i++)
        {
            var test = i < ranged.Length ? ranged[i] : TestCodes.Ph;
            if (i < ranged.Length ? OwnRules.Contains(test) || Residuals.IsResidual(visit, test) : ranged.Contains(test, StringComparer.OrdinalIgnoreCase) && !Residuals.IsResidual(visit, test))
            {
                continue;
            }

            if (visit.TowerReading(test) is not { } result)
            {
                continue;
            }

            var about = visit.History.Subjects.Test(test);
            if (visit.Record.Running == false)
            {
                yield return Verdict.NotJudged(about, VisitReasons.Idle);
            }
            else if (AcidVerdict(visit, test, result, thresholds) is { } acid)
            {
                yield return Verdict.Found(about, acid);
            }
            else if (Residuals.RangeOf(visit, test) is { } range)
            {
                yield return IsOutside(result, range) ? Verdict.Found(about, Shown(visit, test, result, range)) : Verdict.Clear(about);
            }
            else if (test == TestCodes.Ph)
            {
                yield return Verdict.Clear(about);
            }
        }
    }

    private static bool IsOutside(TestResult result, (double? Low, double? High) range) => result.Reading.Qualifier switch
    {
        "<" => result.Value.Value <= range.Low,
        ">" => result.Value.Value >= range.High,
        _ => result.Value.Value < range.Low || result.Value.Value > range.High,
    };

    private static Indication? AcidVerdict(VisitFacts visit, string test, TestResult result, FindingThresholds thresholds)
    {
        if (test != TestCodes.Ph)
        {
            return null;
        }

        var hasAcid = visit.History.System.Drums.Any(drum => visit.History.Firm.Products.GetValueOrDefault(drum.Product)?.Kind == ProductKind.Acid);
        var limit = hasAcid ? Residuals.RangeOf(visit, test)?.Low - thresholds.PhBelowRangeWithAcid.Value : thresholds.PhLowWithoutAcid.Value;
        return result.Value.Value < limit
            ? new Indication(Severity.Act, hasAcid ? new Said(Acid, result.Value.Value) : new Said(Below, new Text("pH", "pH", "pH"), result.Value.Value, limit.Value))
            {
                Evidence = [EvidenceFigure.Of(Result, result.Value, limit)],
                Suggests = Causes,
                LookAtNext = [Looks.ReadAgain],
            }
            : null;
    }

    private static Indication Shown(VisitFacts visit, string test, TestResult result, (double? Low, double? High) range)
    {
        var value = result.Value;
        var high = value.Value > range.High;
        var limit = (high ? range.High : range.Low)!.Value;
        var twice = Confirm.ByEarlierVisit(visit, earlier =>
            earlier.Record.Running != false && earlier.TowerReading(test) is { } before && Residuals.RangeOf(earlier, test) is { } then ? IsOutside(before, then) : null);
        var name = TestTexts.NameOf(test, visit.History.Firm);
        return new Indication(
            twice || Math.Abs(value.Value - limit) > value.ExpandedUncertainty ? Severity.Plan : Severity.Watch,
            new Said(high ? Above : Below, name, new Amount(value.Value, value.Unit == "[pH]" ? "1" : value.Unit), new Amount(limit, value.Unit == "[pH]" ? "1" : value.Unit)))
        {
            Evidence = [EvidenceFigure.Of(Result, value, range.Low, range.High)],
            Suggests = Causes,
            LookAtNext = [Looks.ReadAgain],
        };
    }
}
