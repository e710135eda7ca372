using LogBook.Bank.Faults;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Bank.Firms;

/// <summary>Draws a firm: people, systems, and which fault goes where.</summary>
internal static class FirmDraw
{
    private const double HealthyShare = 0.35;

    public static BankFirm Of(ulong seed, int systems, int months)
    {
        var draw = SplitMix.For(seed, "firm");
        var first = new DateOnly(2025, 1, 6).AddDays(7 * draw.NextBelow(40));
        var last = first.AddMonths(months);
        var meters = new HandMeters(seed, first.AddDays(-14), last);
        var lots = new ReagentLots(first);
        var technicians = Enumerable.Range(0, Math.Clamp(systems / 8, 1, 5))
            .Select(i => new BankTechnician(FormattableString.Invariant($"T{i}"), FormattableString.Invariant($"CM-{i}"), i % 3 == 1 ? 0.12 : i % 3 == 2 ? 0.04 : 0))
            .ToList();
        var faulty = (int)Math.Round(systems * (1 - HealthyShare));

        // Every fault once before any comes twice; which ones is drawn anew for each firm.
        var faults = Enumerable.Range(0, (faulty / FaultCatalogue.All.Count) + 1).SelectMany(_ => draw.Shuffled(FaultCatalogue.All)).Take(faulty).ToList();
        var plan = draw.Shuffled(faults.Cast<FaultSpec?>().Concat(Enumerable.Repeat<FaultSpec?>(null, systems - faulty)));
        var all = new List<BankSystem>();
        for (var i = 0; i < systems; i++)
        {
            var code = FormattableString.Invariant($"S{i + 1:00}");
            var system = SystemDraw.Of(seed, code, plan[i]?.Needs ?? new Traits(), technicians[i % technicians.Count], first, last);
            if (plan[i] is { } spec)
            {
                var own = SplitMix.For(seed, code + " fault");
                system.Faults.Add(spec.Plant(system, own, Onset(system, own, first, last)));
            }

            all.Add(system);
        }

        SharedFaults.Plant(draw, technicians, all, meters, lots, first, last);
        return new BankFirm { Seed = seed, First = first, Last = last, Systems = all, Meters = meters, Lots = lots, Document = Document(all, technicians, meters, lots, last) };
    }

    /// <summary>After five visits and 100 days, and early enough to be found.</summary>
    private static DateOnly Onset(BankSystem system, SplitMix draw, DateOnly first, DateOnly last)
    {
        var from = Math.Max(100, 6 * system.EveryDays);
        var to = last.DayNumber - first.DayNumber - Math.Max(120, 6 * system.EveryDays);
        return first.AddDays(from + draw.NextBelow(Math.Max(1, to - from)));
    }

    private static ExchangeDocument Document(IReadOnlyList<BankSystem> systems, IReadOnlyList<BankTechnician> technicians, HandMeters meters, ReagentLots lots, DateOnly last) => new()
    {
        Format = "logbook-exchange",
        Version = 1,
        Customers = [new Customer { Code = "CUS", Name = "Customer" }],
        People = [.. technicians.Select(t => new Person { Code = t.Code, Name = t.Name, Role = PersonRole.Technician })],
        Products = BankProducts.OnFile,
        Instruments = [.. technicians.Select(t => meters.Of(t.HandMeter))],
        Lots = [.. lots.All(last).Select(lot => new ReagentLot { Code = lot, Test = TestCodes.Inhibitor, Step = 5 })],
        Rules =
        [
            new Rule { Code = "R-DIP", Name = "Bank rule, dip slides", From = new DateOnly(2024, 1, 1), Test = TestCodes.DipSlide, EveryDays = 38, OperatingDaysOnly = true, Bands = [Band(1e4, Severity.Plan), Band(1e5, Severity.Act)] },
            new Rule { Code = "R-COL", Name = "Bank rule, colony counts", From = new DateOnly(2024, 1, 1), Test = TestCodes.ColonyCount, EveryDays = 38, OperatingDaysOnly = true, Bands = [Band(1e4, Severity.Plan), Band(1e5, Severity.Act)] },
            new Rule { Code = "R-LEG", Name = "Bank rule, Legionella", From = new DateOnly(2024, 1, 1), Test = TestCodes.Legionella, EveryDays = 95, OperatingDaysOnly = true, Bands = [Band(20, Severity.Plan), Band(1000, Severity.Act)] },
        ],
        Sites = [.. systems.Select(s => s.Site)],
        Systems = [.. systems.Select(s => s.Known)],
    };

    private static RuleBand Band(double from, Severity severity) => new() { From = from, Unit = "[CFU]/mL", Severity = severity };
}
