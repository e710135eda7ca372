using System.Globalization;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Sites;

namespace LogBook.Bank.Firms;

/// <summary>Draws one system: water, load, controller, feeds, equipment that is missing, visits.</summary>
/// <remarks>Pumps, valves and settings are sized by the mass balance, so that a healthy system runs near its targets whatever was drawn.</remarks>
internal sealed class SystemDraw
{
    private static readonly string[] Zones = ["Europe/London", "Europe/Madrid", "America/Chicago", "America/Sao_Paulo"];
    private static readonly double[] Swing = [-1, -0.87, -0.5, 0, 0.5, 0.87, 1, 0.87, 0.5, 0, -0.5, -0.87];

    private readonly SplitMix _draw;
    private readonly Traits _traits;
    private readonly DateOnly _first;
    private readonly DateOnly _last;

    private double _volumeL;
    private double _heatKw;
    private double _cycles;
    private double _lossLPerH;
    private double _valveLPerH;
    private double _trueValveLPerH;
    private double _share;
    private MakeUpWater _water = new();
    private double _rawCalcium;
    private double _scale;
    private double _setPoint;

    private SystemDraw(SplitMix draw, Traits traits, DateOnly first, DateOnly last) => (_draw, _traits, _first, _last) = (draw, traits, first, last);

    public static BankSystem Of(ulong seed, string code, Traits traits, BankTechnician technician, DateOnly first, DateOnly last) =>
        new SystemDraw(SplitMix.For(seed, code), traits, first, last).Draw(seed, code, technician);

    private BankSystem Draw(ulong seed, string code, BankTechnician technician)
    {
        DrawWater();
        var operation = DrawOperation();
        var target = _draw.OneOf(70.0, 85, 95, 110, 120);
        var inhibitor = _draw.OneOf("IN-1", "IN-2");
        var mode = _traits.InhibitorMode ?? _draw.OneOf(FeedMode.ByMakeUpVolume, FeedMode.ByMakeUpVolume, FeedMode.AlongsideBleed, FeedMode.FixedShare, FeedMode.ShareOfLastBleed);
        var hasMeter = _traits.MakeUpMeter ?? (mode == FeedMode.ByMakeUpVolume || _draw.Chance(0.85));
        var hasTotal = _traits.Pulses ?? (mode == FeedMode.ByMakeUpVolume || _draw.Chance(0.8));
        var us = _draw.Chance(0.3);
        var zone = us ? "America/Chicago" : Zones[_draw.NextBelow(Zones.Length)];
        var everyDays = _draw.OneOf(7, 7, 14, 14, 14, 21, 28, 28);
        everyDays = Math.Min(everyDays, _traits.LongestInterval ?? 28);

        var meterUnit = us ? "[gal_us]" : _volumeL > 8000 ? "m3" : "L";
        var meter = new Meter
        {
            Code = "W1",
            Measures = MeterMeasures.MakeUp,
            Unit = meterUnit,
            Digits = meterUnit == "m3" ? 6 : 8,
            LitresPerPulse = us ? 37.85411784 : meterUnit == "m3" ? 100 : 10,
        };

        var drums = new List<Drum>();
        var pumps = new List<Pump>();
        var feeds = new List<Feed>();
        var outputs = new List<Output> { new() { Code = "purge", Drives = OutputDrives.Bleed } };
        var use = new Dictionary<string, double>(StringComparer.Ordinal);

        var lossPerDay = 24 * _lossLPerH * _share;
        var perDay = target * lossPerDay / 1e6 / BankProducts.DensityOf(inhibitor);
        feeds.Add(InhibitorFeed(mode, target, inhibitor, perDay, out var rated));
        Equip(drums, pumps, outputs, "T-1", inhibitor, "out-1", rated, perDay, everyDays);
        use["T-1"] = perDay;

        var biocide = _traits.TwoBiocides || _traits.DosesClash ? "BI-1" : _draw.OneOf("BI-1", "BI-2");
        var slots = DoseFeeds(feeds, drums, pumps, outputs, use, biocide, everyDays, operation);
        if (_traits.Orp || (!_traits.DosesClash && _draw.Chance(0.1)))
        {
            AddOxidant(feeds, drums, pumps, outputs, use, everyDays, slots);
        }

        var hasOrp = outputs.Exists(o => o.Code == "out-ox");
        var metals = _draw.OneOf<Metal[]>([Metal.Steel, Metal.Copper], [Metal.Steel, Metal.Galvanised], [Metal.Stainless, Metal.Copper]);
        var rules = _draw.Chance(0.6) ? new[] { "R-DIP", "R-COL", "R-LEG" } : ["R-LEG"];
        var probes = new List<Probe> { new() { Code = "K1", Of = ProbeKind.Conductivity } };
        if (hasOrp)
        {
            probes.Add(new Probe { Code = "R1", Of = ProbeKind.Orp });
        }

        var full = new WaterSystem
        {
            Site = code,
            Code = "A",
            Name = "Tower " + code,
            Kind = SystemKind.OpenRecirculating,
            VolumeL = _volumeL,
            FullLoadKw = Math.Round(_heatKw * 1.35),
            BleedValveLPerH = Draws.Plate(_valveLPerH),
            Metals = metals,
            Rules = rules,
            Operation = operation,
            Probes = probes,
            Outputs = outputs,
            Meters = hasMeter ? [meter] : [],
            Drums = drums,
            Pumps = pumps,
            Programmes = [ProgrammeOf(feeds, target, hasOrp)],
        };

        var months = _draw.Between(0, mode == FeedMode.FixedShare ? 0.08 : 0.25);
        var deposits = 1.3 * _cycles * _rawCalcium;
        var model = new PlantModel
        {
            VolumeL = _volumeL * OffPlate(),
            BleedLPerH = _trueValveLPerH,
            DriftLPerH = _draw.Between(0.01, 0.05) * _lossLPerH,
            HeatKw = _heatKw,
            Load = new LoadProfile { Months = [.. Swing.Select(s => 1 + (months * s))] },
            MakeUp = _water,
            UsualInhibitorMgPerL = target,
            DepositAboveMgPerL = deposits,
            DepositPerHour = 0.03,
            Products = BankProducts.InThePlant,
            StartCycles = _cycles * 0.98,
        };

        var habits = new PaperHabits
        {
            MakeUpMeter = hasMeter,
            Total = hasTotal,
            Gauges = _traits.Gauges ?? _draw.Chance(0.93),
            Chloride = _draw.Chance(0.92),
            Calcium = _traits.MakeUpTested || _draw.Chance(0.9),
            Silica = _draw.Chance(0.3),
            MakeUpEvery = _traits.MakeUpTested ? 1 : _draw.OneOf(1, 1, 1, 2),
            PumpReadings = _draw.Chance(0.7),
            BleedTests = _draw.Chance(0.75),
            LevelUnit = _draw.OneOf("cm", "cm", "%", "L", us ? "[in_i]" : "cm"),
            ConductivityUnit = _draw.Chance(0.08) ? "mS/cm" : "uS/cm",
            Fahrenheit = us,
        };

        var known = full with
        {
            BleedValveLPerH = _draw.Chance(0.9) ? full.BleedValveLPerH : null,
            Pumps = _draw.Chance(0.85) ? full.Pumps : [.. full.Pumps.Select(p => p with { RatedLPerH = null })],
            Meters = hasMeter ? [hasTotal ? meter : meter with { LitresPerPulse = null }] : [],
            FullLoadKw = _draw.Chance(0.7) ? full.FullLoadKw : null,
        };

        var days = VisitDays(operation, everyDays);
        return new BankSystem
        {
            Seed = SplitMix.For(seed, code + " run").NextBits(),
            Site = new Site
            {
                Code = code,
                Customer = "CUS",
                Name = "Site " + code,
                TimeZone = zone,
                VisitEveryDays = everyDays,
                Units = us ? UnitSystem.Us : UnitSystem.Metric,
                AssignedTo = technician.Code,
            },
            Full = full,
            Known = known,
            Model = model,
            Technician = technician,
            Habits = habits,
            Days = days,
            EveryDays = everyDays,
            Acts = HealthyActs(operation, days),
            DesignLPerDay = use,
            RawCalcium = _rawCalcium,
            LossLPerDay = lossPerDay,
            Zone = TimeZoneInfo.FindSystemTimeZoneById(zone),
        };
    }

    /// <summary>Plates: volume and valve flow up to 15 % off (trade guide 6.4).</summary>
    private double OffPlate() => 1 + Math.Clamp(0.07 * _draw.NextNormal(), -0.15, 0.15);

    private void DrawWater()
    {
        // Half-lives from 5 h to 100 h, as in the trade guide's table of sites.
        double halfLife;
        do
        {
            _volumeL = Draws.Plate(_draw.Ratio(2500, 180_000));
            _heatKw = Draws.Plate(_volumeL / 1000 * _draw.Ratio(25, 160));
            var conductivity = Math.Round(_draw.Between(110, 620));
            _rawCalcium = Math.Round(conductivity * _draw.Between(0.17, 0.32));
            _cycles = _draw.OneOf(2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7);
            while (_cycles > 2.5 && (conductivity * _cycles > 2900 || _rawCalcium * _cycles > 650))
            {
                _cycles -= 0.5;
            }

            _water = new MakeUpWater
            {
                ConductivityUsPerCm = conductivity,
                CalciumMgPerLAsCaCO3 = _traits.Softened ? Math.Round(_draw.Between(6, 12)) : _rawCalcium,
                AlkalinityMgPerLAsCaCO3 = Math.Round(conductivity * _draw.Between(0.17, 0.28)),
                ChlorideMgPerL = Math.Round(conductivity * _draw.Between(0.06, 0.11)),
                SilicaMgPerL = Math.Round(_draw.Between(3, 16)),
            };
            _lossLPerH = _heatKw * 1.26 / (_cycles - 1);
            halfLife = 0.693 * _volumeL / _lossLPerH;
        }
        while (halfLife is < 5 or > 100);

        _scale = 1 - (0.025 * (_cycles - 1));
        _setPoint = Math.Round(_cycles * _water.ConductivityUsPerCm!.Value * _scale);
        _valveLPerH = Draws.Plate(_lossLPerH * _draw.Between(4, 8));
        _trueValveLPerH = _valveLPerH * OffPlate();
    }

    private Operation? DrawOperation()
    {
        _share = 1;
        if (_traits.NightOff)
        {
            _share = 15 / 24.0;
            return new Operation { Week = [new OperatingHours { Days = Enum.GetValues<Weekday>(), From = "06:00", To = "21:00" }] };
        }

        var stops = new List<Stop>();
        if (_traits.LongStop || _draw.Chance(0.2))
        {
            var from = _first.AddDays(150 + _draw.NextBelow(250));
            stops.Add(new Stop { From = from, To = from.AddDays(6 + _draw.NextBelow(10)), Reason = "works" });
        }

        if (!_traits.RoundTheClock && _draw.Chance(0.15))
        {
            _share = 5 / 7.0;
            return new Operation
            {
                Week = [new OperatingHours { Days = [Weekday.Monday, Weekday.Tuesday, Weekday.Wednesday, Weekday.Thursday, Weekday.Friday], From = "00:00", To = "24:00" }],
                Stops = stops,
            };
        }

        return stops.Count > 0 ? new Operation { Stops = stops } : null;
    }

    private Feed InhibitorFeed(FeedMode mode, double target, string product, double perDay, out double rated)
    {
        var density = BankProducts.DensityOf(product);

        // Whoever set the pump trimmed it by the residual: to within about 5 % of what this valve needs.
        var valve = _trueValveLPerH * (1 + Math.Clamp(0.04 * _draw.NextNormal(), -0.08, 0.08));
        var feed = new Feed { Drum = "T-1", Output = "out-1", Mode = mode, TargetMgPerL = target };
        switch (mode)
        {
            case FeedMode.ByMakeUpVolume:
                rated = Draws.Plate(Math.Max(0.4, perDay / 24 / _share * _draw.Between(12, 30)));
                var every = _lossLPerH * _cycles > 1500 ? 1000.0 : 100;
                return feed with { EveryL = every, RunSeconds = Math.Round(target * every / _cycles / 1e6 / density / rated * 3600, 1) };
            case FeedMode.AlongsideBleed:
                rated = Math.Round(target * valve * 1.03 / 1e6 / density, 3);
                return feed with { LongestFeedMin = 240 };
            case FeedMode.FixedShare:
                rated = Draws.Plate(Math.Max(0.2, perDay / 24 / _share * _draw.Between(8, 20)));
                return feed with { CycleMin = 30, SharePercent = Math.Round(perDay / 24 / _share / rated * 100, 1) };
            default:
                rated = Draws.Plate(Math.Max(0.2, target * valve / 1e6 / density / _draw.Between(0.2, 0.4)));
                return feed with { SharePercent = Math.Round(target * valve * 1.03 / 1e6 / density / rated * 100, 1), LongestFeedMin = 120 };
        }
    }

    /// <summary>As many doses a week as keep bacteria down in this water, on days that leave the label's gap.</summary>
    private int DoseFeeds(List<Feed> feeds, List<Drum> drums, List<Pump> pumps, List<Output> outputs, Dictionary<string, double> use, string biocide, int everyDays, Operation? operation)
    {
        var fading = (0.693 / (0.693 * _volumeL / _lossLPerH)) + (0.693 / 36);
        var perWeek = Math.Clamp((int)Math.Ceiling(0.32 * 168 * fading / 1.79), 1, 5);
        var days = perWeek switch
        {
            1 => new[] { Weekday.Wednesday },
            2 => [Weekday.Tuesday, Weekday.Friday],
            3 => [Weekday.Monday, Weekday.Wednesday, Weekday.Friday],
            4 => [Weekday.Monday, Weekday.Tuesday, Weekday.Thursday, Weekday.Friday],
            _ => [Weekday.Monday, Weekday.Tuesday, Weekday.Wednesday, Weekday.Thursday, Weekday.Friday],
        };
        var hour = _traits.NightOff ? 10 : 18 + _draw.NextBelow(5);
        var starts = FormattableString.Invariant($"{hour:00}:{_draw.OneOf(0, 15, 30):00}");
        var dose = _traits.OverLabel ? _draw.Between(185, 230) : _draw.Between(90, 120);
        feeds.Add(DoseFeed(drums, pumps, outputs, use, "T-2", "out-2", biocide, Math.Round(dose), days, [1, 2, 3, 4], starts, everyDays));
        if (_traits.DosesClash)
        {
            feeds.Add(DoseFeed(drums, pumps, outputs, use, "T-3", "out-3", "BI-2", 100, [days[0]], [1, 3], FormattableString.Invariant($"{(hour + 5) % 24:00}:00"), everyDays));
        }
        else if (_traits.TwoBiocides || (perWeek <= 2 && biocide == "BI-1" && _draw.Chance(0.3)))
        {
            // Sunday lies more than 24 h from every other dose; a plant idle at weekends has none.
            feeds.Add(operation?.Week.Count > 0
                ? DoseFeed(drums, pumps, outputs, use, "T-3", "out-3", "BI-2", 100, [perWeek == 1 ? Weekday.Monday : Weekday.Wednesday], [2, 4], starts, everyDays)
                : DoseFeed(drums, pumps, outputs, use, "T-3", "out-3", "BI-2", 100, [Weekday.Sunday], [1, 3], starts, everyDays));
        }

        return feeds.Count - 1;
    }

    private Feed DoseFeed(
        List<Drum> drums, List<Pump> pumps, List<Output> outputs, Dictionary<string, double> use, string drum, string output, string product, double target, Weekday[] days, int[] weeks, string start, int everyDays)
    {
        var litres = target * _volumeL / 1e6 / BankProducts.DensityOf(product);
        var rated = Draws.Plate(litres / _draw.Between(0.25, 0.55));
        var perDay = litres * days.Length * weeks.Length / 28;
        use[drum] = perDay;
        Equip(drums, pumps, outputs, drum, product, output, rated, perDay, everyDays);

        // The hold that lets conductivity rise by 9 % of the set point at twice the mean load; longer than contact time is not needed.
        var risePerHour = _heatKw * 1.26 * _water.ConductivityUsPerCm!.Value / _volumeL;
        var fits = 0.09 * _setPoint / (1.5 * risePerHour);
        var hold = _traits.HoldTooLong && drum == "T-2"
            ? Math.Ceiling(0.35 * _setPoint / risePerHour) * 60
            : Math.Floor(Math.Min(BankProducts.ContactOf(product), fits) * 4) / 4 * 60;
        return new Feed
        {
            Drum = drum,
            Output = output,
            Mode = FeedMode.DosePlan,
            TargetMgPerL = target,
            Weeks = weeks,
            Days = days,
            Starts = [start],
            RunMinutes = Math.Round(litres / rated * 60, 1),
            BleedDownFirst = hold > 0 && _draw.Chance(0.6) ? new BleedDown { Minutes = 60, ToUsPerCm = Math.Round(0.94 * _setPoint) } : null,
            HoldBleedShutMin = hold > 0 ? hold : null,
            InhibitorMeanwhile = InhibitorMeanwhile.Waits,
        };
    }

    private void AddOxidant(List<Feed> feeds, List<Drum> drums, List<Pump> pumps, List<Output> outputs, Dictionary<string, double> use, int everyDays, int doseFeeds)
    {
        var need = 0.5 * ((0.693 / 7) + (_lossLPerH / _volumeL)) * _volumeL / 1e6 / 0.11 / BankProducts.DensityOf(BankProducts.Oxidant);
        use["T-OX"] = need * 24 * _share;
        Equip(drums, pumps, outputs, "T-OX", BankProducts.Oxidant, "out-ox", Draws.Plate(need * 5), use["T-OX"], everyDays);
        feeds.Add(new Feed
        {
            Drum = "T-OX",
            Output = "out-ox",
            Mode = FeedMode.ByOrp,
            SetPoint = 650,
            Differential = 15,
            Unit = "mV",
            Direction = FeedDirection.Up,
            LongestFeedMin = 300,
            WaitsFor = [.. Enumerable.Range(2, doseFeeds).Select(i => FormattableString.Invariant($"out-{i}")).Where(o => outputs.Exists(x => x.Code == o))],
        });
    }

    private static void Equip(
        List<Drum> drums, List<Pump> pumps, List<Output> outputs, string drum, string product, string output, double rated, double perDay, int everyDays)
    {
        // A drum holds at least three visits' use; the sizes are those of common packages.
        var want = Math.Max(25, perDay * Math.Max(14, everyDays) * 3.2);
        var capacity = new[] { 25.0, 60, 120, 200, 400, 1000, 2000, 4000, 8000 }.First(c => c >= Math.Min(want, 8000));
        drums.Add(new Drum
        {
            Code = drum,
            Product = product,
            Shape = DrumShape.VerticalCylinder,
            CapacityL = capacity,
            HeightCm = capacity switch { <= 25 => 38, <= 60 => 58, <= 120 => 80, <= 200 => 90, <= 400 => 105, <= 1000 => 115, _ => 160 },
            UnusableL = Math.Round(0.03 * capacity, 1),
            DeliveryDays = 7,
        });
        pumps.Add(new Pump { Code = "P-" + drum, Drum = drum, Output = output, RatedLPerH = rated });
        outputs.Add(new Output { Code = output, Drives = OutputDrives.Feed });
    }

    private Programme ProgrammeOf(List<Feed> feeds, double target, bool hasOrp)
    {
        var ranges = new List<TestRange>
        {
            new() { At = SamplePoints.Tower, Test = TestCodes.Inhibitor, Low = Math.Round(0.72 * target / 5) * 5, High = Math.Round(1.4 * target / 5) * 5, Unit = "mg/L" },
            PhRange(),
        };
        if (_draw.Chance(0.6))
        {
            ranges.Add(new TestRange { At = SamplePoints.Tower, Test = TestCodes.Conductivity, Low = Math.Round(0.84 * _setPoint), High = Math.Round(1.12 * _setPoint), Unit = "uS/cm" });
        }

        if (hasOrp)
        {
            ranges.Add(new TestRange { At = SamplePoints.Tower, Test = TestCodes.FreeHalogen, Low = 0.15, High = 1.2, Unit = "mg/L" });
        }

        return new Programme
        {
            From = _first.AddDays(-40),
            TargetCycles = _cycles,
            SetPointUsPerCm = _setPoint,
            DifferentialUsPerCm = Math.Max(5, Math.Round(_setPoint * _draw.Between(0.015, 0.03))),
            BleedActs = BleedActs.OnRise,
            DisplayAverageSeconds = 5,
            HighAlarmUsPerCm = Math.Round(1.22 * _setPoint),
            LowAlarmUsPerCm = Math.Round(0.72 * _setPoint),
            LongestBleedMin = LongestBleed(feeds),
            PlanWeeks = 4,
            Ranges = ranges,
            Feeds = feeds,
            MakeUp = _water,
        };
    }

    private TestRange PhRange()
    {
        // pH of aerated water by its alkalinity, as the simulated technician finds it.
        var usual = 4.4 + (1.6 * Math.Log10(Math.Max(20, _cycles * _water.AlkalinityMgPerLAsCaCO3!.Value)));
        return new TestRange { At = SamplePoints.Tower, Test = TestCodes.Ph, Low = Math.Round(usual - 0.9, 1), High = Math.Round(usual + 0.9, 1), Unit = "[pH]" };
    }

    /// <summary>Three times what the valve needs at full load to come down from the rise of a hold.</summary>
    private double LongestBleed(List<Feed> feeds)
    {
        var evaporation = _heatKw * 1.26 * 1.5;
        var fall = ((Draws.Plate(_valveLPerH) * _setPoint) - ((evaporation + _valveLPerH) * _water.ConductivityUsPerCm!.Value)) / _volumeL;
        var hold = feeds.Max(f => f.HoldBleedShutMin ?? 0) / 60 * evaporation * _water.ConductivityUsPerCm!.Value / _volumeL;
        var hours = (Math.Min(hold, 0.2 * _setPoint) + (0.03 * _setPoint)) / Math.Max(fall, 0.01 * _setPoint);
        return Math.Clamp(Math.Ceiling(3 * hours * 60 / 10) * 10, 60, 1400);
    }

    private List<DateOnly> VisitDays(Operation? operation, int everyDays)
    {
        var days = new List<DateOnly>();
        var jitter = everyDays <= 14 ? 1 : 2;
        for (var planned = _first.AddDays(_draw.NextBelow(7)); planned <= _last; planned = planned.AddDays(everyDays))
        {
            var day = planned.AddDays(_draw.NextBelow((2 * jitter) + 1) - jitter);
            day = day.DayOfWeek == DayOfWeek.Saturday ? day.AddDays(-1) : day.DayOfWeek == DayOfWeek.Sunday ? day.AddDays(1) : day;

            // While the works are shut nobody comes; the visit is made soon after the restart.
            foreach (var stop in operation?.Stops ?? [])
            {
                day = day >= stop.From && day <= stop.To.AddDays(1) ? stop.To.AddDays(3) : day;
                day = day.DayOfWeek == DayOfWeek.Saturday ? day.AddDays(2) : day.DayOfWeek == DayOfWeek.Sunday ? day.AddDays(1) : day;
            }

            if (days.Count == 0 || day > days[^1].AddDays(2))
            {
                days.Add(day);
            }
        }

        return days;
    }

    private List<TechnicianAct> HealthyActs(Operation? operation, List<DateOnly> days)
    {
        var acts = new List<TechnicianAct>();
        foreach (var stop in operation?.Stops ?? [])
        {
            if (days.FirstOrDefault(d => d > stop.To) is var after && after != default)
            {
                acts.Add(new TechnicianAct { On = after, Act = TechnicianActKind.CleanSystem });
                acts.Add(new TechnicianAct { On = after, Act = TechnicianActKind.SampleLegionella });
            }
        }

        // An honest slip about every sixty visits: one kit result a third off.
        foreach (var day in days)
        {
            if (_draw.Chance(1 / 60.0))
            {
                acts.Add(new TechnicianAct
                {
                    On = day,
                    Act = TechnicianActKind.Outlier,
                    Part = _draw.OneOf(TestCodes.Chloride, TestCodes.Inhibitor, TestCodes.Calcium, TestCodes.Alkalinity),
                    Value = _draw.OneOf(0.67, 1.4),
                });
            }
        }

        return acts;
    }

    internal static string Two(int number) => number.ToString("00", CultureInfo.InvariantCulture);
}
