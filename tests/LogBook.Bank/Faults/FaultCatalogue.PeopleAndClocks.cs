using LogBook.Bank.Firms;
using LogBook.Domain.Clocks;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Faults;

/// <content>Results, dates, records.</content>
internal static partial class FaultCatalogue
{
    private static IEnumerable<FaultSpec> PeopleAndClocks =>
    [
        new("Legionella found", new Traits(), LegionellaFound),
        new("visits fall out", new Traits { LongestInterval = 21 }, VisitsFallOut),
        new("restart without disinfection", new Traits { LongStop = true }, Restart),
        new("tests not made", new Traits { LongestInterval = 21 }, NotMeasured),
        new("same observation again", new Traits(), SeenAgain),
    ];

    private static Fault LegionellaFound(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var day = VisitFrom(system, onset);
        var known = day.AddDays(11);
        return new Fault
        {
            Name = "Legionella found",
            Onset = day,
            FoundBy = [FindingKinds.MicrobiologyHigh],
            Explains = [FindingKinds.ClockDue],
            Forbidden = [FindingKinds.DoseMissed, FindingKinds.BiocideLapse, FindingKinds.WrongProduct],
            Acts = [Act(day, TechnicianActKind.SampleLegionella), Act(day, TechnicianActKind.Outlier, TestCodes.Legionella, Math.Round(draw.Ratio(30, 3000)))],
            KnowableOn = _ => known,
        };
    }

    private static Fault VisitsFallOut(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var first = VisitFrom(system, onset);
        var until = first.AddDays(Math.Max(16, (int)(1.3 * system.EveryDays)));
        return new Fault
        {
            Name = "visits fall out",
            Onset = first,
            Repaired = VisitFrom(system, until.AddDays(1)).AddDays(5),
            FoundBy = [FindingKinds.ClockDue],
            Explains = [FindingKinds.RunsOut, FindingKinds.FeedLow, FindingKinds.ResidualLow, FindingKinds.BiocideLapse, FindingKinds.DoseMissed, FindingKinds.MicrobiologyHigh, FindingKinds.NotMeasured],
            Forbidden = [.. WaterKinds, FindingKinds.WrongProduct, FindingKinds.PumpOutput, FindingKinds.SecondLook],
            Acts = [Act(first, TechnicianActKind.Miss, until: until)],
            KnowableOn = course =>
            {
                var last = course.IndexOn(first);
                for (var day = first; last >= 0 && day <= until.AddDays(20); day = day.AddDays(1))
                {
                    if (VisitDue.IsLate(course.DayOf(last), system.EveryDays, [system.Known.Operation], day))
                    {
                        return day;
                    }
                }

                return null;
            },
        };
    }

    private static Fault Restart(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var stop = system.Full.Operation!.Stops[0];
        var back = VisitFrom(system, stop.To.AddDays(1));
        return new Fault
        {
            Name = "restart without disinfection",
            Onset = stop.To,
            FoundBy = [FindingKinds.RestartUnproved],
            Explains = [FindingKinds.ClockDue, FindingKinds.MicrobiologyHigh],
            Forbidden = [.. WaterKinds, FindingKinds.MeterStopped, FindingKinds.FeedLow, FindingKinds.WrongProduct, FindingKinds.DoseMissed],
            Paper = (visit, day) => day != back ? visit : With(visit, record => record with
            {
                // The plant was only started: water as it was, no cleaning, no sample.
                Events = [.. record.Events.Where(e => e.Type is not (EventType.Cleaned or EventType.Disinfected or EventType.Drained or EventType.Refilled))],
                Readings = [.. record.Readings.Where(r => r.Test != TestCodes.Legionella && r.Test != TestCodes.ColonyCount)],
                Additions = [],
            }),
            KnowableOn = _ => back,
        };
    }

    private static Fault NotMeasured(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var (from, to) = (VisitFrom(system, onset), VisitFrom(system, onset.AddDays(5 * system.EveryDays)));
        var reference = draw.Chance(0.5);
        var second = VisitFrom(system, from.AddDays(1));
        return new Fault
        {
            Name = "tests not made",
            Onset = from,
            Repaired = to,
            FoundBy = [FindingKinds.NotMeasured],
            Explains = [],
            Forbidden = [FindingKinds.ProbeReadsOff, FindingKinds.ResidualLow, FindingKinds.InstrumentShift],
            Paper = (visit, day) => day < from || day >= to ? visit : With(visit, record => record with
            {
                Readings = [.. record.Readings.Where(r => reference ? r.Source != ReadingSource.Reference || r.Test != TestCodes.Conductivity : r.Test != TestCodes.Inhibitor)],
                Probes = reference ? [] : record.Probes,
                Events = reference ? [.. record.Events.Where(e => e.Type != EventType.ProbeCleaned)] : record.Events,
            }),
            KnowableOn = _ => second,
        };
    }

    private static Fault SeenAgain(BankSystem system, SplitMix draw, DateOnly onset)
    {
        var first = VisitFrom(system, onset);
        var second = VisitFrom(system, first.AddDays(1));
        var third = VisitFrom(system, second.AddDays(1));
        return new Fault
        {
            Name = "same observation again",
            Onset = first,
            FoundBy = [FindingKinds.SeenAgain],
            Forbidden = [.. WaterKinds],
            Acts = [.. new[] { first, second, third }.Select(day => Act(day, TechnicianActKind.Observe, "drift-eliminators", 1, "eliminator torn on the north side"))],
            KnowableOn = _ => second,
        };
    }
}
