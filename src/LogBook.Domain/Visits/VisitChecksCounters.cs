using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Meters;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Visits;

/// <summary>Doubts about what counts since the last visit: meters and hours run. None of them blocks.</summary>
internal sealed class VisitChecksCounters(VisitContext context, IssueList issues)
{
    /// <summary>Intervals from which the usual flow of a meter is taken.</summary>
    private const int LookBack = 6;

    /// <summary>A counter that nobody read for so many visits has no last time.</summary>
    private const int FurthestBack = 50;

    /// <summary>With fewer intervals there is no usual yet.</summary>
    private const int Fewest = 2;

    /// <summary>Controllers count in minutes and clocks differ a little.</summary>
    private const double HoursTolerance = 1.01;

    /// <summary>Hours beyond this times the usual are asked about (own choice, tuned on simulated firms).</summary>
    private const double TimesUsualHours = 2.5;

    /// <summary>A flow below this part of the usual is asked about.</summary>
    private const double PartOfUsual = 0.2;

    /// <summary>Two registers of one pipe that part by more than this factor over one interval.</summary>
    private const double TimesOther = 1.3;

    /// <summary>Checks the counters of a visit.</summary>
    public void Check(Visit draft)
    {
        for (var i = 0; i < draft.Systems.Count; i++)
        {
            var record = draft.Systems[i];
            if (context.Firm.System(draft.Site, record.System) is not { } system || record.Meters.Count + record.HoursRun.Count + record.Drums.Count + record.Probes.Count + record.Pumps.Count + record.Drawdowns.Count == 0)
            {
                continue;
            }

            var before = context.Before(draft, record.System).Take(FurthestBack).ToList();
            for (var j = 0; j < record.Meters.Count; j++)
            {
                CheckMeter(draft, system, record.Meters[j], before, $"systems[{i}].meters[{j}]");
            }

            for (var j = 0; j < record.HoursRun.Count; j++)
            {
                CheckHours(draft, record.HoursRun[j], before, $"systems[{i}].hoursRun[{j}]");
            }

            new VisitChecksDrums(context, issues).Check(draft, system, record, before, $"systems[{i}]");
            new VisitChecksParts(context, issues).Check(record, before, $"systems[{i}]");
        }
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    // A register is compared with what stands on the dial, digit by digit.
    private string AsRead(double value) => Languages.Shown.Entered(value, context.Language);

    private string Shown(double value) => VisitChecksTexts.Number(value, context.Language);

    private void CheckMeter(Visit draft, WaterSystem system, MeterReading reading, List<SystemVisit> before, string path)
    {
        if (SetUpParts.MeterOn(system, reading.Meter, draft.Arrived) is not { } meter)
        {
            return;
        }

        var past = before.Select(b => (b.At, Reading: b.Record.Meters.FirstOrDefault(m => Same(m.Meter, reading.Meter))))
            .Where(p => p.Reading is not null).Select(p => (p.At, Reading: p.Reading!)).Take(LookBack + 1).ToList();
        var usual = Usual(meter, past);
        double? byDial = null;
        if (reading.Dial is { } dial && past.FirstOrDefault(p => p.Reading.Dial is not null) is { Reading: not null } lastDial)
        {
            var judge = new RolloverJudge(draft.Arrived.Utc - lastDial.At, meter.MaxLPerH, usual);
            var litres = MeterDifference.OfDial(meter, lastDial.Reading, reading, judge);
            if (litres.HasValue)
            {
                byDial = litres.Value.Value;
                CheckFlow(byDial.Value, judge, path + ".dial");
            }
            else if (reading.Replaced != true && dial < lastDial.Reading.Dial)
            {
                issues.Ask(path + ".dial", VisitChecksTexts.Lower, VisitFieldTexts.NameOf("dial"), AsRead(dial), AsRead(lastDial.Reading.Dial.Value));
            }
        }

        if (reading.Total is { } total && past.FirstOrDefault(p => p.Reading.Total is not null) is { Reading: not null } lastTotal)
        {
            var judge = new RolloverJudge(draft.Arrived.Utc - lastTotal.At, meter.MaxLPerH, usual);
            var litres = MeterDifference.OfTotal(meter, lastTotal.Reading, reading, judge);
            var end = lastTotal.Reading.After ?? lastTotal.Reading.Total;
            if (litres.HasValue)
            {
                CheckFlow(litres.Value.Value, judge, path + ".total");
                CheckRegisters(meter, byDial, litres.Value.Value, past, path + ".total");
            }
            else if (reading.Reset != true && reading.Replaced != true && (reading.Before ?? total) < end)
            {
                issues.Ask(path + ".total", VisitChecksTexts.Lower, VisitFieldTexts.NameOf("total"), AsRead(reading.Before ?? total), AsRead(end.Value));
            }
        }
    }

    private void CheckFlow(double litres, RolloverJudge judge, string path)
    {
        if (judge.Elapsed <= TimeSpan.Zero)
        {
            return;
        }

        var perHour = litres / judge.Elapsed.TotalHours;
        if (perHour > judge.MaxLPerH)
        {
            issues.Ask(path, VisitChecksTexts.TooFast, VisitFieldTexts.NameOf(path), Shown(perHour), Shown(judge.MaxLPerH.Value));
        }
        else if (judge.UsualLPerH is > 0 && perHour > RolloverJudge.TimesUsual * judge.UsualLPerH)
        {
            issues.Ask(path, VisitChecksTexts.Unusual, VisitFieldTexts.NameOf(path), Shown(perHour), Shown(judge.UsualLPerH.Value));
        }
        else if (judge.UsualLPerH is > 0 && perHour < PartOfUsual * judge.UsualLPerH)
        {
            issues.Ask(path, VisitChecksTexts.Unusual, VisitFieldTexts.NameOf(path), Shown(perHour), Shown(judge.UsualLPerH.Value));
        }
    }

    /// <summary>Dial and total count the same water; where they part for the first time, one of them may be misread.</summary>
    private void CheckRegisters(Meter meter, double? byDial, double byTotal, List<(DateTime At, MeterReading Reading)> past, string path)
    {
        if (byDial is not { } dial || !IsApart(dial, byTotal) || past.Count < 2)
        {
            return;
        }

        var judge = new RolloverJudge(past[0].At - past[1].At, meter.MaxLPerH, null);
        var (dialThen, totalThen) = (MeterDifference.OfDial(meter, past[1].Reading, past[0].Reading, judge), MeterDifference.OfTotal(meter, past[1].Reading, past[0].Reading, judge));
        if (dialThen.HasValue && totalThen.HasValue && !IsApart(dialThen.Value.Value, totalThen.Value.Value))
        {
            issues.Ask(path, VisitChecksTexts.RegistersPart, Shown(dial), Shown(byTotal));
        }
    }

    private static bool IsApart(double a, double b) => a > TimesOther * b || b > TimesOther * a;

    /// <summary>Median flow of the last intervals, L/h, by dial where it was read and else by total; null with too few.</summary>
    private static double? Usual(Meter meter, List<(DateTime At, MeterReading Reading)> past)
    {
        var flows = new List<double>();
        for (var i = 1; i < past.Count; i++)
        {
            var (newer, older) = (past[i - 1], past[i]);
            var judge = new RolloverJudge(newer.At - older.At, meter.MaxLPerH, null);
            var litres = MeterDifference.OfDial(meter, older.Reading, newer.Reading, judge);
            litres = litres.HasValue ? litres : MeterDifference.OfTotal(meter, older.Reading, newer.Reading, judge);
            if (litres.HasValue && judge.Elapsed > TimeSpan.Zero)
            {
                flows.Add(litres.Value.Value / judge.Elapsed.TotalHours);
            }
        }

        return flows.Count >= Fewest ? VisitChecksReadings.Median(flows) : null;
    }

    private void CheckHours(Visit draft, HoursReading reading, List<SystemVisit> before, string path)
    {
        var past = before.Select(b => (b.At, Reading: b.Record.HoursRun.FirstOrDefault(h => Same(h.Output, reading.Output))))
            .Where(p => p.Reading is not null).Select(p => (p.At, Reading: p.Reading!)).Take(LookBack + 1).ToList();
        if (past.Count == 0)
        {
            return;
        }

        var last = past[0];

        var elapsed = (draft.Arrived.Utc - last.At).TotalHours;
        var start = reading.Reset == true ? 0 : last.Reading.After ?? last.Reading.Hours;
        var now = reading.Before ?? reading.Hours;
        if (now < start)
        {
            issues.Ask(path + ".hours", VisitChecksTexts.Lower, VisitFieldTexts.NameOf("hours"), AsRead(now), AsRead(start));
        }
        else if (now - start > (elapsed * HoursTolerance) + 0.2)
        {
            issues.Ask(path + ".hours", VisitChecksTexts.MoreHours, Shown(now - start), Shown(elapsed));
        }
        else if (UsualShare(past) is { } share && now - start > (TimesUsualHours * share * elapsed) + (0.02 * elapsed))
        {
            issues.Ask(path + ".hours", VisitChecksTexts.UnusualHours, Shown(now - start), Shown(share * elapsed));
        }
    }

    /// <summary>Median share of the time that an output ran in the last intervals; null with too few.</summary>
    private static double? UsualShare(List<(DateTime At, HoursReading Reading)> past)
    {
        var shares = new List<double>();
        for (var i = 1; i < past.Count; i++)
        {
            var (newer, older) = (past[i - 1], past[i]);
            var hours = (newer.Reading.Before ?? newer.Reading.Hours) - (newer.Reading.Reset == true ? 0 : older.Reading.After ?? older.Reading.Hours);
            if (hours >= 0 && newer.At > older.At)
            {
                shares.Add(hours / (newer.At - older.At).TotalHours);
            }
        }

        return shares.Count > Fewest ? VisitChecksReadings.Median(shares) : null;
    }
}
