using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Residual of a product outside the programme's range.</summary>
/// <remarks>
/// Outside by more than the expanded uncertainty, or outside at two visits. Not judged in a settling system, and a biocide's
/// residual not within two hours of the start of its planned dose.
/// </remarks>
public abstract class ResidualOff : IFindingRule
{
    private static readonly Text Says = new(
        "{0} is {1}; the programme asks for {2} to {3}.", "{0}: {1}; el programa pide de {2} a {3}.", "{0}: {1}; o programa pede de {2} a {3}.");

    private static readonly Text SaysLow = new(
        "{0} is {1}; the programme asks for at least {2}.", "{0}: {1}; el programa pide al menos {2}.", "{0}: {1}; o programa pede ao menos {2}.");

    private static readonly Text SaysHigh = new(
        "{0} is {1}; the programme asks for at most {2}.", "{0}: {1}; el programa pide como máximo {2}.", "{0}: {1}; o programa pede no máximo {2}.");

    private static readonly Text Result = new("residual in the tower water", "residual en el agua de la torre", "residual na água da torre");

    private protected ResidualOff()
    {
    }

    /// <inheritdoc />
    public abstract string Kind { get; }

    /// <summary>1 for too high, −1 for too low.</summary>
    private protected abstract int Side { get; }

    /// <summary>Causes, likeliest first.</summary>
    private protected abstract IReadOnlyList<(string Cause, Said Words)> Causes { get; }

    /// <summary>What to look at next.</summary>
    private protected abstract IReadOnlyList<Said> Next { get; }

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var test in visit.TowerTests.Residuals)
        {
            if (visit.TowerReading(test) is not { } result || (Side > 0 ? Residuals.RangeOf(visit, test)?.High : Residuals.RangeOf(visit, test)?.Low) is not { } limit)
            {
                continue;
            }

            var about = visit.History.Subjects.Test(test);
            if (visit.Unsettled is { } reason)
            {
                yield return Verdict.NotJudged(about, reason);
            }
            else if (JustDosed(visit, test, thresholds))
            {
                yield return Verdict.NotJudged(about, VisitReasons.DoseGovernsBleed);
            }
            else
            {
                yield return IsOutside(result, limit) ? Verdict.Found(about, Shown(visit, test, result, limit, thresholds)) : Verdict.Clear(about);
            }
        }
    }

    // "< 5" lies below a limit above 5 and says nothing about one below; "> 5" likewise.
    private bool IsOutside(TestResult result, double limit) => result.Reading.Qualifier switch
    {
        "<" => Side < 0 && result.Value.Value <= limit,
        ">" => Side > 0 && result.Value.Value >= limit,
        _ => Side > 0 ? result.Value.Value > limit : result.Value.Value < limit,
    };

    private static bool JustDosed(VisitFacts visit, string test, FindingThresholds thresholds)
    {
        foreach (var feed in visit.FeedsInForce)
        {
            if (feed.Mode == FeedMode.DosePlan
                && FeedParts.ProductInDrum(visit, feed.Drum) is { } product
                && test.Equals(product.Residual?.Test, StringComparison.OrdinalIgnoreCase)
                && visit.History.Doses.Starts(visit.Programme!, feed, visit.Visit.At.AddHours(-thresholds.SlugHours.Value), visit.Visit.At).Length > 0)
            {
                return true;
            }
        }

        return false;
    }

    private Indication Shown(VisitFacts visit, string test, TestResult result, double limit, FindingThresholds thresholds)
    {
        var value = result.Value;
        var twice = Confirm.ByEarlierVisit(visit, earlier =>
            earlier.Unsettled is null && earlier.TowerReading(test) is { } before
            && (Side > 0 ? Residuals.RangeOf(earlier, test)?.High : Residuals.RangeOf(earlier, test)?.Low) is { } then
                ? IsOutside(before, then)
                : null);
        var act = Side > 0 ? value.Value > thresholds.ResidualActHigh.Value * limit : value.Value < thresholds.ResidualActLow.Value * limit;
        var severity = act ? Severity.Act : twice || Math.Abs(value.Value - limit) > value.ExpandedUncertainty ? Severity.Plan : Severity.Watch;
        var range = Residuals.RangeOf(visit, test)!.Value;
        var name = TestTexts.NameOf(test, visit.History.Firm);
        var said = (range.Low, range.High) switch
        {
            ({ } low, { } high) => new Said(Says, name, value, new Amount(low, value.Unit), new Amount(high, value.Unit)),
            ({ } low, null) => new Said(SaysLow, name, value, new Amount(low, value.Unit)),
            (_, { } high) => new Said(SaysHigh, name, value, new Amount(high, value.Unit)),
            _ => new Said(SaysLow, name, value, new Amount(limit, value.Unit)),
        };
        return new Indication(severity, said)
        {
            Evidence = [EvidenceFigure.Of(Result, value, range.Low, range.High)],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }
}
