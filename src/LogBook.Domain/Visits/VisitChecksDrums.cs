using LogBook.Domain.Drums;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Visits;

/// <summary>Doubts about drum levels and deliveries since the last visits. None of them blocks.</summary>
internal sealed class VisitChecksDrums(VisitContext context, IssueList issues)
{
    /// <summary>Intervals from which the usual use is taken.</summary>
    private const int LookBack = 6;

    /// <summary>With fewer intervals there is no usual yet.</summary>
    private const int Fewest = 3;

    /// <summary>A gauge is read to about two parts in a hundred of the drum, at both ends: nearly twice the spread of a difference.</summary>
    private const double GaugeShare = 0.05;

    /// <summary>A use above this times the usual is asked about (own choice, tuned on simulated firms).</summary>
    private const double TimesUsual = 2;

    /// <summary>A delivery that is this many times the largest of the last ones, or this part of the smallest.</summary>
    private const double TimesDelivery = 2.5;

    /// <summary>Checks the drums of one system.</summary>
    /// <param name="draft">The visit.</param>
    /// <param name="system">The system.</param>
    /// <param name="record">Its record.</param>
    /// <param name="before">Earlier records, newest first.</param>
    /// <param name="path">Path of the record.</param>
    public void Check(Visit draft, WaterSystem system, VisitedSystem record, IReadOnlyList<SystemVisit> before, string path)
    {
        for (var i = 0; i < record.Drums.Count; i++)
        {
            var reading = record.Drums[i];
            if (SetUpParts.DrumOn(system, reading.Drum, draft.Arrived) is not { } drum)
            {
                continue;
            }

            var past = before
                .Where(b => SetUpParts.DrumOn(system, reading.Drum, b.Visit.Arrived) == drum)
                .Select(b => (b.At, Reading: b.Record.Drums.FirstOrDefault(d => d.Drum.Equals(reading.Drum, StringComparison.OrdinalIgnoreCase))))
                .Where(p => p.Reading is not null)
                .Select(p => (p.At, Reading: p.Reading!))
                .Take(LookBack + 1)
                .ToList();
            CheckLevel(draft, drum, reading, past, $"{path}.drums[{i}].level");
            CheckDelivery(reading, past, $"{path}.drums[{i}].addedL");
        }
    }

    private void CheckLevel(Visit draft, Drum drum, DrumReading reading, List<(DateTime At, DrumReading Reading)> past, string path)
    {
        if (past.Count == 0 || Litres(drum, reading.Level, reading.Unit) is not { } now || After(drum, past[0].Reading) is not { } then)
        {
            return;
        }

        var brim = DrumVolume.Brim(drum);
        var slack = brim.HasValue ? GaugeShare * brim.Value.Litres : 0.1 * then;
        var days = (draft.Arrived.Utc - past[0].At).TotalDays;
        if (now > then + slack)
        {
            issues.Ask(path, VisitChecksTexts.Rose, Shown(now), drum.Code, Shown(then));
        }
        else if (UsedADay(drum, past) is { } usual && then - now > (TimesUsual * usual * days) + slack)
        {
            issues.Ask(path, VisitChecksTexts.UsedMore, Shown(then - now), drum.Code, Shown(usual * days));
        }
    }

    private void CheckDelivery(DrumReading reading, List<(DateTime At, DrumReading Reading)> past, string path)
    {
        var deliveries = past.Select(p => p.Reading.AddedL).Where(l => l > 0).Select(l => l!.Value).ToList();
        if (reading.AddedL is not > 0 || deliveries.Count == 0)
        {
            return;
        }

        var added = reading.AddedL.Value;
        if (added > TimesDelivery * deliveries.Max() || added * TimesDelivery < deliveries.Min())
        {
            issues.Ask(path, VisitChecksTexts.Delivered, Shown(added), Shown(VisitChecksReadings.Median(deliveries)));
        }
    }

    /// <summary>Median use of the last intervals, L a day, by level; null with too few.</summary>
    private double? UsedADay(Drum drum, List<(DateTime At, DrumReading Reading)> past)
    {
        var uses = new List<double>();
        for (var i = 1; i < past.Count; i++)
        {
            var (newer, older) = (past[i - 1], past[i]);
            var days = (newer.At - older.At).TotalDays;
            if (days > 0 && Litres(drum, newer.Reading.Level, newer.Reading.Unit) is { } now && After(drum, older.Reading) is { } then)
            {
                uses.Add(Math.Max(0, then - now) / days);
            }
        }

        return uses.Count >= Fewest ? VisitChecksReadings.Median(uses) : null;
    }

    /// <summary>What was in the drum when the visit was left: "left" where it was read, else what was found and what was added.</summary>
    private double? After(Drum drum, DrumReading reading)
    {
        if (reading.Left is not null)
        {
            return Litres(drum, reading.Left, reading.Unit);
        }

        return reading.Swapped == true || Litres(drum, reading.Level, reading.Unit) is not { } found ? null : found + (reading.AddedL ?? 0) - (reading.RemovedL ?? 0);
    }

    private double? Litres(Drum drum, double? level, string? unit) =>
        level is { } read && DrumVolume.FromLevel(drum, read, unit, context.Firm.Products.GetValueOrDefault(drum.Product)) is { HasValue: true } volume ? volume.Value.Value : null;

    private string Shown(double value) => VisitChecksTexts.Number(value, context.Language);
}
