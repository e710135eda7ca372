using LogBook.Domain.Assessments;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>The figures of a visit with their inputs, for pages and "How was this worked out?".</summary>
internal static class VisitFigures
{
    public static IReadOnlyList<Figure> Of(VisitFacts visit)
    {
        var figures = new List<Figure>();
        Cycles(visit, figures);
        Water(visit, figures);
        MakeUp(visit, figures);
        Products(visit, figures);
        Probes(visit, figures);
        return figures;
    }

    private static void Cycles(VisitFacts visit, List<Figure> figures)
    {
        var cycles = visit.Cycles;
        AddInstant(FigureCodes.CyclesByConductivity, cycles.ByConductivity, [.. Route(TestCodes.Conductivity), .. Input("under-reading", cycles.UnderReading)]);
        AddInstant(FigureCodes.CyclesByChloride, cycles.ByChloride, Route(TestCodes.Chloride));
        AddInstant(FigureCodes.CyclesByCalcium, cycles.ByCalcium, Route(TestCodes.Calcium));
        AddInstant(FigureCodes.CyclesBySilica, cycles.BySilica, Route(TestCodes.Silica));
        if (cycles.CyclesByVolumeIsKnown)
        {
            figures.Add(Interval(visit, FigureCodes.CyclesByVolume, null, cycles.ByVolume, [.. Input("make-up", visit.Water.MakeUp), .. Input("bleed", visit.Water.Bleed)]));
        }

        if (cycles.Best.HasValue)
        {
            AddInstant(FigureCodes.CyclesBest, cycles.Best, [.. cycles.AgreeingRoutes.SelectMany(code => Input("route:" + code, cycles.Route(code)))]);
        }

        IReadOnlyList<FigureInput> Route(string test) => [.. Input("tower", visit.TowerReading(test)?.Value), .. Input("make-up-mean", visit.MakeUp(test))];

        // A route whose tower reading was not taken is no figure at all; one that lacks only its make-up is, with the reason.
        void AddInstant(string code, Computed<Estimate> result, IReadOnlyList<FigureInput> inputs)
        {
            if (result.HasValue || inputs.Any(input => input.Name == "tower"))
            {
                figures.Add(Instant(visit, code, null, result, inputs));
            }
        }
    }

    private static void Water(VisitFacts visit, List<Figure> figures)
    {
        var water = visit.Water;
        var balance = visit.Balance;
        if (visit.Record.Meters.Count > 0)
        {
            figures.Add(Interval(visit, FigureCodes.MakeUp, null, water.MakeUp, MeterInputs(visit)));
        }

        if (visit.Record.HoursRun.Any(hours => hours.Output.Equals(visit.BleedOutput, StringComparison.OrdinalIgnoreCase)))
        {
            figures.Add(Interval(visit, FigureCodes.BleedHours, visit.BleedOutput, water.BleedHours, HoursInputs(visit)));
            figures.Add(Interval(visit, FigureCodes.Bleed, visit.BleedOutput, water.Bleed, [.. Input("bleed-hours", water.BleedHours), .. Input("valve-flow", water.ValveFlow)]));
        }

        if (water.MakeUp.HasValue)
        {
            IReadOnlyList<FigureInput> inputs = [.. Input("make-up", water.MakeUp), .. Input("cycles", balance.Cycles), .. Drains(balance)];
            figures.Add(Interval(visit, FigureCodes.LiquidLoss, null, balance.LiquidLoss, inputs));
            figures.Add(Interval(visit, FigureCodes.Evaporation, null, balance.Evaporation, inputs));
            figures.Add(Interval(visit, FigureCodes.UnexplainedLoss, null, balance.Unexplained, [.. inputs, .. Input("bleed", water.Bleed)]));
        }
    }

    // Conductivity, hardness and chloride tell of another water; the rest moves along with them.
    private static void MakeUp(VisitFacts visit, List<Figure> figures)
    {
        foreach (var test in new[] { TestCodes.Conductivity, TestCodes.TotalHardness, TestCodes.Calcium, TestCodes.Chloride })
        {
            if (visit.MakeUpNormal.ShiftOf(visit, test) is { Normal: > 0 } shift)
            {
                figures.Add(Instant(
                    visit,
                    FigureCodes.MakeUpShift,
                    test,
                    Computed<Estimate>.Of(shift.Now.Over(Estimate.Exact(shift.Normal, shift.Now.Unit)).Minus(Estimate.Exact(1)).Scaled(100, "%")),
                    [.. Input("now", shift.Now), new("usual", shift.Normal, shift.Now.Unit), new("spread", shift.Spread, shift.Now.Unit)]));
            }
        }
    }

    private static void Products(VisitFacts visit, List<Figure> figures)
    {
        foreach (var use in visit.ProductUse.Where(use => use.AgainstOwnDays is null))
        {
            var code = use.Drum.Drum.Code;
            if (use.From is { } from)
            {
                IReadOnlyList<FigureInput> window = [new("window-days", (visit.Visit.At - from.Visit.At).TotalDays, "d")];
                figures.Add(new Figure(FigureCodes.ProductUsed, code, visit.Visit.Visit.Id, from.Visit.At, visit.Visit.At, use.Used, UseInputs(visit, from, code)));
                figures.Add(new Figure(FigureCodes.ProductExpected, code, visit.Visit.Visit.Id, from.Visit.At, visit.Visit.At, use.Expected, [.. ExpectedInputs(visit, from, use), .. window]));
                figures.Add(new Figure(
                    FigureCodes.UsedOverExpected,
                    code,
                    visit.Visit.Visit.Id,
                    from.Visit.At,
                    visit.Visit.At,
                    use.Ratio,
                    [.. Input("used", use.Used), .. Input("expected", use.Expected), .. window]));
            }
            else
            {
                figures.Add(Interval(visit, FigureCodes.UsedOverExpected, code, use.Ratio, []));
            }
        }

        foreach (var output in visit.PumpOutputs)
        {
            figures.Add(new Figure(
                FigureCodes.PumpOutput,
                output.Pump.Code,
                visit.Visit.Visit.Id,
                output.Since.Visit.At,
                visit.Visit.At,
                output.LitresPerHour,
                [.. Input("used", output.Used), .. Input("hours-run", output.Hours), .. Input("rated", output.Rated)]));
        }

        foreach (var run in visit.RunOuts)
        {
            figures.Add(Instant(
                visit,
                FigureCodes.DaysToEmpty,
                run.Drum.Drum.Code,
                run.DaysToEmpty,
                [.. Input("usable", run.Stock), .. Input("use-per-day", run.UsePerDay), .. Spare(run)]));
        }
    }

    private static void Probes(VisitFacts visit, List<Figure> figures)
    {
        foreach (var probe in visit.Probes)
        {
            figures.Add(Instant(
                visit,
                FigureCodes.ProbeError,
                probe.Probe,
                probe.ErrorFound,
                [new("as-found", probe.AsFoundUsPerCm, "uS/cm"), .. Input("reference", probe.Reference)]));
            var drift = visit.Drift(probe);
            if (drift.Points > 1)
            {
                figures.Add(new Figure(
                    FigureCodes.ProbeDrift,
                    probe.Probe,
                    visit.Visit.Visit.Id,
                    drift.From,
                    visit.Visit.At,
                    drift.SlopePerDay,
                    [new("points", drift.Points, "1"), new("days", (visit.Visit.At - drift.From).TotalDays, "d")]));
            }
        }
    }

    private static List<FigureInput> MeterInputs(VisitFacts visit)
    {
        var inputs = new List<FigureInput>();
        foreach (var meter in visit.Meters)
        {
            var byDial = meter.Dial.HasValue || !meter.Total.HasValue;
            var then = meter.Since?.MeterReading(meter.Meter.Code);
            if ((byDial ? then?.Dial : then?.Total) is { } first)
            {
                inputs.Add(new FigureInput("first-count:" + meter.Meter.Code, first, meter.Meter.Unit));
            }

            if ((byDial ? meter.Reading.Dial : meter.Reading.Total) is { } last)
            {
                inputs.Add(new FigureInput("last-count:" + meter.Meter.Code, last, meter.Meter.Unit));
            }
        }

        return inputs;
    }

    private static List<FigureInput> HoursInputs(VisitFacts visit)
    {
        var inputs = new List<FigureInput>();
        var code = visit.BleedOutput!;
        if (visit.HoursSince(code)?.Record.HoursRun.FirstOrDefault(h => h.Output.Equals(code, StringComparison.OrdinalIgnoreCase)) is { } then)
        {
            inputs.Add(new FigureInput("first-count", then.After ?? then.Hours, "h"));
        }

        var now = visit.Record.HoursRun.First(h => h.Output.Equals(code, StringComparison.OrdinalIgnoreCase));
        inputs.Add(new FigureInput("last-count", now.Before ?? now.Hours, "h"));
        return inputs;
    }

    private static List<FigureInput> UseInputs(VisitFacts visit, VisitFacts from, string code)
    {
        var first = from.Drum(code)!;
        var last = visit.Drum(code)!;
        var changes = visit.Back().Skip(1).TakeWhile(v => v != from).Select(v => v.Drum(code)?.Reading).Append(first.Reading).ToList();
        return
        [
            .. Input("first-level", first.Found),
            .. Input("last-level", last.Found),
            new("deliveries", changes.Sum(reading => reading?.AddedL ?? 0), "L"),
            new("removed", changes.Sum(reading => reading?.RemovedL ?? 0), "L"),
        ];
    }

    private static List<FigureInput> ExpectedInputs(VisitFacts visit, VisitFacts from, ProductUse use)
    {
        if (use.Feed.Mode == FeedMode.DosePlan)
        {
            var starts = ProductUse.RunningStartsCount(visit, use.Feed, from.Visit.At, visit.Visit.At);
            return [new("doses", starts, "1"), .. Input("dose-amount", ProductUse.AmountOf(visit, use.Drum, use.Feed))];
        }

        return
        [
            new("target", use.Feed.TargetMgPerL ?? use.Drum.Product?.DoseMgPerL ?? 0, "mg/L"),
            .. Input("liquid-loss", ProductUse.LossBetween(from, visit)),
            new("density", use.Drum.Product?.DensityKgPerL ?? 1, "kg/L"),
        ];
    }

    private static IEnumerable<FigureInput> Drains(BalanceFacts balance) => balance.Drains.Value > 0 ? Input("known-drains", balance.Drains) : [];

    private static IEnumerable<FigureInput> Spare(RunOut run) =>
        (run.Drum.Reading.SpareL ?? run.Drum.Drum.SpareL) is { } spare ? [new FigureInput("spare", spare, "L")] : [];

    private static IEnumerable<FigureInput> Input(string name, Computed<Estimate> estimate) => estimate.HasValue ? Input(name, estimate.Value) : [];

    private static IEnumerable<FigureInput> Input(string name, Estimate? estimate) =>
        estimate is null ? [] : [new FigureInput(name, estimate.Value, estimate.Unit, estimate.StandardUncertainty == 0 ? null : estimate.StandardUncertainty)];

    private static Figure Instant(VisitFacts visit, string code, string? about, Computed<Estimate> result, IReadOnlyList<FigureInput> inputs) =>
        new(code, about, visit.Visit.Visit.Id, null, visit.Visit.At, result, inputs);

    private static Figure Interval(VisitFacts visit, string code, string? about, Computed<Estimate> result, IReadOnlyList<FigureInput> inputs) =>
        new(code, about, visit.Visit.Visit.Id, visit.Water.Since?.Visit.At ?? visit.Previous?.Visit.At, visit.Visit.At, result, inputs);
}
