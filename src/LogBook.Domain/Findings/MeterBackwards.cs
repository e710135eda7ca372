using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Meters;

namespace LogBook.Domain.Findings;

/// <summary>A register that fell with no rollover, reset or replacement that explains it.</summary>
/// <remarks>A rollover is believed only if the flow it implies is possible and at most three times the usual. Asked at once; "plan" when the next visit finds it unanswered.</remarks>
public sealed class MeterBackwards : IFindingRule
{
    private static readonly Text Says = new(
        "Meter {0} fell from {1} to {2}; a rollover would mean more than {3} times the usual flow or more than the pipe carries ({4}).",
        "El contador {0} bajó de {1} a {2}; una vuelta a cero implicaría más de {3} veces el caudal usual o más de lo que lleva la tubería ({4}).",
        "O hidrômetro {0} caiu de {1} para {2}; uma virada implicaria mais de {3} vezes a vazão usual ou mais do que o tubo leva ({4}).");

    private static readonly Text Fell = new("count now against the count before", "cuenta ahora frente a la anterior", "contagem agora contra a anterior");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause("reading", "a digit misread, or painted zeros counted", "una cifra mal leída, o ceros pintados contados", "um dígito lido errado, ou zeros pintados contados"),
        Looks.Cause(FindingKinds.MeterBackwards, "the register was replaced or reset and nobody told", "se cambió o reinició el contador y nadie lo dijo", "o registrador foi trocado ou zerado e ninguém avisou"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Read the register again, with a photo.", "Lea otra vez el contador, con foto.", "Leia de novo o registrador, com foto."),
        Looks.Say("Ask whether it was replaced or reset, and with what counts.", "Pregunte si se cambió o reinició, y con qué cuentas.", "Pergunte se foi trocado ou zerado, e com que contagens."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.MeterBackwards;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var meter in visit.Meters.Where(meter => meter.Since is not null))
        {
            var about = visit.History.Subjects.Meter(meter.Meter.Code);
            if (Shown(meter, Severity.Watch, thresholds) is { } now)
            {
                yield return Verdict.Found(about, now);
            }
            else if (meter.Since!.Meter(meter.Meter.Code) is { } before && Shown(before, Severity.Plan, thresholds) is { } unanswered)
            {
                yield return Verdict.Found(about, unanswered);
            }
            else
            {
                yield return Verdict.Clear(about);
            }
        }
    }

    private static Indication? Shown(MeterFacts meter, Severity severity, FindingThresholds thresholds)
    {
        var then = meter.Since?.MeterReading(meter.Meter.Code);
        var byDial = Fallen(meter.Dial);
        if (!byDial && !Fallen(meter.Total))
        {
            return null;
        }

        var (before, now) = byDial ? (then?.Dial, meter.Reading.Dial) : (then?.After ?? then?.Total, meter.Reading.Total);
        if (before is not { } first || now is not { } last)
        {
            return null;
        }

        return new Indication(severity, new Said(Says, meter.Meter.Code, new Count(first), new Count(last), thresholds.RolloverTimesUsual.Value, thresholds.RolloverTimesUsual.Basis))
        {
            Evidence = [new EvidenceFigure(Fell, last - first, meter.Meter.Unit, LimitLow: 0)],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }

    private static bool Fallen(Outcomes.Computed<Estimate> litres) => !litres.HasValue && litres.Reasons.Any(reason => reason.Code == MeterReasons.Fell.Code);
}
