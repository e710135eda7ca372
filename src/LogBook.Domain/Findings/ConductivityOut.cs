using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Findings;

/// <summary>True conductivity of the water outside the programme's range.</summary>
/// <remarks>By a reference, or by a probe that was found within its tolerance in the last 35 days.</remarks>
public sealed class ConductivityOut : IFindingRule
{
    private static readonly Text Above = new(
        "Conductivity is {0}, above {1} ({2}).", "La conductividad es {0}, por encima de {1} ({2}).", "A condutividade é {0}, acima de {1} ({2}).");

    private static readonly Text Below = new(
        "Conductivity is {0}, below {1} ({2}).", "La conductividad es {0}, por debajo de {1} ({2}).", "A condutividade é {0}, abaixo de {1} ({2}).");

    private static readonly Text Range = new("range of the programme", "rango del programa", "faixa do programa");
    private static readonly Text True = new("conductivity of the tower water", "conductividad del agua de la torre", "condutividade da água da torre");

    private static readonly (string, Said)[] HighCauses =
    [
        Looks.Cause(FindingKinds.ProbeReadsOff, "the probe reads low", "la sonda lee de menos", "a sonda lê a menos"),
        Looks.Cause(FindingKinds.BleedNotFlowing, "the bleed does not flow", "la purga no fluye", "a purga não flui"),
        Looks.Cause(FindingKinds.SettingsChanged, "the set point was changed", "se cambió la consigna", "o ponto de ajuste foi alterado"),
    ];

    private static readonly (string, Said)[] LowCauses =
    [
        Looks.Cause(FindingKinds.WaterLoss, "water leaves by another way", "el agua sale por otra vía", "a água sai por outro caminho"),
        Looks.Cause(FindingKinds.BleedNotClosing, "the bleed passes while shut", "la purga pasa estando cerrada", "a purga passa estando fechada"),
        Looks.Cause(FindingKinds.SettingsChanged, "the set point was changed", "se cambió la consigna", "o ponto de ajuste foi alterado"),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.ConductivityOut;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (Limits(visit, thresholds) is not { } limits)
        {
            yield break;
        }

        if (visit.Unsettled is { } reason)
        {
            yield return Verdict.NotJudged(null, reason);
        }
        else if (Settling.DoseGovernsBleed(visit))
        {
            yield return Verdict.NotJudged(null, VisitReasons.DoseGovernsBleed);
        }
        else if (TrueConductivity(visit, thresholds) is not { } value)
        {
            yield return Verdict.NotJudged(null, VisitReasons.NotMeasured);
        }
        else
        {
            yield return IsOut(value, limits) ? Verdict.Found(null, Shown(visit, value, limits, thresholds)) : Verdict.Clear();
        }
    }

    private static bool IsOut(Estimate value, (double? Low, double? High, bool OfProgramme) limits) =>
        value.Low > limits.High || value.High < limits.Low;

    internal static Estimate? TrueConductivity(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.TowerReading(TestCodes.Conductivity) is { } reference)
        {
            return reference.Value;
        }

        if (visit.Probes.FirstOrDefault(probe => probe.Reference.HasValue) is { } compared)
        {
            return compared.Reference.Value;
        }

        var display = visit.Tests.FirstOrDefault(test => test.Reading is { Test: TestCodes.Conductivity, At: SamplePoints.Tower, Source: Visits.ReadingSource.Controller });
        var verified = visit.Back()
            .TakeWhile(earlier => (visit.Visit.At - earlier.Visit.At).TotalDays <= thresholds.ProbeVerifiedDays.Value)
            .SelectMany(earlier => earlier.Probes)
            .FirstOrDefault(probe => probe.ErrorFound.HasValue);
        return display is not null && verified is not null && (!ProbeReadsOff.IsOff(verified, thresholds) || verified.Restarts)
            ? display.Value.WithCommon("probe", 0.02 * display.Value.Value)
            : null;
    }

    private static (double? Low, double? High, bool OfProgramme)? Limits(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Programme?.Ranges.FirstOrDefault(r => r is { At: SamplePoints.Tower, Test: TestCodes.Conductivity }) is { } range)
        {
            return (In(range.Low, range.Unit), In(range.High, range.Unit), true);
        }

        return visit.Programme?.SetPointUsPerCm is { } setPoint
            ? (setPoint * (1 - (thresholds.ConductivityLowPercent.Value / 100)), setPoint * (1 + (thresholds.ConductivityHighPercent.Value / 100)), false)
            : null;
    }

    private static double? In(double? value, string unit) =>
        value is { } number && Units.Convert(number, unit, "uS/cm") is { HasValue: true } converted ? converted.Value : null;

    private static Indication Shown(VisitFacts visit, Estimate value, (double? Low, double? High, bool OfProgramme) limits, FindingThresholds thresholds)
    {
        var high = value.Value > limits.High;
        var limit = (high ? limits.High : limits.Low)!.Value;
        var centre = visit.Programme?.SetPointUsPerCm ?? (limits.Low + limits.High) / 2 ?? limit;
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            earlier.Unsettled is null && !Settling.DoseGovernsBleed(earlier) && Limits(earlier, thresholds) is { } then && TrueConductivity(earlier, thresholds) is { } before
                ? IsOut(before, then) && before.Value > then.High == high
                : null);
        var severity = Confirm.Severity(confirmed, Math.Abs(value.Value - centre) >= 2 * Math.Abs(limit - centre) && limit != centre);
        if (visit.Programme?.HighAlarmUsPerCm is { } alarm && value.Value > alarm)
        {
            severity = Severity.Act;
        }

        if (!confirmed && DoubtfulReading.IsConductivity(visit))
        {
            severity = Severity.Watch;
        }

        var basis = limits.OfProgramme ? Range : high ? thresholds.ConductivityHighPercent.Basis : thresholds.ConductivityLowPercent.Basis;
        return new Indication(severity, new Said(high ? Above : Below, value, new Amount(limit, "uS/cm"), basis))
        {
            Evidence = [EvidenceFigure.Of(True, value, limits.Low, limits.High)],
            Suggests = high ? HighCauses : LowCauses,
            LookAtNext = high ? [Looks.ReadAgain, Looks.TimeBleed] : [Looks.ReadAgain, Looks.TestMakeUp],
        };
    }
}
