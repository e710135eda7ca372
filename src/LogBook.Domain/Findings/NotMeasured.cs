using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>A test that the programme ranges, or the reference beside a controller's display, missed on two visits running; a hand meter unproved for long.</summary>
/// <remarks>
/// Only what was measured here before counts as missed: a programme may range a test that a laboratory or a colleague does elsewhere.
/// Visits that bring no readings at all (a delivery, a result) are passed over.
/// </remarks>
public sealed class NotMeasured : IReadsCounts
{
    private const int LookBack = 12;

    private static readonly Text Missed = new(
        "{0} was not measured on the last {1} visits; the programme asks for it.",
        "{0} no se midió en las últimas {1} visitas; el programa lo pide.",
        "{0} não foi medido nas últimas {1} visitas; o programa o pede.");

    private static readonly Text Unproved = new(
        "Hand meter {0} was last read in a standard {1} days ago (limit {2} days, {3}).",
        "El medidor portátil {0} se comprobó en un patrón hace {1} días (límite {2} días, {3}).",
        "O medidor portátil {0} foi verificado em um padrão há {1} dias (limite {2} dias, {3}).");

    private static readonly Text Visits = new("visits without it", "visitas sin ello", "visitas sem ele");
    private static readonly Text Days = new("days since the last good check", "días desde la última comprobación buena", "dias desde a última verificação boa");

    /// <inheritdoc />
    public string Kind => FindingKinds.NotMeasured;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (!IsReading(visit) || visit.Record.Running == false)
        {
            yield break;
        }

        List<VisitFacts>? before = null;
        foreach (var test in visit.TowerTests.Asked)
        {
            var isThere = Has(visit, test);
            before ??= isThere ? null : Before(visit);
            var missed = isThere ? 0 : before!.FindIndex(earlier => Has(earlier, test)) is >= 0 and var last ? last + 1 : before.Count + 1;
            var about = visit.History.Subjects.Test(test);
            if (missed == 0)
            {
                yield return Verdict.Clear(about);
            }
            else if (missed >= thresholds.MissedVisits.Value && before!.Exists(earlier => Has(earlier, test)))
            {
                yield return Verdict.Found(about, new Indication(
                    missed > thresholds.MissedVisits.Value ? Severity.Plan : Severity.Watch, new Said(Missed, TestTexts.NameOf(test), (double)missed))
                {
                    Evidence = [new EvidenceFigure(Visits, missed, "1", LimitHigh: thresholds.MissedVisits.Value)],
                    LookAtNext = [Looks.Say("Measure it on the next visit, or write down why not.", "Mídalo en la próxima visita o anote por qué no.", "Meça-o na próxima visita ou anote por que não.")],
                });
            }
        }

        foreach (var meter in visit.Probes.Select(probe => probe.Instrument).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase))
        {
            if (MeterVerdict(visit, meter, thresholds) is { } verdict)
            {
                yield return verdict;
            }
        }
    }

    private static List<VisitFacts> Before(VisitFacts visit)
    {
        var before = new List<VisitFacts>(LookBack);
        var past = visit.Previous;
        for (var i = 0; i < LookBack && past is not null; i++, past = past.Previous)
        {
            if (IsReading(past) && past.Record.Running != false)
            {
                before.Add(past);
            }
        }

        return before;
    }

    private static bool IsReading(VisitFacts visit) => visit.Visit.Visit.Kind is not (VisitKind.Delivery or VisitKind.Result or VisitKind.Stopped) && visit.Record.Readings.Count > 0;

    private static bool Has(VisitFacts visit, string test)
    {
        foreach (var reading in visit.ReadingsOf(test))
        {
            if (reading.At.Equals(SamplePoints.Tower, StringComparison.OrdinalIgnoreCase)
                && (reading.NotTaken is null || reading.NotTaken == History.SystemVisit.ResultPending)
                && (test != TestCodes.Conductivity || reading.Source != ReadingSource.Controller))
            {
                return true;
            }
        }

        return false;
    }

    // A meter that nobody ever proved is a matter of the set-up, not of a visit.
    private static Verdict? MeterVerdict(VisitFacts visit, string code, FindingThresholds thresholds)
    {
        if (visit.History.Firm.LastCheck(code, visit.Visit.At) is not { } last)
        {
            return null;
        }

        var days = Math.Floor((visit.Visit.At - last).TotalDays);
        var about = visit.History.Subjects.Instrument(code);
        return days <= thresholds.MeterProvedDays.Value
            ? Verdict.Clear(about)
            : Verdict.Found(about, new Indication(
                days > 2 * thresholds.MeterProvedDays.Value ? Severity.Plan : Severity.Watch,
                new Said(Unproved, code, days, thresholds.MeterProvedDays.Value, thresholds.MeterProvedDays.Basis))
            {
                Evidence = [new EvidenceFigure(Days, days, "d", LimitHigh: thresholds.MeterProvedDays.Value)],
                LookAtNext = [Looks.ProveMeter],
            });
    }
}
