using LogBook.Domain.Estimates;
using LogBook.Domain.Intervals;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>
/// A stored value that is hard to believe: far from the usual or beyond what can be, though confirmed at entry or never asked
/// about (an import); a probe check and the readings that say the same thing differently; a counter that ran faster than it can.
/// </summary>
/// <remarks>Always "watch": the value stays as entered and every other rule weighs it by itself. The next believable one closes it.</remarks>
public sealed class ValueSuspect : IReadsCounts
{
    // A series that was not read for so many visits has no usual.
    private const int FurthestBack = 50;

    private static readonly Text Far = new(
        "{0} in {1} is {2}; usual here is {3} (limit {4} times or a part of it, {5}).{6}",
        "{0} en {1}: {2}; lo habitual aquí es {3} (límite {4} veces o su parte, {5}).{6}",
        "{0} em {1}: {2}; o habitual aqui é {3} (limite {4} vezes ou a sua parte, {5}).{6}");

    private static readonly Text FarApart = new(
        "{0} in {1} is {2}; usual here is {3} (limit {4} either way, {5}).{6}",
        "{0} en {1}: {2}; lo habitual aquí es {3} (límite {4} a cada lado, {5}).{6}",
        "{0} em {1}: {2}; o habitual aqui é {3} (limite {4} para cada lado, {5}).{6}");

    private static readonly Text Beyond = new(
        "{0} in {1} is {2}; what can be is {3}.{4}", "{0} en {1}: {2}; lo posible es {3}.{4}", "{0} em {1}: {2}; o possível é {3}.{4}");

    private static readonly Text WasConfirmed = new(
        " It was asked again at entry and confirmed.", " Se preguntó de nuevo al anotarlo y se confirmó.", " Perguntou-se de novo na anotação e foi confirmado.");

    private static readonly Text Nothing = new("", "", "");

    private static readonly Text Twice = new(
        "Probe {0}: its check says {1}, the readings of the same visit say {2}; both are kept.",
        "Sonda {0}: su comprobación dice {1}, las lecturas de la misma visita dicen {2}; se guardan ambas.",
        "Sonda {0}: a sua verificação diz {1}, as leituras da mesma visita dizem {2}; ambas ficam guardadas.");

    private static readonly Text TooFast = new(
        "Meter {0} counted {1} since it was last read; its pipe carries {2} at most.",
        "El contador {0} contó {1} desde su última lectura; su tubería lleva {2} como máximo.",
        "O hidrômetro {0} contou {1} desde a última leitura; o seu tubo leva {2} no máximo.");

    private static readonly Text TooLong = new(
        "Output {0} counted {1} since it was last read, but only {2} have passed.",
        "La salida {0} contó {1} desde su última lectura, pero solo han pasado {2}.",
        "A saída {0} contou {1} desde a última leitura, mas só passaram {2}.");

    private static readonly Text Result = new("result as entered", "resultado anotado", "resultado anotado");
    private static readonly Text Shown = new("display in the probe check", "indicación en la comprobación de la sonda", "indicação na verificação da sonda");
    private static readonly Text Reference = new("reference in the probe check", "referencia en la comprobación de la sonda", "referência na verificação da sonda");
    private static readonly Text Flow = new("mean flow since the last reading", "caudal medio desde la última lectura", "vazão média desde a última leitura");
    private static readonly Text Hours = new("hours counted since the last reading", "horas contadas desde la última lectura", "horas contadas desde a última leitura");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause("reading", "the point slipped, or the unit is another", "se corrió la coma, o la unidad es otra", "a vírgula escorregou, ou a unidade é outra"),
        Looks.Reading,
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Look at the field note or the photo; amend the visit if it says otherwise.", "Mire la nota de campo o la foto; corrija la visita si dice otra cosa.", "Veja a nota de campo ou a foto; corrija a visita se disser outra coisa."),
        Looks.ReadAgain,
    ];

    private static readonly Said[] NextCount =
    [
        Looks.Say("Read the register again, with a photo.", "Lea otra vez el contador, con foto.", "Leia de novo o registrador, com foto."),
        Looks.Say("Ask whether it was reset or replaced.", "Pregunte si se reinició o se cambió.", "Pergunte se foi zerado ou trocado."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.ValueSuspect;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        // Asked again whenever a count comes in: what is no count has not changed since.
        var before = ReferenceEquals(visit.Suspects.By, thresholds) ? visit.Suspects.Verdicts : null;
        var all = new List<Verdict>(before?.Count + 1 ?? (visit.Entered.All.Count + visit.Probes.Count + visit.Meters.Count + visit.Record.HoursRun.Count));
        Results(visit, thresholds, before, all);
        if (before is null)
        {
            Probes(visit, all);
            Meters(visit, all);
            Outputs(visit, all);
        }
        else
        {
            foreach (var verdict in before)
            {
                if (verdict.About?.Test is null)
                {
                    all.Add(verdict);
                }
            }
        }

        // Only the latest visit is asked again.
        if (visit.Previous is { } previous)
        {
            previous.Suspects = default;
        }

        visit.Suspects = (thresholds, all);
        return all;
    }

    // One finding a test: the doubtful values of its points stand side by side in the evidence.
    private static void Results(VisitFacts visit, FindingThresholds thresholds, List<Verdict>? before, List<Verdict> verdicts)
    {
        var all = visit.Entered.All;
        for (var i = 0; i < all.Count; i++)
        {
            var code = all[i].Reading.Test;
            if (IsBefore(all, i, code))
            {
                continue;
            }

            if (before is not null && !TestCodes.IsCount(code) && before.Find(verdict => verdict.About?.Test is { } test && IsSame(test, code)) is { } same)
            {
                verdicts.Add(same);
                continue;
            }

            List<(Said Text, EvidenceFigure Figure)>? doubts = null;
            for (var j = i; j < all.Count; j++)
            {
                if (IsSame(all[j].Reading.Test, code) && Doubt(visit, all[j].Reading, all[j].Value, thresholds) is { } doubt)
                {
                    (doubts ??= []).Add(doubt);
                }
            }

            var about = visit.History.Subjects.Test(code);
            verdicts.Add(doubts is null
                ? Verdict.Clear(about)
                : Verdict.Found(about, new Indication(Severity.Watch, doubts[0].Text) { Evidence = [.. doubts.Select(doubt => doubt.Figure)], Suggests = Causes, LookAtNext = Next }));
        }
    }

    private static bool IsBefore(IReadOnlyList<(Reading Reading, double Value)> all, int place, string code)
    {
        for (var i = 0; i < place; i++)
        {
            if (IsSame(all[i].Reading.Test, code))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsSame(string a, string b) => ReferenceEquals(a, b) || a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private static (Said Text, EvidenceFigure Figure)? Doubt(VisitFacts visit, Reading reading, double value, FindingThresholds thresholds)
    {
        var test = TestCatalogue.Find(reading.Test, visit.History.Firm)!;
        var unit = test.Units[0];
        var confirmed = reading.Confirmed == true ? WasConfirmed : Nothing;
        if (ReadingDoubts.IsBeyond(test, value))
        {
            return (
                new Said(Beyond, test.Name, TestTexts.NameOfPoint(reading.At), new Amount(value, unit), new Text(Range(test, unit, Language.English), Range(test, unit, Language.Spanish), Range(test, unit, Language.Portuguese)), confirmed),
                new EvidenceFigure(Result, value, unit, LimitLow: test.Lowest ?? 0, LimitHigh: test.Highest));
        }

        // After a drain or a clean, while it stands and while the water settles, the last six tell nothing.
        Span<double> last = stackalloc double[ReadingDoubts.LookBack];
        if (visit.Record.Running == false || IsFresh(visit.Record) || EnteredValues.Before(visit, reading, last, FurthestBack) is not (>= ReadingDoubts.Fewest and var count))
        {
            return null;
        }

        var (median, limit) = (Statistics.MedianInPlace(last[..count]), thresholds.SuspectTimes);
        if (!ReadingDoubts.IsFar(test, value, median, limit.Value) || (reading.Confirmed != true && IsPlain(visit, reading, value, median)) || visit.Unsettled is not null)
        {
            return null;
        }

        var (point, amount) = (TestTexts.NameOfPoint(reading.At), new Amount(value, unit));
        return ReadingDoubts.Most(test) is { } most
            ? (new Said(FarApart, test.Name, point, amount, new Amount(median, unit), new Amount(most, unit), limit.Basis, confirmed),
                new EvidenceFigure(Result, value, unit, LimitLow: median - most, LimitHigh: median + most))
            : (new Said(Far, test.Name, point, amount, new Amount(median, unit), limit.Value, limit.Basis, confirmed),
                new EvidenceFigure(Result, value, unit, LimitLow: median / limit.Value, LimitHigh: median * limit.Value));
    }

    // A result inside its range is where it should be, and a residual falls to nothing when a drum runs empty: no reason to doubt either.
    private static bool IsPlain(VisitFacts visit, Reading reading, double value, double median) =>
        reading.At.Equals(SamplePoints.Tower, StringComparison.OrdinalIgnoreCase)
        && ((Residuals.RangeOf(visit, reading.Test) is { } range && value >= (range.Low ?? 0) && value <= (range.High ?? double.MaxValue))
            || (value < median && Residuals.IsResidual(visit, reading.Test) && ReadingDoubts.SlipOf(value, median) is null));

    private static string Range(TestInfo test, string unit, Language language) => Languages.Shown.Range(test.Lowest ?? 0, test.Highest, unit, language);

    private static bool IsFresh(VisitedSystem record) =>
        record.Events.Count > 0 && record.Events.Any(e => e.Type is EventType.Drained or EventType.Refilled or EventType.Cleaned or EventType.Disinfected);

    private static void Probes(VisitFacts visit, List<Verdict> verdicts)
    {
        foreach (var probe in visit.Probes)
        {
            var about = visit.History.Subjects.Probe(probe.Probe);
            var pairs = ProbeTwin.Differing(visit.Record, probe.Reading, visit.History.Firm).ToList();
            verdicts.Add(pairs.Count == 0
                ? Verdict.Clear(about)
                : Verdict.Found(about, new Indication(
                    Severity.Watch,
                    new Said(Twice, probe.Probe, new Amount(pairs[0].Here, UnitCodes.MicrosiemensPerCm), new Amount(pairs[0].Among, UnitCodes.MicrosiemensPerCm)))
                {
                    Evidence =
                    [
                        .. pairs.Select(pair => new EvidenceFigure(
                            pair.Field == "asFound" ? Shown : Reference, pair.Here, UnitCodes.MicrosiemensPerCm, LimitLow: pair.Among, LimitHigh: pair.Among)),
                    ],
                    Suggests = [Looks.Reading],
                    LookAtNext = Next,
                }));
        }
    }

    private static void Meters(VisitFacts visit, List<Verdict> verdicts)
    {
        foreach (var meter in visit.Meters)
        {
            if (meter.Since is null || !meter.Litres.HasValue || meter.Meter.MaxLPerH is not > 0)
            {
                continue;
            }

            var about = visit.History.Subjects.Meter(meter.Meter.Code);
            var hours = (visit.Visit.At - meter.Since!.Visit.At).TotalHours;
            var most = meter.Meter.MaxLPerH!.Value;
            var flow = meter.Litres.Value.Scaled(1 / Math.Max(hours, 1), "L/h");
            verdicts.Add(flow.Low <= most
                ? Verdict.Clear(about)
                : Verdict.Found(about, new Indication(Severity.Watch, new Said(TooFast, meter.Meter.Code, flow, new Amount(most, "L/h")))
                {
                    Evidence = [EvidenceFigure.Of(Flow, flow, limitHigh: most)],
                    Suggests = Causes,
                    LookAtNext = NextCount,
                }));
        }
    }

    private static void Outputs(VisitFacts visit, List<Verdict> verdicts)
    {
        foreach (var reading in visit.Record.HoursRun)
        {
            if (visit.HoursSince(reading.Output) is not { } since)
            {
                continue;
            }

            var about = visit.History.Subjects.Output(reading.Output);
            var run = visit.HoursRun(reading.Output);
            if (run.HasValue)
            {
                verdicts.Add(Verdict.Clear(about));
            }
            else if (run.Reasons.Any(reason => reason.Code == IntervalReasons.MoreThanElapsed.Code))
            {
                var passed = (visit.Visit.At - since.Visit.At).TotalHours;
                var before = since.Record.HoursRun.First(earlier => earlier.Output.Equals(reading.Output, StringComparison.OrdinalIgnoreCase));
                var counted = (reading.Before ?? reading.Hours) - (before.After ?? (before.Before is null ? before.Hours : 0));
                verdicts.Add(Verdict.Found(about, new Indication(Severity.Watch, new Said(TooLong, reading.Output, new Amount(counted, "h"), new Amount(passed, "h")))
                {
                    Evidence = [new EvidenceFigure(Hours, counted, "h", LimitHigh: passed)],
                    Suggests = Causes,
                    LookAtNext = NextCount,
                }));
            }
        }
    }
}
