using LogBook.Domain.Assessments;
using LogBook.Domain.Cycles;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.SetPoints;

/// <summary>Set point of the bleed from cycles aimed at and the scarcest ion.</summary>
/// <remarks>
/// Cycles = the smaller of target and limit/ion for every ion, the ion at the 90th percentile of the last twelve make-up readings; set point =
/// make-up conductivity × C × (1 − bend (C − 1)) with the conductivity at its median, since a strong water would raise the set point
/// above what the ions of a usual water bear. Reference: 01-cycles-and-water-balance.md, "Which ratio"; mass balance.
/// </remarks>
public static class SetPointCalculator
{
    private static readonly Text Name = new("Set point", "Punto de consigna", "Ponto de ajuste");

    private static readonly Text Formula = new(
        "Make-up conductivity × C × (1 − bend × (C − 1)); C is the smaller of the target cycles and limit / make-up of each ion (make-up ions at the 90th percentile of the last 12 readings, conductivity at the median)",
        "Conductividad de la reposición × C × (1 − curvatura × (C − 1)); C es el menor entre los ciclos objetivo y límite / reposición de cada ion (iones de la reposición en el percentil 90 de las últimas 12 lecturas, conductividad en la mediana)",
        "Condutividade da reposição × C × (1 − curvatura × (C − 1)); C é o menor entre os ciclos alvo e limite / reposição de cada íon (íons da reposição no percentil 90 das últimas 12 leituras, condutividade na mediana)");

    private static readonly Text Source = new(
        "Mass balance; conductivity against cycles computed with PHREEQC for five make-up waters (0.76 to 0.95 of the true cycles at 5)",
        "Balance de masa; conductividad frente a ciclos calculada con PHREEQC para cinco aguas de reposición (0,76 a 0,95 de los ciclos verdaderos a 5)",
        "Balanço de massa; condutividade contra ciclos calculada com PHREEQC para cinco águas de reposição (0,76 a 0,95 dos ciclos verdadeiros a 5)");

    /// <summary>Works out a set point.</summary>
    /// <param name="from">What it follows from.</param>
    /// <returns>The proposal; none without make-up conductivity, without anything that limits, or where the make-up itself is above a limit.</returns>
    public static Computed<SetPointProposal> Of(SetPointCase from)
    {
        if (from.TargetCycles is { } asked && !(double.IsFinite(asked) && asked > 1))
        {
            return Computed<SetPointProposal>.None(CyclesReasons.CyclesNotAboveOne);
        }

        if (from.DifferentialPercent is not (>= 0 and < 50) || from.Limits.Any(limit => !(double.IsFinite(limit.Most) && limit.Most > 0)))
        {
            return Computed<SetPointProposal>.None(SetPointReasons.Impossible);
        }

        var rooms = Rooms(from);
        return from.Conductivity.Middle("uS/cm").Then(makeUp => Lowest(from, rooms, makeUp).Then(lowest => Proposal(from, rooms, makeUp, lowest)));
    }

    private static List<IonRoom> Rooms(SetPointCase from) =>
    [
        .. from.Limits
            .Where(limit => limit.Test != TestCodes.Conductivity)
            .Select(limit => (limit, makeUp: from.Ions.TryGetValue(limit.Test, out var readings) ? readings.High("mg/L") : Computed<Estimate>.None(VisitReasons.NotMeasured)))
            .Where(pair => pair.makeUp is { HasValue: true, Value.Value: > 0 })
            .Select(pair => new IonRoom(pair.limit, pair.makeUp.Value, Estimate.Exact(pair.limit.Most, "mg/L").Over(pair.makeUp.Value)))
            .OrderBy(room => room.Cycles.Value),
    ];

    // The fewest cycles anything allows, and what it is.
    private static Computed<(double Cycles, IonLimit? By)> Lowest(SetPointCase from, List<IonRoom> rooms, Estimate makeUp)
    {
        var (cycles, by) = (from.TargetCycles ?? double.PositiveInfinity, (IonLimit?)null);
        if (rooms.Count > 0 && rooms[0].Cycles.Value < cycles)
        {
            (cycles, by) = (rooms[0].Cycles.Value, rooms[0].Limit);
        }

        if (from.Limits.Where(limit => limit.Test == TestCodes.Conductivity).MinBy(limit => limit.Most) is { } discharge)
        {
            if (discharge.Most <= makeUp.Value)
            {
                return Computed<(double, IonLimit?)>.None(SetPointReasons.MakeUpAboveLimit);
            }

            var allowed = ConductivityLaw.Of(makeUp.Value, from.Bend).Then(law => law.CyclesAt(discharge.Most));
            if (allowed.HasValue && allowed.Value < cycles)
            {
                (cycles, by) = (allowed.Value, discharge);
            }
        }

        return double.IsInfinity(cycles) ? Computed<(double, IonLimit?)>.None(SetPointReasons.NothingLimits)
            : cycles <= 1 ? Computed<(double, IonLimit?)>.None(SetPointReasons.MakeUpAboveLimit)
            : Computed<(double, IonLimit?)>.Of((cycles, by));
    }

    private static Computed<SetPointProposal> Proposal(SetPointCase from, List<IonRoom> rooms, Estimate makeUp, (double Cycles, IonLimit? By) lowest)
    {
        var bend = new Estimate(from.Bend, "1", from.BendUncertainty);
        var cycles = lowest.By is { } by && rooms.Find(room => room.Limit == by) is { } room ? room.Cycles : Estimate.Exact(lowest.Cycles);
        var setPoint = Propagation.Of(
            x => ConductivityLaw.Of(x[0], Math.Clamp(x[2], 0, 0.06)).Then(law => law.At(x[1])), [makeUp, cycles, bend], "uS/cm");
        return setPoint.Map(value => new SetPointProposal
        {
            SetPoint = new Worked(setPoint, Name, Formula, Source,
            [
                new FigureInput("make-up-conductivity", makeUp.Value, "uS/cm", makeUp.StandardUncertainty),
                new FigureInput("cycles", lowest.Cycles, "1", cycles.StandardUncertainty),
                new FigureInput("bend", from.Bend, "1", from.BendUncertainty),
            ]),
            DifferentialUsPerCm = value.Value * from.DifferentialPercent / 100,
            CyclesAtSetPoint = lowest.Cycles,
            MeanCycles = ConductivityLaw.Of(makeUp.Value, from.Bend).Then(law => law.CyclesAt(value.Value * (1 - (from.DifferentialPercent / 200)))),
            Rooms = rooms,
            Limiting = lowest.By,
            NotKnown = [.. from.Limits.Where(limit => limit.Test != TestCodes.Conductivity && !rooms.Exists(known => known.Limit == limit))],
        });
    }
}
