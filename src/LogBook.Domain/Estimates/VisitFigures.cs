using LogBook.Domain.Assessments;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>The figures of a visit with their inputs, for pages and "How was this worked out?".</summary>
internal static class VisitFigures
{
    private static readonly string[] MakeUpTests = [TestCodes.Conductivity, TestCodes.TotalHardness, TestCodes.Calcium, TestCodes.Chloride];

    public static IReadOnlyList<Figure> Of(VisitFacts visit)
    {
        var figures = new List<Figure>(32);
        var inputs = new Inputs();
        Cycles(visit, figures, inputs);
        Water(visit, figures, inputs);
        MakeUp(visit, figures, inputs);
        Products(visit, figures, inputs);
        Probes(visit, figures, inputs);
        return [.. figures];
    }

    private static void Cycles(VisitFacts visit, List<Figure> figures, Inputs inputs)
    {
        var cycles = visit.Cycles;
        AddRoute(FigureCodes.CyclesByConductivity, cycles.ByConductivity, TestCodes.Conductivity, cycles.UnderReading);
        AddRoute(FigureCodes.CyclesByChloride, cycles.ByChloride, TestCodes.Chloride);
        AddRoute(FigureCodes.CyclesByCalcium, cycles.ByCalcium, TestCodes.Calcium);
        AddRoute(FigureCodes.CyclesBySilica, cycles.BySilica, TestCodes.Silica);
        if (cycles.CyclesByVolumeIsKnown)
        {
            figures.Add(Interval(visit, FigureCodes.CyclesByVolume, null, cycles.ByVolume, inputs.Anew().Add("make-up", visit.Water.MakeUp).Add("bleed", visit.Water.Bleed).All));
        }

        if (cycles.Best.HasValue)
        {
            inputs.Anew();
            foreach (var code in cycles.AgreeingRoutes)
            {
                inputs.Add(RouteOf(code), cycles.Route(code));
            }

            figures.Add(Instant(visit, FigureCodes.CyclesBest, null, cycles.Best, inputs.All));
        }

        // A route whose tower reading was not taken is no figure at all; one that lacks only its make-up is, with the reason.
        void AddRoute(string code, Computed<Estimate> result, string test, Estimate? underReading = null)
        {
            var tower = visit.TowerReading(test)?.Value;
            if (result.HasValue || tower is not null)
            {
                figures.Add(Instant(visit, code, null, result, inputs.Anew().Add("tower", tower).Add("make-up-mean", visit.MakeUp(test)).Add("under-reading", underReading).All));
            }
        }
    }

    private static void Water(VisitFacts visit, List<Figure> figures, Inputs inputs)
    {
        var water = visit.Water;
        var balance = visit.Balance;
        if (visit.Record.Meters.Count > 0)
        {
            figures.Add(Interval(visit, FigureCodes.MakeUp, null, water.MakeUp, MeterInputs(visit, inputs)));
        }

        if (visit.BleedOutput is { } output && IndexOf(visit.Record.HoursRun, output) >= 0)
        {
            figures.Add(Interval(visit, FigureCodes.BleedHours, output, water.BleedHours, HoursInputs(visit, output, inputs)));
            figures.Add(Interval(visit, FigureCodes.Bleed, output, water.Bleed, inputs.Anew().Add("bleed-hours", water.BleedHours).Add("valve-flow", water.ValveFlow).All));
        }

        if (water.MakeUp.HasValue)
        {
            var of = inputs.Anew().Add("make-up", water.MakeUp).Add("cycles", balance.Cycles).Add("known-drains", balance.Drains.Value > 0 ? balance.Drains : null).All;
            figures.Add(Interval(visit, FigureCodes.LiquidLoss, null, balance.LiquidLoss, of));
            figures.Add(Interval(visit, FigureCodes.Evaporation, null, balance.Evaporation, of));
            figures.Add(Interval(visit, FigureCodes.UnexplainedLoss, null, balance.Unexplained, inputs.Anew(of).Add("bleed", water.Bleed).All));
        }
    }

    // Conductivity, hardness and chloride tell of another water; the rest moves along with them.
    private static void MakeUp(VisitFacts visit, List<Figure> figures, Inputs inputs)
    {
        foreach (var test in MakeUpTests)
        {
            if (visit.MakeUpNormal.ShiftOf(visit, test) is { Normal: > 0 } shift)
            {
                figures.Add(Instant(
                    visit,
                    FigureCodes.MakeUpShift,
                    test,
                    Computed<Estimate>.Of(shift.Now.Over(Estimate.Exact(shift.Normal, shift.Now.Unit)).Minus(Estimate.Exact(1)).Scaled(100, "%")),
                    MakeUpInputs(shift, inputs)));
            }
        }
    }

    private static IReadOnlyList<FigureInput> MakeUpInputs(MakeUpShift shift, Inputs inputs)
    {
        inputs.Anew().Add("now", shift.Now).Add("usual", shift.Normal, shift.Now.Unit).Add("spread", shift.Spread, shift.Now.Unit);
        for (var i = 0; i < shift.Own.Count; i++)
        {
            inputs.Add(shift.Own[i]);
        }

        return inputs.All;
    }

    private static void Products(VisitFacts visit, List<Figure> figures, Inputs inputs)
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
                figures.Add(new Figure(FigureCodes.ProductUsed, code, visit.Visit.Visit.Id, from.Visit.At, visit.Visit.At, use.Used, UseInputs(visit, from, code, inputs)));
                figures.Add(new Figure(FigureCodes.ProductExpected, code, visit.Visit.Visit.Id, from.Visit.At, visit.Visit.At, use.Expected, ExpectedInputs(visit, from, use, inputs).Add("window-days", days, "d").All));
                figures.Add(new Figure(
                    FigureCodes.UsedOverExpected,
                    code,
                    visit.Visit.Visit.Id,
                    from.Visit.At,
                    visit.Visit.At,
                    use.Ratio,
                    inputs.Anew().Add("used", use.Used).Add("expected", use.Expected).Add("window-days", days, "d").All));
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
                inputs.Anew().Add("used", output.Used).Add("hours-run", output.Hours).Add("rated", output.Rated).All));
        }

        foreach (var run in visit.RunOuts)
        {
            figures.Add(Instant(
                visit,
                FigureCodes.DaysToEmpty,
                run.Drum.Drum.Code,
                run.DaysToEmpty,
                inputs.Anew().Add("usable", run.Stock).Add("use-per-day", run.UsePerDay).Add("spare", run.Drum.Reading.SpareL ?? run.Drum.Drum.SpareL, "L")
                    .Add("used", run.Used).Add("running-days", run.UsedDays, "d").Add("doses", run.UsedDoses, "1").Add("doses-ahead", run.DosesAhead, "1").All));
        }
    }

    private static void Probes(VisitFacts visit, List<Figure> figures, Inputs inputs)
    {
        foreach (var probe in visit.Probes)
        {
            figures.Add(Instant(
                visit,
                FigureCodes.ProbeError,
                probe.Probe,
                probe.ErrorFound,
                inputs.Anew().Add("as-found", probe.AsFoundUsPerCm, "uS/cm").Add("reference", probe.Reference).All));
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
                    DriftInputs(visit, probe, drift, inputs)));
            }
        }
    }

    // Every point of the line, and the line: whoever has them can lay it again.
    private static IReadOnlyList<FigureInput> DriftInputs(VisitFacts visit, ProbeFacts probe, ProbeDrift drift, Inputs inputs)
    {
        inputs.Anew().Add("points", drift.Points, "1").Add("days", (visit.Visit.At - drift.From).TotalDays, "d");
        foreach (var (at, _) in ProbeSeries.Of(visit, probe).Points)
        {
            if (at.Probe(probe.Probe)?.ErrorInput is { } point)
            {
                inputs.Add(point);
            }
        }

        return drift.SlopePerDay.HasValue
            ? inputs.Add("line-start", drift.AtStart, "%").Add("line-scatter", drift.Scatter, "%").Add("slope-low", drift.SlopeLow, "%/d").Add("slope-high", drift.SlopeHigh, "%/d").All
            : inputs.All;
    }

    private static string RouteOf(string code) => code switch
    {
        FigureCodes.CyclesByConductivity => "route:" + FigureCodes.CyclesByConductivity,
        FigureCodes.CyclesByChloride => "route:" + FigureCodes.CyclesByChloride,
        FigureCodes.CyclesBySilica => "route:" + FigureCodes.CyclesBySilica,
        _ => "route:" + code,
    };

    private static IReadOnlyList<FigureInput> MeterInputs(VisitFacts visit, Inputs inputs)
    {
        inputs.Anew();
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

        return inputs.All;
    }

    private static IReadOnlyList<FigureInput> HoursInputs(VisitFacts visit, string output, Inputs inputs)
    {
        inputs.Anew();
        if (visit.HoursSince(output)?.Record.HoursRun is { } before && IndexOf(before, output) is >= 0 and var at)
        {
            inputs.Add(new FigureInput("first-count", before[at].After ?? before[at].Hours, "h"));
        }

        var now = visit.Record.HoursRun[IndexOf(visit.Record.HoursRun, output)];
        inputs.Add(new FigureInput("last-count", now.Before ?? now.Hours, "h"));
        return inputs.All;
    }

    private static int IndexOf(IReadOnlyList<HoursReading> hours, string output)
    {
        for (var i = 0; i < hours.Count; i++)
        {
            if (hours[i].Output.Equals(output, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return -1;
    }

    private static IReadOnlyList<FigureInput> UseInputs(VisitFacts visit, VisitFacts from, string code, Inputs inputs)
    {
        var first = from.Drum(code)!;
        var last = visit.Drum(code)!;
        var (added, removed) = (0.0, 0.0);
        for (var at = visit.Previous; at is not null && at != from; at = at.Previous)
        {
            var reading = at.Drum(code)?.Reading;
            (added, removed) = (added + (reading?.AddedL ?? 0), removed + (reading?.RemovedL ?? 0));
        }

        return inputs.Anew()
            .Add("first-level", first.Found)
            .Add("last-level", last.Found)
            .Add("deliveries", added + (first.Reading.AddedL ?? 0), "L")
            .Add("removed", removed + (first.Reading.RemovedL ?? 0), "L")
            .All;
    }

    private static Inputs ExpectedInputs(VisitFacts visit, VisitFacts from, ProductUse use, Inputs inputs)
    {
        if (use.Feed.Mode == FeedMode.DosePlan)
        {
            var starts = ProductUse.RunningStartsCount(visit, use.Feed, from.Visit.At, visit.Visit.At);
            return inputs.Anew().Add("doses", starts, "1").Add("dose-amount", ProductUse.AmountOf(visit, use.Drum, use.Feed));
        }

        return inputs.Anew()
            .Add("target", use.Feed.TargetMgPerL ?? use.Drum.Product?.DoseMgPerL ?? 0, "mg/L")
            .Add("liquid-loss", ProductUse.LossBetween(from, visit))
            .Add("density", use.Drum.Product?.DensityKgPerL ?? 1, "kg/L");
    }

    private static Figure Instant(VisitFacts visit, string code, string? about, Computed<Estimate> result, IReadOnlyList<FigureInput> inputs) =>
        new(code, about, visit.Visit.Visit.Id, null, visit.Visit.At, result, inputs);

    private static Figure Interval(VisitFacts visit, string code, string? about, Computed<Estimate> result, IReadOnlyList<FigureInput> inputs) =>
        new(code, about, visit.Visit.Visit.Id, visit.Water.Since?.Visit.At ?? visit.Previous?.Visit.At, visit.Visit.At, result, inputs);

    // Inputs in the order in which they are given; what is not known is left out. One buffer serves all figures of a visit: what is kept
    // is an array of the right length, because figures live long.
    private sealed class Inputs
    {
        private FigureInput[] _buffer = new FigureInput[8];
        private int _count;

        public IReadOnlyList<FigureInput> All => _buffer[.._count];

        public Inputs Anew(IReadOnlyList<FigureInput>? first = null)
        {
            _count = 0;
            for (var i = 0; i < first?.Count; i++)
            {
                Add(first[i]);
            }

            return this;
        }

        public Inputs Add(string name, Estimate? estimate)
        {
            if (estimate is not null)
            {
                var uncertainty = estimate.StandardUncertainty;
                Add(new FigureInput(name, estimate.Value, estimate.Unit, uncertainty == 0 ? null : uncertainty));
            }

            return this;
        }

        public Inputs Add(string name, Computed<Estimate> estimate) => estimate.HasValue ? Add(name, estimate.Value) : this;

        public Inputs Add(string name, double? value, string unit)
        {
            if (value is { } known)
            {
                Add(new FigureInput(name, known, unit));
            }

            return this;
        }

        public void Add(FigureInput input)
        {
            if (_count == _buffer.Length)
            {
                Array.Resize(ref _buffer, 2 * _count);
            }

            _buffer[_count++] = input;
        }
    }
}
