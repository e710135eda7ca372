using System.Globalization;
using LogBook.Domain.Exchange;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Application.Demo;

/// <summary>One site over the months: its plant runs, a technician comes, visits are written.</summary>
internal sealed class DemoSiteRun
{
    private readonly DemoSiteFile _file;
    private readonly DemoFirmFile _firm;
    private readonly DemoMeters _meters;
    private readonly ulong _seed;
    private readonly TimeZoneInfo _zone = TimeZoneInfo.FindSystemTimeZoneById(DemoSiteBuilder.Zone);

    public DemoSiteRun(DemoSiteFile file, DemoFirmFile firm, DemoMeters meters, ulong seed)
    {
        _file = file;
        _firm = firm;
        _meters = meters;
        _seed = SplitMix.For(seed, file.Code).NextBits();
        Site = DemoSiteBuilder.Site(file, firm);
        System = DemoSiteBuilder.System(file, firm);
    }

    public Site Site { get; }

    public WaterSystem System { get; }

    public List<Visit> Visits { get; } = [];

    public List<DemoTruth> Truths { get; } = [];

    /// <summary>Runs from the beginning of June 2025, so that the first visit meets a settled plant.</summary>
    public void Run(DateOnly lastDay)
    {
        var start = new DateTime(2025, 6, 1, 0, 0, 0, DateTimeKind.Utc);
        var plant = new PlantSimulation(DemoSiteBuilder.Plant(_file, _firm, _seed), System, System.Programmes[0], _zone, start, _seed);
        var plates = SplitMix.For(_seed, "pumps");
        foreach (var pump in System.Pumps)
        {
            plant.SetPumpBias(pump.Output, 1 + Math.Clamp(0.02 * plates.NextNormal(), -0.05, 0.05));
        }

        plant.Schedule(_file.Story);
        if (_file.Poured is { } poured)
        {
            plant.Schedule(Enumerable.Range(0, 200)
                .Select(i => poured.First.AddDays(28 * i))
                .TakeWhile(on => DateOnly.FromDateTime(on) <= lastDay)
                .Select(on => new ScenarioEntry { On = on, Act = ScenarioAct.Poured, Text = poured.Product, Value = poured.Litres }));
        }

        var technician = new Technician(System, plant, _zone, _seed);
        var jitter = SplitMix.For(_seed, "arrivals");
        var records = SplitMix.For(_seed, "record-only");
        var lastRecord = new Dictionary<string, int>(StringComparer.Ordinal);
        var days = Days(lastDay);
        for (var i = 0; i < days.Count; i++)
        {
            var day = days[i];
            var arrived = Arrival(day, jitter);
            var acts = _file.Acts.Where(a => a.Covers(day)).ToList();
            var signs = jitter.NextUnit() < 0.85;
            if (acts.Exists(a => a.Act == TechnicianActKind.Miss))
            {
                continue;
            }

            // What was true when he read it, before he set anything right.
            plant.AdvanceTo(arrived.AddMinutes(Technician.MinutesToReading));
            var truth = new DemoTruth(
                _file.Code, Guid.Empty, arrived, plant.Cycles, plant.ConductivityUsPerCm, plant.DisplayUsPerCm, plant.Of(Substance.Inhibitor), plant.Of(Substance.Biocide), plant.Balance.MakeUpL, plant.Balance.BledL);
            var visit = AddRecordOnly(technician.Visit(Order(days, i, arrived, acts, signs)), day, records, lastRecord);
            Visits.Add(visit);
            Truths.Add(truth with { VisitId = visit.Id });
        }
    }

    private VisitOrder Order(List<DateOnly> days, int i, DateTime arrived, List<TechnicianAct> acts, bool signs)
    {
        var day = days[i];
        var code = acts.Find(a => a.Act == TechnicianActKind.StandIn)?.Text ?? _file.Technician;
        var meter = _firm.HandMeters[code];
        var gap = i == 0 ? 0 : day.DayNumber - days[i - 1].DayNumber;
        var nextInDays = i + 1 < days.Count ? days[i + 1].DayNumber - day.DayNumber : _file.Visits.EveryDays;
        var lots = _firm.LotsInUse
            .Where(l => l.From <= day && (l.Sites.Count == 0 || l.Sites.Contains(_file.Code, StringComparer.Ordinal)))
            .GroupBy(l => l.Test, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.OrderBy(l => l.From).ThenBy(l => l.Sites.Count).Last(), StringComparer.Ordinal);
        var seasonal = _file.Operation?.Seasons.Count > 0;
        return new VisitOrder
        {
            ArrivedUtc = arrived,
            Technician = code,
            TechnicianName = _firm.People.First(p => p.Code == code).Name,
            HandMeter = meter,
            HandMeterError = _meters.ErrorAt(meter, day),
            Lots = lots.ToDictionary(l => l.Key, l => l.Value.Lot, StringComparer.Ordinal),
            LotFactors = lots.Values.ToDictionary(l => l.Lot, l => l.Factor, StringComparer.Ordinal),
            Kind = seasonal && (gap > 60 || (i == 0 && !InSeason(day.AddDays(-14)))) ? VisitKind.StartUp : seasonal && nextInDays > 60 ? VisitKind.ShutDown : VisitKind.Routine,
            Works = acts.Exists(a => a.Act == TechnicianActKind.Invent) ? TechnicianKind.Inventing
                : acts.Exists(a => a.Act == TechnicianActKind.Hurry) ? TechnicianKind.Hurried
                : TechnicianKind.Honest,
            Acts = acts,
            NextInDays = Math.Min(nextInDays, 60),
            LegionellaEveryDays = Interval("legionella", day),
            ColonyCountEveryDays = Interval("colony-count", day),
            Laboratory = _firm.Laboratory,
            CustomerName = signs ? _file.Signs : null,
        };
    }

    private double Interval(string test, DateOnly day) =>
        _firm.Rules.Where(r => r.Test == test && r.From <= day && (r.To is null || r.To >= day)).Select(r => r.EveryDays).FirstOrDefault() ?? 365;

    private DateTime Arrival(DateOnly day, SplitMix jitter)
    {
        var at = TimeOnly.ParseExact(_file.Visits.At, "HH:mm", CultureInfo.InvariantCulture);
        var local = day.ToDateTime(at).AddMinutes(jitter.NextBelow(40) - 10);
        return DateTime.SpecifyKind(local - _zone.GetUtcOffset(local), DateTimeKind.Utc);
    }

    private List<DateOnly> Days(DateOnly lastDay)
    {
        var plan = _file.Visits;
        var days = new List<DateOnly>();
        var day = plan.First;
        while (day <= lastDay)
        {
            if (InSeason(day))
            {
                var planned = day;
                var shift = _file.Acts.FirstOrDefault(a => a.Act == TechnicianActKind.Shift && a.Covers(planned))?.Value ?? 0;
                days.Add(day.AddDays((int)shift));
                day = Next(day);
            }
            else
            {
                // The first visit of a season is on the first weekday of the round in it.
                day = day.AddDays(plan.Days.Count > 0 ? 1 : 7);
            }
        }

        return days;
    }

    private DateOnly Next(DateOnly day)
    {
        if (_file.Visits.Days.Count == 0)
        {
            return day.AddDays((int)_file.Visits.EveryDays);
        }

        do
        {
            day = day.AddDays(1);
        }
        while (!_file.Visits.Days.Contains((Domain.Programmes.Weekday)(((int)day.DayOfWeek + 6) % 7)));
        return day;
    }

    private bool InSeason(DateOnly day)
    {
        if (_file.Operation is not { Seasons.Count: > 0 } operation)
        {
            return true;
        }

        var code = day.ToString("MM-dd", CultureInfo.InvariantCulture);
        return operation.Seasons.Any(s => string.CompareOrdinal(s.From, s.To) <= 0
            ? string.CompareOrdinal(code, s.From) >= 0 && string.CompareOrdinal(code, s.To) <= 0
            : string.CompareOrdinal(code, s.From) >= 0 || string.CompareOrdinal(code, s.To) <= 0);
    }

    private Visit AddRecordOnly(Visit visit, DateOnly day, SplitMix records, Dictionary<string, int> last)
    {
        var more = new List<VisitedSystem>();
        foreach (var only in _file.RecordOnly)
        {
            if (last.TryGetValue(only.System.Code, out var before) && day.DayNumber - before < only.EveryDays)
            {
                continue;
            }

            last[only.System.Code] = day.DayNumber;
            more.Add(new VisitedSystem
            {
                System = only.System.Code,
                Running = true,
                InUse = true,
                Readings =
                [
                    .. only.Readings.Select(r => new Reading
                    {
                        At = r.At,
                        Test = r.Test,
                        Source = ReadingSource.Kit,
                        Value = Math.Round(Math.Round((r.Mean + (r.Deviation * records.NextNormal())) / r.Step) * r.Step, 3),
                        Unit = r.Unit,
                    }),
                ],
            });
        }

        return more.Count == 0 ? visit : visit with { Systems = [.. visit.Systems, .. more] };
    }
}
