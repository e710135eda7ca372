using LogBook.Bank.Firms;
using LogBook.Domain.Findings;
using LogBook.Domain.Simulation;

namespace LogBook.Bank.Faults;

/// <summary>What goes wrong with a person, an instrument or a lot and shows at several sites at once.</summary>
internal static class SharedFaults
{
    public const string Lot = "reagent lot reads off";
    public const string Meter = "hand meter shifts";
    public const string Person = "invented visits";

    private static readonly string[] PlantKinds =
    [
        FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, FindingKinds.ConductivityOut, FindingKinds.CyclesLow, FindingKinds.CyclesHigh, FindingKinds.WaterLoss, FindingKinds.BleedNotFlowing, FindingKinds.BleedNotClosing,
        FindingKinds.FeedLow, FindingKinds.FeedHigh, FindingKinds.PumpOutput, FindingKinds.WrongProduct, FindingKinds.DoseMissed, FindingKinds.MeterStopped,
    ];

    public static void Plant(SplitMix draw, IReadOnlyList<BankTechnician> technicians, IReadOnlyList<BankSystem> systems, HandMeters meters, ReagentLots lots, DateOnly first, DateOnly last)
    {
        var months = (last.DayNumber - first.DayNumber) / 30;
        if (months < 14 || technicians.Count < 3)
        {
            return;
        }

        var people = draw.Shuffled(technicians);
        if (draw.Chance(0.7))
        {
            PlantPerson(draw, people[1], systems, first);
        }

        if (draw.Chance(0.7))
        {
            PlantMeter(draw, people[0], systems, meters, first);
        }

        if (draw.Chance(0.7))
        {
            PlantLot(draw, technicians, systems, lots, first);
        }
    }

    private static void PlantMeter(SplitMix draw, BankTechnician person, IReadOnlyList<BankSystem> systems, HandMeters meters, DateOnly first)
    {
        var from = first.AddDays(200 + draw.NextBelow(200));
        var to = from.AddDays(75);
        meters.Fault = (person.HandMeter, from, to, draw.OneOf(-1, 1) * draw.Between(0.055, 0.085));
        var sites = systems.Where(s => s.Technician == person).ToList();
        var third = ThirdVisit(sites, from);
        foreach (var system in sites)
        {
            system.Faults.Add(new Fault
            {
                Name = Meter,
                Onset = from,
                Repaired = to.AddDays(1),
                IsShared = true,
                FoundBy = [FindingKinds.InstrumentShift],

                // Before the third site nobody can know; what was calibrated to the wrong meter stays wrong for a while.
                Explains = [FindingKinds.ProbeReadsOff, FindingKinds.ProbeDrifting, FindingKinds.ConductivityOut, FindingKinds.CyclesHigh, FindingKinds.CyclesLow, FindingKinds.CyclesDisagree],
                Forbidden = [FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff],
                ForbiddenFrom = third?.AddDays(14),
                KnowableOn = _ => third,
            });
        }
    }

    private static void PlantLot(SplitMix draw, IReadOnlyList<BankTechnician> technicians, IReadOnlyList<BankSystem> systems, ReagentLots lots, DateOnly first)
    {
        var technician = technicians[draw.NextBelow(technicians.Count)];
        var from = first.AddDays(150 * (1 + draw.NextBelow(2)));
        var lot = lots.LotOf(technician.Code, from);
        lots.Fault = (lot, draw.Between(1.15, 1.28));
        var sites = systems.Where(s => lots.LotOf(s.Technician.Code, from) == lot).ToList();
        var third = ThirdVisit(sites, from);
        foreach (var system in sites)
        {
            system.Faults.Add(new Fault
            {
                Name = Lot,
                Onset = from,
                Repaired = from.AddDays(150),
                IsShared = true,
                FoundBy = [FindingKinds.LotShift],
                Explains = [FindingKinds.ResidualHigh],
                Forbidden = [FindingKinds.FeedHigh, FindingKinds.ResidualHigh],
                ForbiddenFrom = third?.AddDays(14),
                KnowableOn = _ => third,
            });
        }
    }

    private static void PlantPerson(SplitMix draw, BankTechnician person, IReadOnlyList<BankSystem> systems, DateOnly first)
    {
        var from = first.AddDays(220 + draw.NextBelow(150));
        var to = from.AddDays(70);
        foreach (var system in systems.Where(s => s.Technician == person && s.Faults.Count == 0).Take(3))
        {
            system.Faults.Add(new Fault
            {
                Name = Person,
                Onset = from,
                Repaired = to,
                IsShared = true,
                FoundBy = [FindingKinds.SecondLook],

                // The first true visit afterwards contradicts what was invented.
                Explains = [FindingKinds.FeedLow, FindingKinds.FeedHigh, FindingKinds.StockUnexplained, FindingKinds.MeterBackwards, FindingKinds.PulsesLost, FindingKinds.RunsOut, FindingKinds.PumpOutput, FindingKinds.WaterLoss],
                Forbidden = PlantKinds,
                Invented = day => day >= from && day <= to,
                KnowableOn = course => course.DayOf(Math.Min(course.Count - 1, course.IndexOn(from) + 2)),
            });
        }
    }

    private static DateOnly? ThirdVisit(IReadOnlyList<BankSystem> sites, DateOnly from)
    {
        var days = sites.Select(s => s.Days.FirstOrDefault(d => d >= from)).Where(d => d != default).Order().ToList();
        return days.Count >= 3 ? days[2] : null;
    }
}
