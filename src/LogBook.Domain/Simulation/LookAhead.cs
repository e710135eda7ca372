using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Simulation;

/// <summary>Runs a programme ahead over some weeks: what its doses, holds and bleeds do to the water if the set-up is right.</summary>
/// <remarks>
/// The plant of the set-up, at an even share of its full load, with steady make-up and weather; one week runs unseen first, so that the weeks
/// shown begin in the middle of the plan's own round. Residuals fall by the water lost alone: how fast a product is used up is not in the
/// set-up, so they are an upper bound. Feeds by ORP, pH or residual, and by hand, are left out. Drums are never empty here.
/// </remarks>
public static class LookAhead
{
    /// <summary>Share of the full load when nothing else is said: a busy-season mean over the day (demo choice, common practice without source).</summary>
    public const double UsualLoadShare = 0.7;

    /// <summary>Gap between two biocides where no label gives one, h (findings, from memory).</summary>
    public const double GapWithoutLabelHours = 24;

    private const int SettlingDays = 7;

    /// <summary>Runs a programme ahead.</summary>
    /// <param name="firm">Set-up with the products.</param>
    /// <param name="site">The site; its time zone counts.</param>
    /// <param name="system">An open recirculating system with the pumps and drums of one day (see <see cref="PartsOnDay.Of"/>), with volume, full load and bleed valve.</param>
    /// <param name="programme">The programme; it needs a set point and the make-up's conductivity.</param>
    /// <param name="from">First day, local; the first day of the plan's week 1 when null.</param>
    /// <param name="weeks">Weeks, 1 to 52.</param>
    /// <param name="loadShare">Mean load as a share of the full load, above 0 to 1.</param>
    /// <returns>What happened, or what is missing; paths are those of the exchange format within the system.</returns>
    public static (LookAheadResult? Result, IReadOnlyList<Issue> Missing) Run(
        FirmSetUp firm, Site site, WaterSystem system, Programme programme, DateOnly? from = null, int weeks = 4, double loadShare = UsualLoadShare)
    {
        ArgumentNullException.ThrowIfNull(firm);
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(programme);
        ArgumentOutOfRangeException.ThrowIfLessThan(weeks, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(weeks, 52);
        var missing = Missing(system, programme);
        if (missing.Count > 0)
        {
            return (null, missing);
        }

        var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
        var first = from ?? DosePlans.PlanCalendar.Anchor(programme);
        var products = Products(firm, system);
        var simulated = programme with { Feeds = [.. programme.Feeds.Where(f => !IsLeftOut(f))] };
        var plant = new PlantSimulation(
            Model(firm, system, programme, products, loadShare),
            system with { Drums = [.. system.Drums.Select(d => d with { CapacityL = 1e6, UnusableL = 0 })] },
            simulated,
            zone,
            Midnight(first.AddDays(-SettlingDays), zone),
            1);
        var followed = products.Where(product => simulated.Feeds.Any(feed => system.Drums.Any(drum => Same(drum.Code, feed.Drum) && Same(drum.Product, product.Code)))).ToList();
        plant.AdvanceTo(Midnight(first, zone));
        plant.ClearAlarms();
        plant.KeepsLog = true;
        var start = plant.Utc;
        var bledBefore = plant.Balance.BledL;
        var end = Midnight(first.AddDays(7 * weeks), zone);
        var hours = new List<LookAheadHour>();
        for (var at = start; at < end; at = at.AddHours(1))
        {
            plant.AdvanceTo(at);
            hours.Add(new LookAheadHour(at, plant.ConductivityUsPerCm, [.. followed.Select(p => plant.Of(p.Becomes))]));
        }

        plant.AdvanceTo(end);
        var doses = Doses(plant.Log, system, programme);
        var peak = Peak(hours, plant.Log);
        return (new LookAheadResult
        {
            From = first,
            Weeks = weeks,
            Products = [.. followed.Select(p => p.Code)],
            LeftOut = [.. programme.Feeds.Where(IsLeftOut).Select(f => f.Output ?? f.Drum)],
            Events = [.. plant.Log],
            Doses = doses,
            Clashes = Clashes(firm, doses),
            Bleeds = Bleeds(plant.Log, end, plant.Balance.BledL - bledBefore),
            Peak = peak,
            HighAlarmUsPerCm = programme.HighAlarmUsPerCm,
            Alarms = [.. plant.Alarms.Order(StringComparer.Ordinal)],
            Hours = hours,
        }, []);
    }

    private static List<Issue> Missing(WaterSystem system, Programme programme)
    {
        var missing = new List<Issue>();
        void Need(bool has, string path, string what)
        {
            if (!has)
            {
                missing.Add(new Issue(path, "required", $"{what} is needed to run the programme ahead."));
            }
        }

        Need(system.Kind == SystemKind.OpenRecirculating, "kind", "an open recirculating system");
        Need(system.VolumeL is > 0, "volumeL", "the volume");
        Need(system.FullLoadKw is > 0, "fullLoadKw", "the full load");
        Need(system.BleedValveLPerH is > 0, "bleedValveLPerH", "the flow of the bleed valve");
        Need(programme.SetPointUsPerCm is > 0, "setPointUsPerCm", "the set point");
        Need(programme.MakeUp?.ConductivityUsPerCm is > 0, "makeUp.conductivityUsPerCm", "the conductivity of the make-up");
        return missing;
    }

    private static bool IsLeftOut(Feed feed) => feed.Mode is FeedMode.ByOrp or FeedMode.ByPh or FeedMode.ByResidual or FeedMode.ByHand or FeedMode.Feeder;

    private static PlantModel Model(FirmSetUp firm, WaterSystem system, Programme programme, IReadOnlyList<PlantProduct> products, double loadShare)
    {
        var cycles = programme.TargetCycles ?? (programme.SetPointUsPerCm!.Value / programme.MakeUp!.ConductivityUsPerCm!.Value);
        var inhibitor = products.FirstOrDefault(p => p.Becomes == Substance.Inhibitor);
        var feed = programme.Feeds.FirstOrDefault(f => system.Drums.Any(d => d.Code.Equals(f.Drum, StringComparison.OrdinalIgnoreCase) && Same(d.Product, inhibitor?.Code)));
        return new PlantModel
        {
            VolumeL = system.VolumeL!.Value,
            BleedLPerH = system.BleedValveLPerH!.Value,
            HeatKw = system.FullLoadKw!.Value * loadShare,
            Load = new LoadProfile { WeatherShare = 0 },
            MakeUp = programme.MakeUp!,
            SeasonShare = 0,
            WeekShare = 0,
            ProbeShare = 0,
            UsualInhibitorMgPerL = feed?.TargetMgPerL ?? (inhibitor is null ? 0 : firm.Products[inhibitor.Code].DoseMgPerL ?? 0),
            Products = products,
            StartCycles = Math.Max(1, 0.97 * cycles),
        };
    }

    /// <summary>What each product of the drums becomes in the water; those that tell no level are left out.</summary>
    private static List<PlantProduct> Products(FirmSetUp firm, WaterSystem system)
    {
        var list = new List<PlantProduct>();
        foreach (var code in system.Drums.Select(d => d.Product).Distinct(StringComparer.OrdinalIgnoreCase))
        {
            if (!firm.Products.TryGetValue(code, out var product))
            {
                continue;
            }

            Substance? becomes = product.Kind switch
            {
                ProductKind.Inhibitor => Substance.Inhibitor,
                ProductKind.Biocide when product.Oxidising == true => Substance.Halogen,
                ProductKind.Biocide => list.Exists(p => p.Becomes == Substance.Biocide) ? Substance.SecondBiocide : Substance.Biocide,
                _ => null,
            };
            if (becomes is { } substance && !list.Exists(p => p.Becomes == substance))
            {
                list.Add(new PlantProduct { Code = product.Code, Becomes = substance, DensityKgPerL = product.DensityKgPerL ?? 1, ContactHours = product.LabelContactHours ?? 0 });
            }
        }

        return list;
    }

    private static List<LookAheadDose> Doses(IReadOnlyList<PlantEvent> log, WaterSystem system, Programme programme)
    {
        var doses = new List<LookAheadDose>();
        foreach (var due in log.Where(e => e.What == PlantEventKind.DoseDue))
        {
            PlantEvent? After(PlantEventKind kind, DateTime at) => log.FirstOrDefault(e => e.What == kind && e.Of == due.Of && e.Utc >= at);
            var started = After(PlantEventKind.DoseStarted, due.Utc);
            var ended = started is null ? null : After(PlantEventKind.DoseEnded, started.Utc);
            var held = ended is null ? null : After(PlantEventKind.HoldEnded, ended.Utc);
            var bleedDown = log.FirstOrDefault(e => e.What == PlantEventKind.BleedDownStarted && e.Of == due.Of && e.Utc >= due.Utc && (started is null || e.Utc <= started.Utc));
            doses.Add(new LookAheadDose
            {
                Output = due.Of,
                Product = ProductOf(system, programme, due.Of),
                Due = due.Utc,
                BleedDownFrom = bleedDown?.Utc,
                Started = started?.Utc,
                StartUsPerCm = started?.UsPerCm,
                Ended = ended?.Utc,
                HeldUntil = held?.Utc,
                EndUsPerCm = held?.UsPerCm,
            });
        }

        return doses;
    }

    private static string? ProductOf(WaterSystem system, Programme programme, string output)
    {
        var drum = programme.Feeds.FirstOrDefault(f => Same(f.Output, output))?.Drum ?? system.Pumps.FirstOrDefault(p => Same(p.Output, output))?.Drum;
        return system.Drums.FirstOrDefault(d => Same(d.Code, drum))?.Product;
    }

    private static List<LookAheadClash> Clashes(FirmSetUp firm, List<LookAheadDose> doses)
    {
        var clashes = new List<LookAheadClash>();
        for (var i = 0; i < doses.Count; i++)
        {
            for (var j = i + 1; j < doses.Count; j++)
            {
                var (one, other) = (doses[i], doses[j]);
                if (Same(one.Output, other.Output) || one.Started is not { } first || other.Started is not { } second)
                {
                    continue;
                }

                if (second < first)
                {
                    (one, other, first, second) = (other, one, second, first);
                }

                if (other.Due < (one.HeldUntil ?? one.Ended ?? first) && other.Due >= (one.BleedDownFrom ?? first))
                {
                    clashes.Add(new LookAheadClash(LookAheadClashKind.DueDuringTheOther, one.Output, other.Output, other.Due, (second - other.Due).TotalHours, null));
                }

                var gap = Gap(firm, one.Product, other.Product);
                var apart = (second - (one.Ended ?? first)).TotalHours;
                if (gap > 0 && apart < gap)
                {
                    clashes.Add(new LookAheadClash(LookAheadClashKind.GapTooShort, one.Output, other.Output, second, apart, gap));
                }
            }
        }

        return clashes;
    }

    // Two of the same product keep their label's own distance; that is judged with the records, not here.
    private static double Gap(FirmSetUp firm, string? one, string? other)
    {
        if (one is null || other is null || Same(one, other)
            || !firm.Products.TryGetValue(one, out var a) || !firm.Products.TryGetValue(other, out var b)
            || a.Kind != ProductKind.Biocide || b.Kind != ProductKind.Biocide)
        {
            return 0;
        }

        return a.LabelGapHours is null && b.LabelGapHours is null ? GapWithoutLabelHours : Math.Max(a.LabelGapHours ?? 0, b.LabelGapHours ?? 0);
    }

    private static LookAheadBleeds Bleeds(IReadOnlyList<PlantEvent> log, DateTime end, double litres)
    {
        var minutes = new List<double>();
        DateTime? open = null;
        foreach (var entry in log)
        {
            if (entry.What == PlantEventKind.BleedOpened)
            {
                open = entry.Utc;
            }
            else if (entry.What == PlantEventKind.BleedShut && open is { } since)
            {
                minutes.Add((entry.Utc - since).TotalMinutes);
                open = null;
            }
        }

        if (open is { } still)
        {
            minutes.Add((end - still).TotalMinutes);
        }

        return new LookAheadBleeds(minutes.Count, minutes.Sum() / 60, minutes.Count == 0 ? 0 : minutes.Max(), litres);
    }

    private static LookAheadPeak Peak(List<LookAheadHour> hours, IReadOnlyList<PlantEvent> log) =>
        hours.Select(h => new LookAheadPeak(h.Utc, h.UsPerCm)).Concat(log.Select(e => new LookAheadPeak(e.Utc, e.UsPerCm))).MaxBy(p => p.UsPerCm)!;

    private static bool Same(string? a, string? b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static DateTime Midnight(DateOnly day, TimeZoneInfo zone)
    {
        var local = day.ToDateTime(TimeOnly.MinValue);
        while (zone.IsInvalidTime(local))
        {
            local = local.AddMinutes(15);
        }

        return DateTime.SpecifyKind(local - zone.GetUtcOffset(local), DateTimeKind.Utc);
    }
}
