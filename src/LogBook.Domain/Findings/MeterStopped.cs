using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Findings;

/// <summary>A make-up register that stood still while there is proof that water went into the system.</summary>
/// <remarks>
/// Proof is bleed (hours times valve flow times target cycles is the least make-up) or the meter's other register. The plant's own
/// running alone is none: an idle week leaves the register where it was.
/// </remarks>
public sealed class MeterStopped : IFindingRule
{
    private const double LeastBleedHours = 0.5;

    private static readonly Text Says = new(
        "Meter {0} moved {1} in {2} days where at least {3} went in by the bleed (limit {4} of it, {5}).",
        "El contador {0} avanzó {1} en {2} días cuando por la purga entraron al menos {3} (límite {4} de ello, {5}).",
        "O hidrômetro {0} avançou {1} em {2} dias quando pela purga entraram ao menos {3} (limite {4} disso, {5}).");

    private static readonly Text Advance = new("water by the register", "agua según el contador", "água segundo o hidrômetro");
    private static readonly Text Share = new("register over expected", "contador entre lo esperado", "hidrômetro sobre o esperado");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.MeterStopped, "the register is stuck", "el contador está trabado", "o hidrômetro está travado"),
        Looks.Cause("load", "make-up comes by a by-pass or a second line", "la reposición entra por un desvío o una segunda línea", "a reposição entra por um desvio ou uma segunda linha"),
        Looks.Reading,
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Watch the register while the float valve is open.", "Observe el contador con la válvula de flotador abierta.", "Observe o hidrômetro com a válvula de boia aberta."),
        Looks.Say("Look for an open by-pass or a second line.", "Busque un desvío abierto o una segunda línea.", "Procure um desvio aberto ou uma segunda linha."),
        Looks.Say("Check what this meter paces: its feed stops with it.", "Compruebe qué gobierna este contador: su dosificación se para con él.", "Verifique o que este hidrômetro comanda: a dosagem para com ele."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.MeterStopped;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var meter in visit.Meters.Where(meter => meter.Meter.Measures == MeterMeasures.MakeUp && meter.Since is not null))
        {
            var about = visit.History.Subjects.Meter(meter.Meter.Code);
            if (!meter.Dial.HasValue)
            {
                yield return Verdict.NotJudged(about, meter.Dial.Reasons[0]);
            }
            else if (LeastMakeUp(visit, meter) is not { } expected)
            {
                yield return Verdict.NotJudged(about, VisitReasons.NotMeasured);
            }
            else
            {
                yield return meter.Dial.Value.Value < thresholds.MeterAdvancePercent.Value / 100 * expected.Value
                    ? Verdict.Found(about, Shown(visit, meter, expected, thresholds))
                    : Verdict.Clear(about);
            }
        }
    }

    // What the bleed took away has been concentrated to the cycles of the water: it needed that many times as much make-up.
    private static Estimate? LeastMakeUp(VisitFacts visit, MeterFacts meter)
    {
        var output = visit.BleedOutput;
        if (output is not null && visit.HoursSince(output) == meter.Since && visit.Water is { BleedHours: { HasValue: true } hours, Bleed: { HasValue: true } bleed }
            && hours.Value.Value >= LeastBleedHours && visit.Programme?.TargetCycles is { } target)
        {
            return bleed.Value.Scaled(target);
        }

        return meter.Total is { HasValue: true, Value.Value: > 0 } && meter.Reading.Total is not null ? meter.Total.Value : null;
    }

    private static Indication Shown(VisitFacts visit, MeterFacts meter, Estimate expected, FindingThresholds thresholds)
    {
        var limit = thresholds.MeterAdvancePercent;
        var advance = meter.Dial.Value;
        var share = advance.Over(expected).Scaled(100, "%");
        var paces = visit.Programme?.Feeds.Any(feed => feed.Mode == FeedMode.ByMakeUpVolume) == true;

        // Half of the limit and less is twice the evidence: a register that did not move at all decides at once.
        var sure = share.Value <= limit.Value / 2;
        var severity = !sure ? Severity.Watch : paces ? Severity.Act : Severity.Plan;
        return new Indication(
            severity,
            new Said(Says, meter.Meter.Code, new Amount(advance.Value, "L"), (visit.Visit.At - meter.Since!.Visit.At).TotalDays, new Amount(expected.Value, "L"), new Amount(limit.Value, "%"), limit.Basis))
        {
            Evidence = [EvidenceFigure.Of(Share, share, limit.Value), EvidenceFigure.Of(Advance, advance)],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }
}
