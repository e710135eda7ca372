using LogBook.Domain.Assessments;
using LogBook.Domain.Cycles;
using LogBook.Domain.Dosing;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.DosePlans;

/// <summary>Bleed-down and hold of a dose against the high alarm and the label's contact time.</summary>
/// <remarks>
/// Cycles are conserved and followed exactly; conductivity follows by <see cref="ConductivityLaw"/>. The product's own conductivity comes on
/// top. The label's contact time stands above this arithmetic: nothing shorter is ever proposed. Reference: 12-biocide-schedule.md, "Bleed
/// hold" and "Bleed-down"; 12-biocide-schedule.csv rows 015 to 019 (with a bend of 0); 02-dosing.csv, slow_feed_peak, slug_remaining.
/// </remarks>
public static class HoldFits
{
    // Controllers are set in minutes; five of them are fine enough for a time known to a fifth.
    private const double Step = 5 / 60.0;
    private const double Hair = 1e-9;

    private static readonly Text PeakName = new("Conductivity at the end of the hold", "Conductividad al final del cierre", "Condutividade ao fim do fechamento");

    private static readonly Text PeakFormula = new(
        "Cycles at the start + E t / V while the bleed is shut (feed and hold; drift taken off), turned into conductivity by make-up × C × (1 − bend × (C − 1))",
        "Ciclos al inicio + E t / V con la purga cerrada (dosificación y cierre; descontado el arrastre), pasados a conductividad con reposición × C × (1 − curvatura × (C − 1))",
        "Ciclos no início + E t / V com a purga fechada (dosagem e fechamento; descontado o arraste), passados a condutividade com reposição × C × (1 − curvatura × (C − 1))");

    private static readonly Text Source = new(
        "Mass balance of a well-mixed system; first-order washout and decay",
        "Balance de masa de un sistema bien mezclado; lavado y descomposición de primer orden",
        "Balanço de massa de um sistema bem misturado; lavagem e decaimento de primeira ordem");

    /// <summary>Works out a hold.</summary>
    /// <param name="from">Dose, hold and plant.</param>
    /// <returns>The fit; none for numbers that cannot occur or a start below the make-up.</returns>
    public static Computed<HoldFit> Of(HoldCase from)
    {
        if (!(IsAmount(from.HoldHours) && IsAmount(from.FeedHours) && IsAmount(from.OtherLossLPerH) && IsAmount(from.DoseMgPerL) && IsAmount(from.DecayPerHour)
            && from.VolumeL.Value > 0 && from.EvaporationLPerH.Value >= 0 && from.LabelContactHours is null or >= 0))
        {
            return Computed<HoldFit>.None(DosePlanReasons.Impossible);
        }

        return Law(from, from.MakeUpUsPerCm.Value).Then(law => law.CyclesAt(from.StartUsPerCm).Then(top => Of(from, law, top)));
    }

    private static Computed<HoldFit> Of(HoldCase from, ConductivityLaw law, double top)
    {
        var (evaporation, volume) = (from.EvaporationLPerH.Value, from.VolumeL.Value);
        var start = StartOf(from, law, top, evaporation, volume);
        var peak = Propagation.Of(x => PeakOf(from, x[0], x[1], x[2]), [from.MakeUpUsPerCm, from.EvaporationLPerH, from.VolumeL], "uS/cm");
        if (!start.HasValue || !peak.HasValue)
        {
            return Computed<HoldFit>.None(start.HasValue ? peak.Reasons : start.Reasons);
        }

        var after = from.FeedHours > 0
            ? Washout.LevelAfterFeed(from.DoseMgPerL * volume / from.FeedHours, volume, from.OtherLossLPerH, from.FeedHours, from.DecayPerHour)
            : Computed<double>.Of(from.DoseMgPerL);
        var longest = LongestAt(from, law, start.Value.Cycles, evaporation, volume);
        var (verdict, hours, bleedDown) = Proposal(from, law, top, longest, evaporation, volume);
        var proposedStart = bleedDown is { } cycles ? law.At(cycles) : (Computed<double>?)null;
        return Computed<HoldFit>.Of(new HoldFit
        {
            Peak = new Worked(peak, PeakName, PeakFormula, Source,
            [
                new FigureInput("feed-starts-at", law.At(start.Value.Cycles).Or(0), "uS/cm"),
                Input("make-up-conductivity", from.MakeUpUsPerCm),
                Input("evaporation", from.EvaporationLPerH),
                Input("volume", from.VolumeL),
                new FigureInput("shut", from.FeedHours + from.HoldHours, "h"),
                new FigureInput("bend", from.Bend, "1"),
            ]),
            BleedDownHours = start.Value.Hours,
            FeedStartsAtUsPerCm = law.At(start.Value.Cycles).Or(from.StartUsPerCm),
            LongestHoldHours = longest,
            DoseAfterFeed = after,
            DoseLeft = after.Then(dose => Washout.LevelAfter(dose, volume, from.OtherLossLPerH, from.HoldHours, from.DecayPerHour)),
            LevelTime = after.Then(dose => Washout.LevelTime(dose, volume, from.OtherLossLPerH, from.HoldHours, from.DecayPerHour)),
            Verdict = verdict,
            ProposedHours = hours,
            ProposedBleedDownUsPerCm = proposedStart is { HasValue: true, Value: var level } ? Math.Floor(level) : null,
            ProposedBleedDownHours = bleedDown is { } to ? TimeDown(from, top, to, evaporation, volume) : null,
        });
    }

    private static Computed<double> PeakOf(HoldCase from, double makeUp, double evaporation, double volume) => Law(from, makeUp).Then(law => law.CyclesAt(from.StartUsPerCm)
        .Then(top => StartOf(from, law, top, evaporation, volume))
        .Then(start => CirculatingSystem.LevelAfter(start.Cycles, 1, evaporation, from.OtherLossLPerH, volume, from.FeedHours + from.HoldHours))
        .Then(law.At));

    private static Computed<ConductivityLaw> Law(HoldCase from, double makeUp) => ConductivityLaw.Of(makeUp, from.Bend);

    // Where the feed begins: the bleed stands open until the level or the time is reached.
    private static Computed<(double Cycles, Computed<double> Hours)> StartOf(HoldCase from, ConductivityLaw law, double top, double evaporation, double volume)
    {
        if (from.BleedDownToUsPerCm is null && from.BleedDownHours is null)
        {
            return Computed<(double, Computed<double>)>.Of((top, Computed<double>.Of(0)));
        }

        if (from.BleedLPerH is not > 0)
        {
            return Computed<(double, Computed<double>)>.None(DosePlanReasons.NoValve);
        }

        var loss = from.BleedLPerH.Value + from.OtherLossLPerH;
        var hours = Computed<double>.None(DosePlanReasons.NeverReached);
        if (from.BleedDownToUsPerCm is { } target)
        {
            var cycles = law.CyclesAt(Math.Min(target, from.StartUsPerCm));
            hours = cycles.Then(to => CirculatingSystem.TimeBetween(top, to, 1, evaporation, loss, volume));
            if (hours.HasValue && (from.BleedDownHours is not { } limit || hours.Value <= limit))
            {
                return Computed<(double, Computed<double>)>.Of((cycles.Value, hours));
            }
        }

        return from.BleedDownHours is { } most
            ? CirculatingSystem.LevelAfter(top, 1, evaporation, loss, volume, most).Map(cycles => (Math.Min(top, cycles), Computed<double>.Of(most)))
            : hours.WithoutValue<(double, Computed<double>)>();
    }

    private static Computed<double> LongestAt(HoldCase from, ConductivityLaw law, double start, double evaporation, double volume) =>
        from.HighAlarmUsPerCm is not > 0 ? Computed<double>.None(DosePlanReasons.NoAlarm)
        : IsBelowMakeUp(from) ? Computed<double>.Of(0)
        : law.CyclesAt(from.HighAlarmUsPerCm.Value) is not { HasValue: true, Value: var alarm } ? Computed<double>.None(DosePlanReasons.NeverReached)
        : alarm <= start ? Computed<double>.Of(0)
        : CirculatingSystem.TimeBetween(start, alarm, 1, evaporation, from.OtherLossLPerH, volume).Map(hours => Math.Max(0, hours - from.FeedHours));

    private static (HoldVerdict Verdict, double? Hours, double? BleedDown) Proposal(
        HoldCase from, ConductivityLaw law, double top, Computed<double> longest, double evaporation, double volume)
    {
        if (IsBelowMakeUp(from))
        {
            return (HoldVerdict.NothingFits, null, null);
        }

        var least = from.LabelContactHours ?? 0;
        var wanted = Math.Max(from.HoldHours, least);
        var most = longest.HasValue ? longest.Value : double.PositiveInfinity;
        if (wanted <= most + Hair)
        {
            return (from.HoldHours >= least - Hair ? HoldVerdict.Fits : HoldVerdict.LongerNeeded, wanted, null);
        }

        // The label's contact or, where none is on file, the hold that was asked for: shorter than that is nobody's business here.
        if (from.LabelContactHours is { } contact && contact <= most + Hair)
        {
            return (HoldVerdict.ShorterFits, Math.Max(contact, Math.Floor((most + Hair) / Step) * Step), null);
        }

        return LowerStart(from, law, top, wanted: from.LabelContactHours ?? from.HoldHours, evaporation, volume) is { } cycles
            ? (HoldVerdict.BleedDownFirst, from.LabelContactHours ?? from.HoldHours, cycles)
            : (HoldVerdict.NothingFits, null, null);
    }

    // The level from which the hold ends just at the alarm, if the valve gets the water there.
    private static double? LowerStart(HoldCase from, ConductivityLaw law, double top, double wanted, double evaporation, double volume)
    {
        if (from.BleedLPerH is not > 0 || from.HighAlarmUsPerCm is not { } high || law.CyclesAt(high) is not { HasValue: true, Value: var alarm })
        {
            return null;
        }

        var (loss, hours) = (from.OtherLossLPerH, wanted + from.FeedHours);
        var x = loss * hours / volume;
        var start = loss == 0 ? alarm - (evaporation * hours / volume) : (alarm - (((evaporation + loss) / loss) * (1 - Math.Exp(-x)))) * Math.Exp(x);

        start = Math.Min(start, top);
        return start > 1 && TimeDown(from, top, start, evaporation, volume) is not null ? start : null;
    }

    private static double? TimeDown(HoldCase from, double top, double to, double evaporation, double volume) =>
        CirculatingSystem.TimeBetween(top, to, 1, evaporation, from.BleedLPerH!.Value + from.OtherLossLPerH, volume) is { HasValue: true, Value: var hours } ? hours : null;

    private static FigureInput Input(string name, Estimate estimate) => new(name, estimate.Value, estimate.Unit, estimate.StandardUncertainty);

    // The make-up alone passes such an alarm: it stands from the first minute, and no bleed brings the water below it.
    private static bool IsBelowMakeUp(HoldCase from) => from.HighAlarmUsPerCm is > 0 and var alarm && alarm < from.MakeUpUsPerCm.Value;

    private static bool IsAmount(double value) => double.IsFinite(value) && value >= 0;
}
