using LogBook.Bank.Firms;
using LogBook.Domain.Exchange;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Visits;

namespace LogBook.Bank.Runs;

/// <summary>A visit nobody made: the last one written again with even steps, a few minutes long, no settling, drum levels guessed from the last.</summary>
internal static class InventedVisit
{
    public static Visit After(IReadOnlyList<Visit> visits, DateTime arrived, BankSystem system, SplitMix draw)
    {
        var (before, last) = (visits[^2], visits[^1]);
        var (a, b) = (before.Systems[0], last.Systems[0]);
        var at = Moment.Of(new DateTimeOffset(arrived).ToOffset(system.Zone.GetUtcOffset(arrived)));
        Moment After(int minutes) => Moment.Of(new DateTimeOffset(arrived).ToOffset(system.Zone.GetUtcOffset(arrived)).AddMinutes(minutes));
        var minutes = 5 + draw.NextBelow(5);
        return last with
        {
            Id = VisitIds.Of(arrived, draw),
            Arrived = at,
            Left = After(minutes),
            EnteredAt = After(minutes - 1),
            Systems =
            [
                b with
                {
                    Readings = [.. b.Readings.Where(r => r.ResultAt is null).Select(r => r.Test == "conductivity" && r.Unit == "uS/cm" ? r with { Value = Math.Round(r.Value!.Value / 10) * 10 } : r)],
                    Probes = [.. b.Probes.Select(p => p with { SettledMin = null, AfterCleaning = null, Calibrated = false, Calibration = null, AsLeft = p.AsFound })],
                    Meters = [.. b.Meters.Select(m => Step(a.Meters.FirstOrDefault(x => x.Meter == m.Meter), m))],
                    Drums = [.. b.Drums.Where(d => d.Level is not null).Select(d => Guessed(d, (arrived - last.Arrived.Utc).TotalDays, system))],
                    HoursRun = [.. b.HoursRun.Select(h => h with { Hours = Math.Round(h.Hours + Math.Round(Math.Max(1, h.Hours - (a.HoursRun.FirstOrDefault(x => x.Output == h.Output)?.Hours ?? (h.Hours - 5)))), 1) })],
                    Pumps = [],
                    Drawdowns = [],
                    BleedTest = null,
                    Settings = [.. b.Settings.Select(s => s with { Found = s.Left ?? s.Found, Reason = null })],
                    Events = [],
                    Alarms = [],
                    Observations = [],
                    Actions = [],
                    Additions = [],
                },
            ],
        };
    }

    /// <summary>He knows what a drum uses, and writes a level that fits.</summary>
    private static DrumReading Guessed(DrumReading last, double days, BankSystem system)
    {
        var drum = system.Full.Drums.First(d => d.Code == last.Drum);
        var whole = last.Unit switch { "%" => 100, "L" => drum.CapacityL!.Value, "[in_i]" => drum.HeightCm!.Value / 2.54, _ => drum.HeightCm!.Value };
        var found = ((last.Left ?? last.Level!.Value) / whole) + (((last.AddedL ?? 0) - (days * system.DesignLPerDay[last.Drum])) / drum.CapacityL!.Value);
        var level = Math.Clamp(found, 0.06, 1) * whole;
        return last with { Level = Math.Round(level), AddedL = found < 0.35 ? Math.Round(0.5 * drum.CapacityL!.Value) : null, Lot = null, Swapped = null, Left = null };
    }

    private static MeterReading Step(MeterReading? before, MeterReading last)
    {
        double? Next(double? a, double? b) => b is { } now ? now + Even(Math.Max(0, now - (a ?? (now - 100)))) : null;
        return last with { Dial = Next(before?.Dial, last.Dial), Total = Next(before?.Total, last.Total), Replaced = null, OldFinal = null, NewStart = null, ReplacedOn = null };
    }

    private static double Even(double step)
    {
        var round = step >= 1000 ? 100 : step >= 100 ? 10 : 1;
        return Math.Round(step / round) * round;
    }
}
