using LogBook.Domain.Exchange;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Simulation.Technicians;

/// <content>A visit made up in the van, and one made in haste.</content>
public sealed partial class Technician
{
    /// <summary>Tests that are left out first when time is short.</summary>
    private static readonly string[] LongTests = [TestCodes.Chloride, TestCodes.Calcium, TestCodes.Alkalinity, TestCodes.Silica, TestCodes.FreeHalogen];

    private int _invented;

    /// <summary>Each longer test is left out two times of five; nothing is drawn down or timed into a bucket.</summary>
    private void LeaveOut(Work work)
    {
        foreach (var test in LongTests)
        {
            if (_haste.NextUnit() < 0.4)
            {
                work.Readings.RemoveAll(r => r.Test == test && r.Source != ReadingSource.Controller);
            }
        }

        work.Drawdowns.Clear();
        work.BleedTest = null;
    }

    /// <summary>
    /// Nothing is read: the display stands a little under its set point as it always does, tests repeat the last visit,
    /// the meter advances by the same count whatever time has passed, drums by the same height. The plant is not touched.
    /// </summary>
    private Visit Invented(VisitOrder order, DateOnly day, Programme programme)
    {
        var arrived = At(order.ArrivedUtc);
        var left = order.ArrivedUtc.AddMinutes(6 + _haste.NextBelow(4));
        _plant.AdvanceTo(left);
        var last = _lastRecord ?? throw new InvalidOperationException("The first visit to a site cannot be made up.");
        var setPoint = Step(programme.SetPointUsPerCm ?? 0, 10);
        var shown = _invented % 2 == 0 ? setPoint - 10 : setPoint;
        var step = order.Acts.FirstOrDefault(a => a.Act == TechnicianActKind.Invent)?.Value ?? 0;
        _invented++;
        var record = new VisitedSystem
        {
            System = _system.Code,
            Running = true,
            InUse = true,
            ClockOffByMin = 0,
            ProgrammeWeek = _plant.ProgrammeWeek,
            Readings = [.. last.Readings.Where(r => r.Source != ReadingSource.Lab && r.Test != TestCodes.Silica).Select(r => Repeated(r, shown, order, At(order.ArrivedUtc.AddMinutes(3)), programme))],
            Probes =
            [
                .. last.Probes.Where(p => p.Of == ProbeKind.Conductivity).Select(p => new ProbeReading
                {
                    Probe = p.Probe,
                    Of = p.Of,
                    AsFound = shown,
                    Reference = shown,
                    Instrument = order.HandMeter,
                    AsLeft = shown,
                    Calibrated = false,
                    Unit = p.Unit,
                }),
            ],
            Meters = [.. last.Meters.Select(m => new MeterReading { Meter = m.Meter, Dial = m.Dial + step, Total = m.Total + step })],
            Drums = [.. last.Drums.Select(d => d with { Level = Math.Max(0, LeftLevel(d) - StepOf(d.Drum)), AddedL = null, Lot = null, Swapped = null, Left = null })],
            Switches = [.. _system.Outputs.Select(o => new SwitchReading { Output = o.Code, Found = SwitchPosition.Automatic, Left = SwitchPosition.Automatic })],
            Settings = [.. SettingsList.Of(programme).Where(s => IsShort(s.Key)).Select(s => new SettingReading { Name = s.Key, Found = s.Value, Left = s.Value })],
        };
        _lastRecord = record;
        _visits++;
        _lastVisitDay = day.DayNumber;
        return Written(order, arrived, left, record);
    }

    private Reading Repeated(Reading last, double shown, VisitOrder order, Moment taken, Programme programme)
    {
        var copied = last with { Instrument = last.Instrument is null ? null : order.HandMeter, Lot = last.Lot is null ? null : order.Lots.GetValueOrDefault(last.Test) };
        return (last.At, last.Test) switch
        {
            (SamplePoints.Tower, TestCodes.Conductivity) => copied with { Value = shown },
            (SamplePoints.MakeUp, TestCodes.Conductivity) => copied with { Value = Step(last.Value ?? 0, 10) },
            (SamplePoints.Tower, TestCodes.Inhibitor) => copied with { Value = programme.Feeds.FirstOrDefault(f => f.TargetMgPerL is not null)?.TargetMgPerL },
            (_, TestCodes.Temperature) => copied with { Value = 25 },
            (_, TestCodes.DipSlide) => copied with
            {
                Value = 1000,
                Qualifier = "<",
                TakenAt = taken,
                ResultAt = At(MidnightUtc(order.ArrivedUtc).AddDays(2).AddHours(8)),
            },
            _ => copied,
        };
    }

    /// <summary>Level a drum was left at, in the unit of its reading.</summary>
    private double LeftLevel(DrumReading reading)
    {
        if (reading.Left is { } left)
        {
            return left;
        }

        var drum = _system.Drums.First(d => d.Code == reading.Drum);
        var added = reading.AddedL ?? 0;
        return (reading.Level ?? 0) + (drum.Shape == DrumShape.ByWeight
            ? added * _plant.DensityOf(drum.Product)
            : added / (drum.CapacityL ?? 1) * (drum.HeightCm ?? 100));
    }

    /// <summary>What a drum is said to lose each time: a tenth of its height, half a kilogram of solids.</summary>
    private double StepOf(string code)
    {
        var drum = _system.Drums.First(d => d.Code == code);
        return drum.Shape == DrumShape.ByWeight ? 0.5 : Step(0.1 * (drum.HeightCm ?? 100), 0.5);
    }
}
