using LogBook.Bank.Firms;
using LogBook.Domain.Exchange;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Runs;

/// <summary>Runs a plant and its technician over the months, with the faults and without.</summary>
internal static class SystemRun
{
    private const int SettlingDays = 35;

    public static Course Of(BankSystem system, BankFirm firm)
    {
        var (visits, truths) = Run(system, firm, withFaults: true);
        var twin = system.Faults.Count == 0 ? truths : Run(system, firm, withFaults: false).Truths;
        return new Course(system, visits, truths, twin);
    }

    private static (List<Visit> Visits, List<Truth> Truths) Run(BankSystem system, BankFirm firm, bool withFaults)
    {
        var start = firm.First.AddDays(-SettlingDays).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        var plant = new PlantSimulation(system.Model, system.Full, system.Programme, system.Zone, start, system.Seed);
        var plates = SplitMix.For(system.Seed, "pumps");
        foreach (var pump in system.Full.Pumps)
        {
            plant.SetPumpBias(pump.Output, 1 + Math.Clamp(0.03 * plates.NextNormal(), -0.08, 0.08));
        }

        var faults = withFaults ? system.Faults : [];
        plant.Schedule(faults.SelectMany(f => f.Story));
        var technician = new Technician(system.Full, plant, system.Zone, system.Seed);
        var arrivals = SplitMix.For(system.Seed, "arrivals");
        var paper = SplitMix.For(system.Seed, "paper");
        var ids = SplitMix.For(system.Seed, "invented");
        var left = system.Full.Drums.ToDictionary(d => d.Code, d => plant.DrumL(d.Code), StringComparer.Ordinal);
        var used = system.Full.Drums.ToDictionary(d => d.Code, _ => 0.0, StringComparer.Ordinal);
        var (visits, truths) = (new List<Visit>(), new List<Truth>());
        var hour = 8 + arrivals.NextBelow(6);
        for (var i = 0; i < system.Days.Count; i++)
        {
            var day = system.Days[i];
            var local = day.ToDateTime(new TimeOnly(hour, 0)).AddMinutes(arrivals.NextBelow(80));
            var arrived = DateTime.SpecifyKind(local - system.Zone.GetUtcOffset(local), DateTimeKind.Utc);
            if (system.Faults.SelectMany(f => f.Acts).Any(a => a.Act == TechnicianActKind.Miss && a.Covers(day)))
            {
                continue;
            }

            var acts = system.Acts.Concat(faults.SelectMany(f => f.Acts)).Where(a => a.Covers(day)).ToList();
            plant.AdvanceTo(arrived.AddMinutes(Technician.MinutesToReading));
            foreach (var drum in system.Full.Drums)
            {
                used[drum.Code] += left[drum.Code] - plant.DrumL(drum.Code);
            }

            foreach (var fault in faults)
            {
                fault.BeforeVisit?.Invoke(plant, day);
            }

            truths.Add(Truth.Of(plant, system, day, start, new Dictionary<string, double>(used, StringComparer.Ordinal)));
            if (faults.Any(f => f.Invented?.Invoke(day) == true) && visits.Count > 1)
            {
                var invented = InventedVisit.After(visits, arrived, system, ids);
                visits.Add(invented with { Systems = [invented.Systems[0] with { ProgrammeWeek = plant.ProgrammeWeek }] });
            }
            else
            {
                var visit = Paperwork.Write(technician.Visit(Order(system, firm, i, arrived, acts, arrivals)), system, i, paper);
                foreach (var fault in faults.Where(f => f.Paper is not null))
                {
                    visit = fault.Paper!(visit, day);
                }

                visits.Add(visit);
            }

            foreach (var drum in system.Full.Drums)
            {
                left[drum.Code] = plant.DrumL(drum.Code);
            }
        }

        return (visits, truths);
    }

    private static VisitOrder Order(BankSystem system, BankFirm firm, int i, DateTime arrived, List<TechnicianAct> acts, SplitMix arrivals)
    {
        var day = system.Days[i];
        var lot = firm.Lots.LotOf(system.Technician.Code, day);
        return new VisitOrder
        {
            ArrivedUtc = arrived,
            Technician = system.Technician.Code,
            TechnicianName = system.Technician.Name,
            HandMeter = system.Technician.HandMeter,
            HandMeterError = firm.Meters.ErrorAt(system.Technician.HandMeter, day),
            Lots = new Dictionary<string, string>(StringComparer.Ordinal) { ["inhibitor"] = lot },
            LotFactors = new Dictionary<string, double>(StringComparer.Ordinal) { [lot] = firm.Lots.FactorOf(lot) },
            Acts = acts,
            NextInDays = i + 1 < system.Days.Count ? system.Days[i + 1].DayNumber - day.DayNumber : system.EveryDays,
            LegionellaEveryDays = 90,
            ColonyCountEveryDays = 35,
            DrumLevelShare = 0.02,
            Laboratory = "LAB",
            CustomerName = arrivals.Chance(0.8) ? "Site office" : null,
        };
    }
}
