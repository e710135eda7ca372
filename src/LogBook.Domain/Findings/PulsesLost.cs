using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Findings;

/// <summary>Dial and controller's total of one meter part.</summary>
/// <remarks>
/// Two neighbouring digits exchanged or one digit off by one, with which both registers agree to the pulse again, is a reading written
/// wrong more likely than pulses lost by just as many: it waits for the next visit. What that one takes back was the reading.
/// </remarks>
public sealed class PulsesLost : IFindingRule
{
    private const double LeastPulses = 50;
    private const double PulsesAllowed = 2;

    // Ratios that tell a wrong unit or pulse value rather than lost pulses: decimal, US gallon, imperial gallon.
    private static readonly double[] UnitFactors = [10, 3.785, 4.546];

    private static readonly Text Says = new(
        "Meter {0}: the total counted {1} while the dial moved {2}: {3} apart (limit {4}, {5}).",
        "Contador {0}: el total contó {1} mientras la esfera avanzó {2}: {3} de diferencia (límite {4}, {5}).",
        "Hidrômetro {0}: o total contou {1} enquanto o mostrador avançou {2}: {3} de diferença (limite {4}, {5}).");

    private static readonly Text Difference = new("total against dial", "total frente a esfera", "total contra mostrador");

    private static readonly (string, Said)[] Lost =
    [
        Looks.Cause(FindingKinds.PulsesLost, "the pulse head or its cable", "el emisor de impulsos o su cable", "o emissor de pulsos ou seu cabo"),
        Looks.Cause("reading", "total reset and nobody told, or a digit misread", "total reiniciado sin aviso, o una cifra mal leída", "total zerado sem aviso, ou um dígito lido errado"),
    ];

    private static readonly (string, Said)[] Unit =
    [
        Looks.Cause(FindingKinds.SettingsChanged, "unit or pulse value set wrong", "unidad o valor de impulso mal ajustado", "unidade ou valor de pulso ajustado errado"),
        Lost[0],
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Watch both registers for ten pulses.", "Observe ambos registros durante diez impulsos.", "Observe os dois registros por dez pulsos."),
        Looks.Say("Compare the pulse value with the plate of the meter.", "Compare el valor de impulso con la placa del contador.", "Compare o valor de pulso com a placa do hidrômetro."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.PulsesLost;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var meter in visit.Meters.Where(meter => meter.Since is not null && meter.Reading is { Dial: not null, Total: not null }))
        {
            var about = visit.History.Subjects.Meter(meter.Meter.Code);
            var apart = IsApart(meter, thresholds) is { } parts ? parts && !TakesBack(meter) : (bool?)null;
            yield return apart switch
            {
                null => Verdict.NotJudged(about, (meter.Dial.HasValue ? meter.Total : meter.Dial) is { HasValue: false } unknown ? unknown.Reasons[0] : VisitReasons.NotMeasured),
                true => Verdict.Found(about, Shown(visit, meter, thresholds)),
                false => Verdict.Clear(about),
            };
        }
    }

    private static bool? IsApart(MeterFacts meter, FindingThresholds thresholds)
    {
        if (!meter.Dial.HasValue || !meter.Total.HasValue)
        {
            return null;
        }

        var (dial, total, pulse) = (meter.Dial.Value.Value, meter.Total.Value.Value, PulseLitres(meter));
        return Math.Max(dial, total) / pulse < LeastPulses
            ? null
            : Math.Abs(total - dial) > PulsesAllowed * pulse && PercentApart(dial, total) > thresholds.PulsesPercent.Value;
    }

    // Whether both registers agree again over this stretch and the one before, so that the reading between them was wrong.
    private static bool TakesBack(MeterFacts meter) =>
        meter.Since?.Meter(meter.Meter.Code) is { Dial: { HasValue: true, Value: var dial }, Total: { HasValue: true, Value: var total } }
        && Math.Abs(total.Value - dial.Value) > PulsesAllowed * PulseLitres(meter)
        && Math.Abs(total.Value + meter.Total.Value.Value - dial.Value - meter.Dial.Value.Value) <= PulsesAllowed * PulseLitres(meter);

    private static bool IsSlip(MeterFacts meter)
    {
        var (dial, total, pulse) = (meter.Dial.Value.Value, meter.Total.Value.Value, PulseLitres(meter));
        bool Agrees(double? reading, double multiplier, double litres, double other) => reading is >= 0 and var written
            && Units.ToVolume(multiplier, meter.Meter.Unit) is { HasValue: true, Value.Litres: var unit }
            && MiswrittenDigits.Of(written).Any(shown => Math.Abs(litres + ((shown - written) * unit) - other) <= PulsesAllowed * pulse);
        return Agrees(meter.Reading.Dial, meter.Meter.DialMultiplier ?? 1, dial, total) || Agrees(meter.Reading.Total, 1, total, dial);
    }

    private static double PercentApart(double dial, double total) => 100 * Math.Abs(total - dial) / Math.Max(dial, total);

    internal static double PulseLitres(MeterFacts meter) => meter.Meter.LitresPerPulse is { } litres and > 0 ? litres : meter.Meter.PulsesPerLitre is { } pulses and > 0 ? 1 / pulses : 1;

    private static Indication Shown(VisitFacts visit, MeterFacts meter, FindingThresholds thresholds)
    {
        var (dial, total) = (meter.Dial.Value.Value, meter.Total.Value.Value);
        var limit = thresholds.PulsesPercent;
        var signed = 100 * (total - dial) / Math.Max(dial, total);
        var confirmed = Confirm.ByEarlierVisit(visit, earlier => earlier.Meter(meter.Meter.Code) is { Since: not null } then ? IsApart(then, thresholds) is { } parts ? parts && !TakesBack(then) : null : null);
        var ratio = Math.Min(dial, total) > 0 ? Math.Max(dial, total) / Math.Min(dial, total) : 0;
        return new Indication(
            Confirm.Severity(confirmed, Math.Abs(signed) >= 2 * limit.Value && !IsSlip(meter)),
            new Said(Says, meter.Meter.Code, new Amount(total, "L"), new Amount(dial, "L"), new Amount(signed, "%"), new Amount(limit.Value, "%"), limit.Basis))
        {
            Evidence = [new EvidenceFigure(Difference, signed, "%", LimitLow: -limit.Value, LimitHigh: limit.Value)],
            Suggests = UnitFactors.Any(factor => Math.Abs((ratio / factor) - 1) < 0.02) ? Unit : Lost,
            LookAtNext = Next,
        };
    }
}
