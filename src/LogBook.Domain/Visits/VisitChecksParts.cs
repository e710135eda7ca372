using LogBook.Domain.Exchange;
using LogBook.Domain.History;

namespace LogBook.Domain.Visits;

/// <summary>Doubts about what a probe showed after the work, about pump settings and about measured pump outputs. None of them blocks.</summary>
internal sealed class VisitChecksParts(VisitContext context, IssueList issues)
{
    /// <summary>Display and reference of one water this far apart: one of them was misread, or the probe is badly off.</summary>
    private const double TimesReference = 1.4;

    /// <summary>A pump is found as it was left but for what a knob's scale shows.</summary>
    private const double TimesLeft = 1.2;

    /// <summary>A pump wears slowly; twice or half of what it gave last time is asked about.</summary>
    private const double TimesOutput = 2;

    /// <summary>Checks the parts of one system.</summary>
    /// <param name="record">Its record.</param>
    /// <param name="before">Earlier records, newest first.</param>
    /// <param name="path">Path of the record.</param>
    public void Check(VisitedSystem record, IReadOnlyList<SystemVisit> before, string path)
    {
        for (var i = 0; i < record.Probes.Count; i++)
        {
            if ((record.Probes[i].Of ?? Sites.ProbeKind.Conductivity) == Sites.ProbeKind.Conductivity)
            {
                CheckProbe(record.Probes[i], Before(before, b => b.Probes, p => p.Probe == record.Probes[i].Probe), $"{path}.probes[{i}]");
            }
        }

        for (var i = 0; i < record.Pumps.Count; i++)
        {
            var pump = record.Pumps[i];
            if (Before(before, b => b.Pumps, p => Same(p.Pump, pump.Pump)) is { } last)
            {
                CheckPump(pump.StrokeFound, last.StrokeLeft ?? last.StrokeFound, $"{path}.pumps[{i}].strokeFound");
                CheckPump(pump.SpeedFound, last.SpeedLeft ?? last.SpeedFound, $"{path}.pumps[{i}].speedFound");
            }
        }

        for (var i = 0; i < record.Drawdowns.Count; i++)
        {
            var drawdown = record.Drawdowns[i];
            if (drawdown.Seconds > 0 && Before(before, b => b.Drawdowns, d => Same(d.Pump, drawdown.Pump) && d.Seconds > 0 && d.Millilitres > 0) is { } last)
            {
                var (now, then) = (60 * drawdown.Millilitres / drawdown.Seconds, 60 * last.Millilitres / last.Seconds);
                if (now > TimesOutput * then || now < then / TimesOutput)
                {
                    issues.Ask($"{path}.drawdowns[{i}].millilitres", VisitChecksTexts.OutputOfPump, Shown(now), Shown(then));
                }
            }
        }
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private static T? Before<T>(IReadOnlyList<SystemVisit> before, Func<VisitedSystem, IReadOnlyList<T>> list, Func<T, bool> which)
        where T : class => before.Select(b => list(b.Record).FirstOrDefault(which)).FirstOrDefault(found => found is not null);

    private void CheckProbe(ProbeReading probe, ProbeReading? last, string path)
    {
        if (probe.Reference is not { } reference)
        {
            return;
        }

        // A probe that was as far off last time, and left so, is known to be.
        if (IsApart(probe.AsFound, reference) && !(last?.Reference is { } lastReference && IsApart(last.AsLeft ?? last.AsFound, lastReference)))
        {
            Ask(path + ".reference", reference, probe.AsFound, probe.Unit);
        }

        foreach (var (field, value) in new[] { ("afterCleaning", probe.AfterCleaning), ("asLeft", probe.AsLeft) })
        {
            if (value is { } display && IsApart(display, reference) && IsApart(display, probe.AsFound))
            {
                Ask($"{path}.{field}", display, reference, probe.Unit);
            }
        }
    }

    private static bool IsApart(double a, double b) => a > TimesReference * b || b > TimesReference * a;

    private void Ask(string path, double value, double other, string unit) =>
        issues.Ask(path, VisitChecksTexts.OtherOfSameWater, Shown(value), unit, Shown(other));

    private void CheckPump(double? found, double? left, string path)
    {
        if (found is { } now && left is { } then && (now > TimesLeft * then || now < then / TimesLeft))
        {
            issues.Ask(path, VisitChecksTexts.NotAsLeft, Shown(now), Shown(then));
        }
    }

    private string Shown(double value) => VisitChecksTexts.Number(value, context.Language);
}
