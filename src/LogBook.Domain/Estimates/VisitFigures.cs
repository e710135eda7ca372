using LogBook.Domain.Assessments;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>The figures of a visit with their inputs, for pages and "How was this worked out?".</summary>
internal static class VisitFigures
{
    public static IReadOnlyList<Figure> Of(VisitFacts visit)
    {
        var figures = new List<Figure>(24);
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
        AddRoute(FigureCodes.CyclesByConductivity, cycles.ByConductivity, TestCodes.Conductivity, cycles.UnderReading);
        AddRoute(FigureCodes.CyclesByChloride, cycles.ByChloride, TestCodes.Chloride);
        AddRoute(FigureCodes.CyclesByCalcium, cycles.ByCalcium, TestCodes.Calcium);
        AddRoute(FigureCodes.CyclesBySilica, cycles.BySilica, TestCodes.Silica);
        if (cycles.CyclesByVolumeIsKnown)
        {
            figures.Add(Interval(visit, FigureCodes.CyclesByVolume, null, cycles.ByVolume, new Inputs().Add("make-up", visit.Water.MakeUp).Add("bleed", visit.Water.Bleed).All));
        }

        if (cycles.Best.HasValue)
        {
            var routes = new Inputs();
            foreach (var code in cycles.AgreeingRoutes)
            {
                routes.Add("route:" + code, cycles.Route(code));
            }

            figures.Add(Instant(visit, FigureCodes.CyclesBest, null, cycles.Best, routes.All));
        }

        // A route whose tower reading was not taken is no figure at all; one that lacks only its make-up is, with the reason.
        void AddRoute(string code, Computed<Estimate> result, string test, Estimate? underReading = null)
        {
            var tower = visit.TowerReading(test)?.Value;
            if (result.HasValue || tower is not null)
            {
                figures.Add(Instant(visit, code, null, result, new Inputs().Add("tower", tower).Add("make-up-mean", visit.MakeUp(test)).Add("under-reading", underReading).All));
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
            figures.Add(Interval(visit, FigureCodes.Bleed, visit.BleedOutput, water.Bleed, new Inputs().Add("bleed-hours", water.BleedHours).Add("valve-flow", water.ValveFlow).All));
        }

        if (water.MakeUp.HasValue)
        {
            var inputs = new Inputs().Add("make-up", water.MakeUp).Add("cycles", balance.Cycles).Add("known-drains", balance.Drains.Value > 0 ? balance.Drains : null).All;
            figures.Add(Interval(visit, FigureCodes.LiquidLoss, null, balance.LiquidLoss, inputs));
            figures.Add(Interval(visit, FigureCodes.Evaporation, null, balance.Evaporation, inputs));
            figures.Add(Interval(visit, FigureCodes.UnexplainedLoss, null, balance.Unexplained, new Inputs(inputs).Add("bleed", water.Bleed).All));
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
                    new Inputs().Add("now", shift.Now).Add("usual", shift.Normal, shift.Now.Unit).Add("spread", shift.Spread, shift.Now.Unit).All));
            }
        }
    }

    private static void Products(VisitFacts visit, List<Figure> figures)
    {
        foreach (var use in visit.ProductUse)
        {
            if (use.AgainstOwnDays is not null)
            {
                continue;
            }

            var code = use.Drum.Drum.Code;
            if (use.From is { } from)
            {
                var days = (visit.Visit.At - from.Visit.At).TotalDays;
                figures.Add(new Figure(FigureCodes.ProductUsed, code, visit.Visit.Visit.Id, from.Visit.At, visit.Visit.At, use.Used, UseInputs(visit, from, code)));
                figures.Add(new Figure(FigureCodes.ProductExpected, code, visit.Visit.Visit.Id, from.Visit.At, visit.Visit.At, use.Expected, ExpectedInputs(visit, from, use).Add("window-days", days, "d").All));
                figures.Add(new Figure(
                    FigureCodes.UsedOverExpected,
                    code,
                    visit.Visit.Visit.Id,
                    from.Visit.At,
                    visit.Visit.At,
                    use.Ratio,
                    new Inputs().Add("used", use.Used).Add("expected", use.Expected).Add("window-days", days, "d").All));
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
                new Inputs().Add("used", output.Used).Add("hours-run", output.Hours).Add("rated", output.Rated).All));
        }

        foreach (var run in visit.RunOuts)
        {
            figures.Add(Instant(
                visit,
                FigureCodes.DaysToEmpty,
                run.Drum.Drum.Code,
                run.DaysToEmpty,
                new Inputs().Add("usable", run.Stock).Add("use-per-day", run.UsePerDay).Add("spare", run.Drum.Reading.SpareL ?? run.Drum.Drum.SpareL, "L").All));
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
                new Inputs().Add("as-found", probe.AsFoundUsPerCm, "uS/cm").Add("reference", probe.Reference).All));
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

    private static IReadOnlyList<FigureInput> UseInputs(VisitFacts visit, VisitFacts from, string code)
    {
        var first = from.Drum(code)!;
        var last = visit.Drum(code)!;
        var (added, removed) = (0.0, 0.0);
        for (var at = visit.Previous; at is not null && at != from; at = at.Previous)
        {
            var reading = at.Drum(code)?.Reading;
            (added, removed) = (added + (reading?.AddedL ?? 0), removed + (reading?.RemovedL ?? 0));
        }

        return new Inputs()
            .Add("first-level", first.Found)
            .Add("last-level", last.Found)
            .Add("deliveries", added + (first.Reading.AddedL ?? 0), "L")
            .Add("removed", removed + (first.Reading.RemovedL ?? 0), "L")
            .All;
    }

    private static Inputs ExpectedInputs(VisitFacts visit, VisitFacts from, ProductUse use)
    {
        if (use.Feed.Mode == FeedMode.DosePlan)
        {
            var starts = ProductUse.RunningStartsCount(visit, use.Feed, from.Visit.At, visit.Visit.At);
            return new Inputs().Add("doses", starts, "1").Add("dose-amount", ProductUse.AmountOf(visit, use.Drum, use.Feed));
        }

        return new Inputs()
            .Add("target", use.Feed.TargetMgPerL ?? use.Drum.Product?.DoseMgPerL ?? 0, "mg/L")
            .Add("liquid-loss", ProductUse.LossBetween(from, visit))
            .Add("density", use.Drum.Product?.DensityKgPerL ?? 1, "kg/L");
    }

    private static Figure Instant(VisitFacts visit, string code, string? about, Computed<Estimate> result, IReadOnlyList<FigureInput> inputs) =>
        new(code, about, visit.Visit.Visit.Id, null, visit.Visit.At, result, inputs);

    private static Figure Interval(VisitFacts visit, string code, string? about, Computed<Estimate> result, IReadOnlyList<FigureInput> inputs) =>
        new(code, about, visit.Visit.Visit.Id, visit.Water.Since?.Visit.At ?? visit.Previous?.Visit.At, visit.Visit.At, result, inputs);

    // Inputs in the order in which they are given; what is not known is left out.
    private sealed class Inputs(IReadOnlyList<FigureInput>? first = null)
    {
        private readonly List<FigureInput> _all = first is null ? new(4) : [.. first];

        public IReadOnlyList<FigureInput> All => _all;

        public Inputs Add(string name, Estimate? estimate)
        {
            if (estimate is not null)
            {
                var uncertainty = estimate.StandardUncertainty;
                _all.Add(new FigureInput(name, estimate.Value, estimate.Unit, uncertainty == 0 ? null : uncertainty));
            }

            return this;
        }

        public Inputs Add(string name, Computed<Estimate> estimate) => estimate.HasValue ? Add(name, estimate.Value) : this;

        public Inputs Add(string name, double? value, string unit)
        {
            if (value is { } known)
            {
                _all.Add(new FigureInput(name, known, unit));
            }

            return this;
        }
    }
}
