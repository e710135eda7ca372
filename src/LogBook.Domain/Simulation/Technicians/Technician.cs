using LogBook.Domain.Exchange;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Simulation.Technicians;

/// <summary>The technicians of one site: who comes reads what instruments show, keeps rules, forgets what the story makes him forget.</summary>
/// <remarks>
/// Reading errors are a demo choice near the engine's usual uncertainties: hand meter 1 % beside its common error, temperature compensation 1 %,
/// drops 5 % in whole drops, inhibitor 8 % in steps of 5 mg/L, pH 0.1, dip slide 0.5 decades in decades, drum level 1 % of its height in 0.5 cm,
/// dials exact, hours in tenths.
/// </remarks>
public sealed partial class Technician
{
    /// <summary>Minutes from arrival to the readings: he looks first.</summary>
    public const int MinutesToReading = 14;

    private const double FullWalkDays = 85;
    private const double ProbeCleanDays = 84;
    private const double ProbeTolerance = 0.05;

    private readonly WaterSystem _system;
    private readonly TimeZoneInfo _zone;
    private readonly SplitMix _error;
    private readonly SplitMix _ids;
    private readonly Slips _slips;
    private readonly SplitMix _haste;
    private readonly PlantSimulation _plant;
    private readonly Dictionary<string, double> _hoursAtStart = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, double> _lastDrumL = new(StringComparer.OrdinalIgnoreCase);
    private Meter? _meter;
    private double _dialStart;
    private double _dialAtRenewal;
    private double _totalStart;
    private double _lastFullWalk = double.NegativeInfinity;
    private double _lastProbeClean;
    private double _lastLegionella = double.NegativeInfinity;
    private double _lastColony = double.NegativeInfinity;
    private double _lastVisitDay = double.NegativeInfinity;
    private int _visits;
    private int _pouredSeen;
    private int _sample;
    private VisitedSystem? _lastRecord;

    /// <summary>A technician who takes a site over.</summary>
    /// <param name="system">Set-up and programmes of record.</param>
    /// <param name="plant">The plant.</param>
    /// <param name="zone">Time zone of the site.</param>
    /// <param name="seed">Seed of his reading errors.</param>
    public Technician(WaterSystem system, PlantSimulation plant, TimeZoneInfo zone, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(plant);
        _system = system;
        _plant = plant;
        _zone = zone;
        _error = SplitMix.For(seed, "readings");
        _ids = SplitMix.For(seed, "identities");
        _slips = new Slips(SplitMix.For(seed, "slips"));
        _haste = SplitMix.For(seed, "haste");
        _meter = system.Meters.Where(m => m.Measures == MeterMeasures.MakeUp).OrderBy(m => m.From ?? DateOnly.MinValue).FirstOrDefault();
        _dialStart = 1000 * (5 + _error.NextBelow(40));
        _totalStart = _dialStart;
        foreach (var output in system.Outputs)
        {
            _hoursAtStart[output.Code] = Math.Round(50 + (400 * _error.NextUnit()), 1);
        }
    }

    /// <summary>Makes one visit: runs the plant to it, reads, works, and writes it down.</summary>
    /// <param name="order">What is asked.</param>
    /// <returns>The visit.</returns>
    public Visit Visit(VisitOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        _plant.AdvanceTo(order.ArrivedUtc.AddMinutes(MinutesToReading));
        var local = order.ArrivedUtc + _zone.GetUtcOffset(order.ArrivedUtc);
        var day = DateOnly.FromDateTime(local);
        var programme = _system.Programmes.Where(p => p.From <= day).MaxBy(p => p.From) ?? _system.Programmes[0];
        if (order.Works == TechnicianKind.Inventing)
        {
            return Invented(order, day, programme);
        }

        var hurried = order.Works == TechnicianKind.Hurried;
        var first = _visits == 0;
        var found = SettingsList.Of(_plant.Settings);
        var ofRecord = SettingsList.Of(programme);
        var changed = !found.SequenceEqual(ofRecord);
        var walk = !hurried && (first || day.DayNumber - _lastFullWalk >= FullWalkDays || changed || order.Kind != VisitKind.Routine);
        var work = new Work(order, day, walk, Moment.Of(new DateTimeOffset(order.ArrivedUtc).ToOffset(_zone.GetUtcOffset(order.ArrivedUtc))));

        ReadWater(work, programme);
        ReadProbes(work, programme);
        ReadMeter(work);
        ReadHours(work);
        ReadSwitches(work);
        ReadSettings(work, found, ofRecord, programme, changed);
        ReadDrums(work);
        ReadPumps(work);
        Sample(work, first);
        DoTheRest(work, programme);
        if (hurried)
        {
            LeaveOut(work);
        }

        var minutes = hurried
            ? 15 + _haste.NextBelow(8)
            : 42 + (walk ? 28 : 0) + _error.NextBelow(18) + (_system.Outputs.Count * 2);
        var left = order.ArrivedUtc.AddMinutes(minutes);
        _plant.AdvanceTo(left);
        Leave(work);
        _visits++;
        _lastVisitDay = day.DayNumber;
        if (walk)
        {
            _lastFullWalk = day.DayNumber;
        }

        _slips.Apply(work.Readings, work.Meters, work.Drums, work.Hours, hurried ? 3 * Slips.Share : Slips.Share);
        return Written(order, work.Arrived, left, _lastRecord = work.ToRecord(_system.Code, _plant));
    }

    private Visit Written(VisitOrder order, Moment arrived, DateTime left, VisitedSystem record) =>
        new()
        {
            Id = VisitIds.Of(order.ArrivedUtc, _ids),
            Site = _system.Site,
            Technician = order.Technician,
            Kind = order.Kind,
            Arrived = arrived,
            Left = At(left),
            EnteredAt = At(left.AddMinutes(-4)),
            Systems = [record],
            Signatures =
            [
                new Signature { By = SignedBy.Technician, Name = order.TechnicianName },
                order.CustomerName is { } name
                    ? new Signature { By = SignedBy.Customer, Name = name }
                    : new Signature { By = SignedBy.Customer, AbsentReason = "office closed" },
            ],
        };

    private Moment At(DateTime utc) => Moment.Of(new DateTimeOffset(DateTime.SpecifyKind(utc, DateTimeKind.Utc)).ToOffset(_zone.GetUtcOffset(utc)));

    private double Off(double share) => 1 + (share * _error.NextNormal());

    private static double Step(double value, double step) => Math.Max(0, Math.Round(value / step, MidpointRounding.AwayFromZero) * step);

    private void ReadWater(Work work, Programme programme)
    {
        var order = work.Order;
        var display = Step(_plant.DisplayUsPerCm, 1);
        var reference = Step(_plant.ConductivityUsPerCm * (1 + order.HandMeterError) * Off(0.01) * Off(0.01), 1);
        work.Display = display;
        work.Reference = Step(reference * work.OutlierOf(TestCodes.Conductivity), 1);
        work.Add(SamplePoints.Tower, TestCodes.Conductivity, ReadingSource.Controller, display, "uS/cm");
        work.Add(SamplePoints.Tower, TestCodes.Conductivity, ReadingSource.Reference, work.Reference, "uS/cm", order.HandMeter);
        work.Add(SamplePoints.MakeUp, TestCodes.Conductivity, ReadingSource.Reference, Step(_plant.MakeUpOf(Substance.Conductance) * (1 + order.HandMeterError) * Off(0.01), 1), "uS/cm", order.HandMeter);
        work.Add(SamplePoints.Tower, TestCodes.Temperature, ReadingSource.Reference, Step(25 + (2 * _error.NextNormal()), 0.5), "Cel", order.HandMeter);
        var alkalinity = _plant.AlkalinityMgPerL;
        work.Add(SamplePoints.Tower, TestCodes.Ph, ReadingSource.Kit, Step(_plant.Ph + (0.07 * _error.NextNormal()), 0.1), "[pH]");
        work.Add(SamplePoints.MakeUp, TestCodes.Ph, ReadingSource.Kit, Step(PlantSimulation.PhOf(_plant.MakeUpOf(Substance.AlkalinityKept)) + (0.07 * _error.NextNormal()), 0.1), "[pH]");
        Drops(work, SamplePoints.Tower, TestCodes.Chloride, _plant.Of(Substance.Chloride), _plant.Of(Substance.Chloride) < 60 ? 2 : 5);
        Drops(work, SamplePoints.MakeUp, TestCodes.Chloride, _plant.MakeUpOf(Substance.Chloride), 1);
        Drops(work, SamplePoints.Tower, TestCodes.Calcium, _plant.Of(Substance.Calcium), _plant.Of(Substance.Calcium) < 200 ? 5 : 10);
        Drops(work, SamplePoints.MakeUp, TestCodes.Calcium, _plant.MakeUpOf(Substance.Calcium), 5);
        Drops(work, SamplePoints.Tower, TestCodes.Alkalinity, alkalinity, 10);
        Drops(work, SamplePoints.MakeUp, TestCodes.Alkalinity, _plant.MakeUpOf(Substance.AlkalinityKept), 5);
        var inhibitorLot = work.LotOf(TestCodes.Inhibitor);
        var factor = inhibitorLot is null ? 1 : order.LotFactors.GetValueOrDefault(inhibitorLot, 1);
        work.Add(SamplePoints.Tower, TestCodes.Inhibitor, ReadingSource.Kit, Step(_plant.Of(Substance.Inhibitor) * factor * Off(0.08) * work.OutlierOf(TestCodes.Inhibitor), 5), "mg/L", null, inhibitorLot);
        if (_plant.Of(Substance.Silica) > 0 && work.FullWalk)
        {
            work.Add(SamplePoints.Tower, TestCodes.Silica, ReadingSource.Kit, Step(_plant.Of(Substance.Silica) * Off(0.06), 1), "mg/L");
            work.Add(SamplePoints.MakeUp, TestCodes.Silica, ReadingSource.Kit, Step(_plant.MakeUpOf(Substance.Silica) * Off(0.06), 1), "mg/L");
        }

        if (_system.Probes.Any(p => p.Of == ProbeKind.Ph))
        {
            work.Add(SamplePoints.Tower, TestCodes.Ph, ReadingSource.Controller, Step(_plant.Ph, 0.01), "[pH]");
        }

        if (HasOrp)
        {
            work.Add(SamplePoints.Tower, TestCodes.Orp, ReadingSource.Controller, Step(_plant.OrpDisplayMv, 1), "mV");
        }

        if (HasOrp || programme.Ranges.Any(r => r.Test == TestCodes.FreeHalogen))
        {
            work.Add(SamplePoints.Tower, TestCodes.FreeHalogen, ReadingSource.Kit, Math.Round(Step(_plant.Of(Substance.Halogen) * Off(0.08), 0.05), 2), "mg/L");
        }
    }

    private bool HasOrp => _system.Probes.Any(p => p.Of == ProbeKind.Orp);

    private void Drops(Work work, string at, string test, double truth, double perDrop)
    {
        var outlier = at == SamplePoints.Tower ? work.OutlierOf(test) : 1;
        var drops = Math.Round(Math.Max(0, truth * Off(0.05) * outlier / perDrop), MidpointRounding.AwayFromZero);
        work.Readings.Add(new Reading { At = at, Test = test, Source = ReadingSource.Kit, Drops = drops, PerDrop = perDrop, Unit = "mg/L", Lot = work.LotOf(test) });
    }

    private void ReadProbes(Work work, Programme programme)
    {
        var probe = _system.Probes.FirstOrDefault(p => p.Of == ProbeKind.Conductivity);
        if (probe is null)
        {
            return;
        }

        var error = (work.Display / Math.Max(1, work.Reference)) - 1;
        var due = work.Day.DayNumber - _lastProbeClean >= ProbeCleanDays;
        var hurried = work.Order.Works == TechnicianKind.Hurried;
        var leaves = (hurried || work.Has(TechnicianActKind.LeaveProbe)) && !work.Has(TechnicianActKind.CalibrateDirty) && !work.Has(TechnicianActKind.CleanProbe);
        var dirty = work.Has(TechnicianActKind.CalibrateDirty);
        var cleans = !leaves && !dirty && (due || Math.Abs(error) > ProbeTolerance || work.Has(TechnicianActKind.CleanProbe));
        double? afterCleaning = null;
        ProbeCalibration? calibration = null;
        if (cleans)
        {
            _plant.CleanProbe();
            _lastProbeClean = work.Day.DayNumber;
            afterCleaning = Step(_plant.DisplayUsPerCm, 1);
            work.Events.Add(new VisitEvent { Type = EventType.ProbeCleaned, Of = probe.Code, At = work.After(26), By = work.Order.Technician });
        }

        var now = afterCleaning ?? work.Display;
        var calibrates = dirty || (cleans && Math.Abs((now / Math.Max(1, work.Reference)) - 1) > ProbeTolerance);
        if (calibrates)
        {
            var before = _plant.DisplayUsPerCm;
            _plant.CalibrateProbe(work.Reference);
            calibration = new ProbeCalibration
            {
                Against = CalibrationAgainst.HandMeter,
                FactorBefore = 1,
                FactorAfter = Math.Round(work.Reference / before, 3),
                Reason = dirty ? "display differs from hand meter" : "still off after cleaning",
            };
        }

        work.Probes.Add(new ProbeReading
        {
            Probe = probe.Code,
            Of = ProbeKind.Conductivity,
            SettledMin = hurried ? 2 + _haste.NextBelow(3) : 9 + _error.NextBelow(5),
            AsFound = work.Display,
            Reference = work.Reference,
            Instrument = work.Order.HandMeter,
            AfterCleaning = afterCleaning,
            AsLeft = calibrates ? work.Reference : now,
            Calibrated = calibrates,
            Calibration = calibration,
            Unit = "uS/cm",
        });
        ReadOrpProbe(work);
        _ = programme;
    }

    private void ReadOrpProbe(Work work)
    {
        if (_system.Probes.FirstOrDefault(p => p.Of == ProbeKind.Orp) is not { } orp || !(work.FullWalk || work.Has(TechnicianActKind.CleanOrp)))
        {
            return;
        }

        var found = Step(_plant.OrpDisplayMv, 1);
        double? after = null;
        if (work.Has(TechnicianActKind.CleanOrp))
        {
            _plant.CleanOrpProbe();
            after = Step(_plant.OrpDisplayMv, 1);
            work.Events.Add(new VisitEvent { Type = EventType.ProbeCleaned, Of = orp.Code, At = work.After(30), By = work.Order.Technician });
        }

        work.Probes.Add(new ProbeReading { Probe = orp.Code, Of = ProbeKind.Orp, AsFound = found, AfterCleaning = after, AsLeft = after ?? found, Calibrated = false, Unit = "mV" });
    }

    private void ReadMeter(Work work)
    {
        if (_meter is not { } meter)
        {
            return;
        }

        var reading = new MeterReading { Meter = meter.Code, Dial = DialOf(meter), Total = TotalOf(meter) };
        if (work.ActOf(TechnicianActKind.RenewMeter) is { } act)
        {
            var oldFinal = reading.Dial;
            _plant.RenewMeter();
            _meter = _system.Meters.Where(m => m.Measures == MeterMeasures.MakeUp).MaxBy(m => m.From ?? DateOnly.MinValue)!;
            _dialStart = act.Value;
            _dialAtRenewal = _plant.DialL;
            reading = reading with { Dial = DialOf(_meter), Replaced = true, OldFinal = oldFinal, NewStart = act.Value, ReplacedOn = work.Day };
            work.Events.Add(new VisitEvent { Type = EventType.Other, Of = meter.Code, At = work.After(35), By = work.Order.Technician, Note = "make-up meter renewed" });
        }

        work.Meters.Add(reading);
    }

    private double DialOf(Meter meter)
    {
        var counts = _dialStart + Math.Floor(((_plant.DialL - _dialAtRenewal) / (LitresOf(meter.Unit) * (meter.DialMultiplier ?? 1))) + 1e-9);
        var turn = 1.0;
        for (var i = 0; i < meter.Digits; i++)
        {
            turn *= 10;
        }

        return counts % turn;
    }

    private double TotalOf(Meter meter) => _totalStart + Math.Floor((_plant.CountedL / LitresOf(meter.Unit)) + 1e-9);

    private static double LitresOf(string unit) => unit switch
    {
        "m3" => 1000,
        "[gal_us]" => 3.785411784,
        _ => 1,
    };

    private void ReadHours(Work work)
    {
        foreach (var output in _system.Outputs)
        {
            var hours = _hoursAtStart[output.Code] + _plant.HoursRun(output.Code);
            work.Hours.Add(new HoursReading { Output = output.Code, Hours = Math.Round(Math.Floor((hours * 10) + 1e-6) / 10, 1) });
        }
    }

    private void ReadSwitches(Work work)
    {
        foreach (var output in _system.Outputs)
        {
            var found = _plant.SwitchOf(output.Code);
            var forgets = work.ActOf(TechnicianActKind.LeaveForcedOn)?.Part is { } part && string.Equals(part, output.Code, StringComparison.OrdinalIgnoreCase);
            if (!forgets)
            {
                work.Switches.Add(new SwitchReading { Output = output.Code, Found = found, Left = SwitchPosition.Automatic });
                _plant.SetSwitch(output.Code, SwitchPosition.Automatic);
            }
        }
    }

    private void ReadSettings(
        Work work, IReadOnlyList<KeyValuePair<string, SettingValue>> found, IReadOnlyList<KeyValuePair<string, SettingValue>> ofRecord, Programme programme, bool changed)
    {
        var foundBy = found.ToDictionary(s => s.Key, s => s.Value);
        var recordBy = ofRecord.ToDictionary(s => s.Key, s => s.Value);
        var newProgramme = _lastVisitDay > double.NegativeInfinity && programme.From.DayNumber > _lastVisitDay;
        foreach (var name in ofRecord.Select(s => s.Key).Concat(found.Select(s => s.Key)).Distinct(StringComparer.Ordinal))
        {
            if (!work.FullWalk && !IsShort(name))
            {
                continue;
            }

            var (was, left) = (foundBy.GetValueOrDefault(name, SettingValue.None), recordBy.GetValueOrDefault(name, SettingValue.None));
            work.Settings.Add(new SettingReading
            {
                Name = name,
                Found = was,
                Left = left,
                Reason = was == left ? null : newProgramme ? "new programme" : "put back as last left",
            });
        }

        if (changed)
        {
            _plant.Settings = programme;
        }

        work.ClockOff = Math.Round(_plant.ClockOffMin + _error.NextBelow(3) - 1);
        work.Week = _plant.ProgrammeWeek;
        if (Math.Abs(_plant.ClockOffMin) > 10 || _plant.WeekOff != 0)
        {
            _plant.ClockOffMin = 0;
            _plant.WeekOff = 0;
        }
    }

    private static bool IsShort(string name) =>
        name is "setPointUsPerCm" or "differentialUsPerCm" or "highAlarmUsPerCm" or "lowAlarmUsPerCm"
        || name.EndsWith("/mode", StringComparison.Ordinal) || name.EndsWith("/starts", StringComparison.Ordinal) || name.EndsWith("/runSeconds", StringComparison.Ordinal);

    private void ReadDrums(Work work)
    {
        foreach (var drum in _system.Drums)
        {
            if (drum.Shape == DrumShape.ByWeight)
            {
                work.Drums.Add(Weigh(work, drum));
                continue;
            }

            var litres = _plant.DrumL(drum.Code);
            var capacity = drum.CapacityL ?? 1;
            var height = drum.HeightCm ?? 100;
            var level = litres <= (drum.UnusableL ?? 0) + 0.01
                ? Step((drum.UnusableL ?? 0) / capacity * height, 0.5)
                : Math.Min(height, Step((litres / capacity * height) + (work.Order.DrumLevelShare * height * _error.NextNormal()), 0.5));
            var reading = new DrumReading { Drum = drum.Code, Level = level, Unit = "cm", ProductFound = drum.Product };
            if (work.ActOf(TechnicianActKind.SwapDrum, drum.Code) is { } swap)
            {
                // The label is not scanned: what stands there is not written down.
                _plant.SwapDrum(drum.Code, swap.Text!, swap.Value);
                reading = reading with { Swapped = true, Left = Step(swap.Value / capacity * height, 0.5), ProductFound = null };
            }
            else if (work.ActOf(TechnicianActKind.CorrectDrum, drum.Code) is not null)
            {
                var wrong = _plant.DrumHolds(drum.Code);
                _plant.SwapDrum(drum.Code, drum.Product, 0.9 * capacity);
                reading = reading with { Swapped = true, Left = Step(0.9 * height, 0.5), ProductFound = wrong };
                work.Observations.Add(new Observation { About = drum.Code, Text = "Wrong product on this pump, exchanged", Severity = Findings.Severity.Act });
            }
            else
            {
                var pack = capacity > 400 ? 200 : capacity > 90 ? 25 : capacity > 40 ? 10 : 5;
                var used = _lastDrumL.TryGetValue(drum.Code, out var last) ? Math.Max(0, last - litres) : 0.2 * capacity;
                var packs = Math.Floor(((0.97 * capacity) - litres) / pack);
                if ((litres < 0.4 * capacity || litres < 1.6 * used) && packs > 0 && work.ActOf(TechnicianActKind.LeaveDrum, drum.Code) is null)
                {
                    _plant.AddToDrum(drum.Code, packs * pack);
                    reading = reading with { AddedL = packs * pack, Lot = $"{drum.Product}-{work.Day.Year % 100:00}{work.Day.Month:00}" };
                }
            }

            _lastDrumL[drum.Code] = _plant.DrumL(drum.Code);
            work.Drums.Add(reading);
        }
    }

    /// <summary>A feeder of solid product is weighed and topped up by the bag.</summary>
    private DrumReading Weigh(Work work, Drum drum)
    {
        const double BagKg = 1;
        var density = _plant.DensityOf(drum.Product);
        var kg = _plant.DrumL(drum.Code) * density;
        var reading = new DrumReading { Drum = drum.Code, Level = Step((drum.TareKg ?? 0) + kg + (0.02 * _error.NextNormal()), 0.1), Unit = "kg", ProductFound = drum.Product };
        var bags = Math.Floor((((drum.CapacityL ?? 0) * density) - kg) / BagKg);
        if (kg < 0.5 * (drum.CapacityL ?? 0) * density && bags > 0)
        {
            _plant.AddToDrum(drum.Code, bags * BagKg / density);
            reading = reading with { AddedL = Math.Round(bags * BagKg / density, 3), Lot = $"{drum.Product}-{work.Day.Year % 100:00}{work.Day.Month:00}" };
        }

        return reading;
    }

    private void ReadPumps(Work work)
    {
        foreach (var pump in _system.Pumps)
        {
            if (work.FullWalk)
            {
                work.Pumps.Add(new PumpReading { Pump = pump.Code, StrokeFound = 60, StrokeLeft = 60, SpeedFound = 100, SpeedLeft = 100 });
            }

            if (work.ActOf(TechnicianActKind.RenewPump, pump.Output) is not null)
            {
                _plant.RenewPump(pump.Output);
                work.Events.Add(new VisitEvent { Type = EventType.PumpRenewed, Of = pump.Code, At = work.After(38), By = work.Order.Technician });
            }
        }
    }

    private void Sample(Work work, bool first)
    {
        var order = work.Order;
        var next = work.Day.DayNumber + order.NextInDays;
        var decades = _plant.DipSlideLog + (0.5 * _error.NextNormal());
        var taken = work.After(33);
        var slide = Math.Round(decades, MidpointRounding.AwayFromZero);
        work.Readings.Add(new Reading
        {
            At = SamplePoints.Tower,
            Test = TestCodes.DipSlide,
            Source = ReadingSource.Kit,
            Value = slide < 3 ? 1000 : PowerOfTen((int)slide),
            Qualifier = slide < 3 ? "<" : null,
            Unit = "[CFU]/mL",
            TakenAt = taken,
            ResultAt = At(MidnightUtc(order.ArrivedUtc).AddDays(2).AddHours(8)),
            Incubation = new Incubation { DegC = 30, Hours = 48 },
        });
        if (work.Has(TechnicianActKind.NoLab))
        {
            return;
        }

        if (first || order.Kind == VisitKind.StartUp || next - _lastColony > order.ColonyCountEveryDays)
        {
            _lastColony = work.Day.DayNumber;
            var count = PortableMath.Exp(2.302585092994046 * (_plant.DipSlideLog - 0.4 + (0.25 * _error.NextNormal())));
            var step = count >= 1000 ? 100.0 : 10.0;
            Laboratory(work, TestCodes.ColonyCount, Math.Max(10, Step(count, step)), null, taken, 5);
        }

        if (first || order.Kind == VisitKind.StartUp || work.Has(TechnicianActKind.SampleLegionella) || next - _lastLegionella > order.LegionellaEveryDays)
        {
            _lastLegionella = work.Day.DayNumber;
            var found = work.ActOf(TechnicianActKind.Outlier, TestCodes.Legionella)?.Value;
            Laboratory(work, TestCodes.Legionella, found ?? 10, found is null ? "<" : null, taken, 11);
        }
    }

    private void Laboratory(Work work, string test, double value, string? qualifier, Moment taken, int days)
    {
        _sample++;
        var id = $"{_system.Site}-{_sample:000}";
        var result = At(MidnightUtc(work.Order.ArrivedUtc).AddDays(days).AddHours(14));
        work.Readings.Add(new Reading
        {
            At = SamplePoints.Tower,
            Test = test,
            Source = ReadingSource.Lab,
            Value = value,
            Qualifier = qualifier,
            Unit = "[CFU]/mL",
            TakenAt = taken,
            ResultAt = result,
            ReceivedAt = result,
            Lab = work.Order.Laboratory,
            LabRef = "L" + id,
            SampleId = id,
        });
    }

    private static DateTime MidnightUtc(DateTime utc) => utc - utc.TimeOfDay;

    private static double PowerOfTen(int exponent)
    {
        var value = 1.0;
        for (var i = 0; i < Math.Min(exponent, 7); i++)
        {
            value *= 10;
        }

        return value;
    }

    private void DoTheRest(Work work, Programme programme)
    {
        if (work.FullWalk)
        {
            var litres = (_system.BleedValveLPerH ?? 0) > 4000 ? 200 : 20;
            if (_visits % 2 == 0 && _plant.IsRunning)
            {
                // From a valve that passes next to nothing no bucket fills.
                work.BleedTest = _plant.BleedValveLPerH < 0.1 * (_system.BleedValveLPerH ?? 0) ? null : new BleedTest { Litres = litres, Seconds = Step(litres / _plant.BleedValveLPerH * 3600 * Off(0.03), 1) };
                foreach (var pump in _system.Pumps.Take(1))
                {
                    work.Drawdowns.Add(new Drawdown { Pump = pump.Code, Millilitres = Step(_plant.PumpLPerH(pump.Output) * 1000 / 60 * Off(0.02), 1), Seconds = 60 });
                }
            }

            work.Events.Add(new VisitEvent { Type = EventType.StrainerCleaned, Of = "basin", At = work.After(48), By = work.Order.Technician });
        }

        foreach (var act in work.Order.Acts)
        {
            switch (act.Act)
            {
                case TechnicianActKind.Observe:
                    work.Observations.Add(new Observation { About = act.Part ?? "tower", Text = act.Text ?? "", Severity = act.Value >= 2 ? Findings.Severity.Act : act.Value >= 1 ? Findings.Severity.Plan : Findings.Severity.Watch });
                    break;
                case TechnicianActKind.StopLeak:
                    _plant.StopLeak();
                    work.Events.Add(new VisitEvent { Type = EventType.Other, At = work.After(40), By = work.Order.Technician, Note = act.Text });
                    break;
                case TechnicianActKind.RenewValve:
                    _plant.RenewBleedValve();
                    work.Events.Add(new VisitEvent { Type = EventType.ValveRenewed, Of = act.Part ?? "bleed", At = work.After(40), By = work.Order.Technician });
                    break;
                case TechnicianActKind.CleanSystem:
                    Clean(work, programme);
                    break;
                default:
                    break;
            }
        }

        if (_error.NextUnit() < 0.12)
        {
            var (about, text) = Remarks[_error.NextBelow(Remarks.Length)];
            work.Observations.Add(new Observation { About = about, Text = text, Severity = Findings.Severity.Watch });
        }

        if (work.ActOf(TechnicianActKind.Started) is { } started)
        {
            work.Events.Add(new VisitEvent { Type = EventType.Started, At = work.After(-(int)(started.Value * 1440)), Note = "started by site staff" });
        }
        else if (work.Order.Kind == VisitKind.StartUp)
        {
            work.Events.Add(new VisitEvent { Type = EventType.Started, At = work.After(47), By = work.Order.Technician });
        }
        else if (work.Order.Kind == VisitKind.ShutDown)
        {
            work.Events.Add(new VisitEvent { Type = EventType.Stopped, At = work.After(52), By = work.Order.Technician, Note = "end of the season" });
        }

        for (; _pouredSeen < _plant.Poured.Count; _pouredSeen++)
        {
            var (utc, product, litres) = _plant.Poured[_pouredSeen];
            if (utc.AddDays(28) > work.Order.ArrivedUtc)
            {
                work.Additions.Add(new Addition { Product = product, Amount = litres, Unit = "L", To = "basin", At = At(utc), Reason = "poured by site staff, from their sheet" });
            }
        }

        foreach (var alarm in _plant.Alarms)
        {
            work.Alarms.Add(new AlarmReading { Text = alarm, Standing = false });
        }

        _plant.ClearAlarms();
        ActOnRanges(work, programme);
    }

    private static readonly (string About, string Text)[] Remarks =
    [
        ("basin", "light silt in the corner of the basin"),
        ("fill", "fill clean where it can be seen"),
        ("drift-eliminators", "eliminators in place, dry behind"),
        ("strainer", "a few leaves in the strainer"),
        ("float-valve", "float valve shuts tight"),
    ];

    private void Clean(Work work, Programme programme)
    {
        var litres = Step(_system.VolumeL ?? 0, 100);
        work.Events.Add(new VisitEvent { Type = EventType.Drained, At = work.After(20), Litres = litres, By = work.Order.Technician });
        work.Events.Add(new VisitEvent { Type = EventType.Cleaned, At = work.After(30), By = work.Order.Technician });
        work.Events.Add(new VisitEvent { Type = EventType.Disinfected, At = work.After(35), By = work.Order.Technician });
        work.Events.Add(new VisitEvent { Type = EventType.Refilled, At = work.After(45), Litres = litres, By = work.Order.Technician });
        _plant.Refill();
        if (_system.Drums is [var drum, ..] && programme.Feeds is [{ TargetMgPerL: { } target }, ..])
        {
            var amount = Math.Round(target * (_system.VolumeL ?? 0) / 1e6 / _plant.DensityOf(drum.Product), 2);
            _plant.Pour(drum.Product, amount);
            work.Additions.Add(new Addition { Product = drum.Product, Amount = amount, Unit = "L", To = "basin", At = work.After(46), Reason = "first charge after refilling" });
        }
    }

    /// <summary>Every value outside its range gets an action with an owner and a day.</summary>
    private void ActOnRanges(Work work, Programme programme)
    {
        foreach (var range in programme.Ranges)
        {
            var reading = work.Readings.FirstOrDefault(r => r.At == range.At && r.Test == range.Test && r.Source != ReadingSource.Controller);
            var value = reading?.Value ?? (reading?.Drops * reading?.PerDrop);
            if (value is not { } number || (!(number < range.Low) && !(number > range.High)))
            {
                continue;
            }

            work.Actions.Add(new VisitAction
            {
                Id = VisitIds.Of(work.Order.ArrivedUtc.AddMinutes(50), _ids),
                For = range.Test,
                Text = number < range.Low ? $"{range.Test} low: look at feed and settings" : $"{range.Test} high: look at feed and settings",
                Owner = work.Order.Technician,
                Due = work.Day.AddDays((int)Math.Max(1, Math.Min(28, work.Order.NextInDays))),
                State = ActionState.Open,
            });
        }
    }

    private void Leave(Work work)
    {
        if (work.ActOf(TechnicianActKind.LeaveForcedOn)?.Part is { } output)
        {
            _plant.SetSwitch(output, SwitchPosition.ForcedOn);
        }
    }
}
