using System.Globalization;
using System.Text;

namespace LogBook.Bank.Scoring;

/// <summary>The score as a page of Markdown.</summary>
internal static class BankReport
{
    public static string Of(MixedBank bank, string title, int worst)
    {
        var page = new StringBuilder();
        void Line(FormattableString text) => page.AppendLine(text.ToString(CultureInfo.InvariantCulture));
        var (engine, sheet) = (bank.Engine, bank.Baseline);
        Line($"# {title}\n");
        Line($"Faults planted {engine.Faults.Count}, knowable with two visits to follow {engine.Counted.Count()}, of which {engine.Counted.Count(f => f.Fault.OnlyWatched)} the contract keeps at watch; headlines (plan or act) {engine.Headlines.Count}.");
        Line($"A flag that stood before the onset and did not rise since finds nothing: {engine.Counted.Count(f => f.StoodBefore)} of the knowable had one, {engine.Counted.Count(f => f.StoodBefore && !f.SeenInTime)} of them were not named in time otherwise.\n");
        Line($"| | engine | spreadsheet | aim |\n|---|---|---|---|");
        Line($"| named within two visits of being knowable, any severity | {engine.SeenInTime:P1} | {sheet.SeenInTime:P1} | 95 % |");
        Line($"| the same as plan or act, without those kept at watch | {engine.RaisedInTime:P1} | {sheet.RaisedInTime:P1} | |");
        Line($"| median delay, visits (plan or act) | {Median(engine)} | {Median(sheet)} | |");
        Line($"| precision of plan and act | {engine.Precision:P1} | {sheet.Precision:P1} | 90 % |");
        Line($"| faults with a wrong diagnosis | {engine.WrongShare:P1} | {sheet.WrongShare:P1} | 2 % |");
        Line($"| false headlines per healthy system-year | {engine.FalsePerHealthyYear:0.00} | {sheet.FalsePerHealthyYear:0.00} | |");
        Line($"| false headlines per healthy visit | {engine.FalsePerHealthyVisit:0.000} | {sheet.FalsePerHealthyVisit:0.000} | 0.1 |\n");
        Line($"| fault | planted | knowable | seen in time | raised in time | later | noticed by a consequence | median delay | wrong | stood before | sheet raised |\n|---|---|---|---|---|---|---|---|---|---|---|");
        foreach (var group in engine.Faults.GroupBy(f => f.Fault.Name).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var counted = group.Where(f => f.Counts).ToList();
            var delays = counted.Select(f => f.Delay(f.Raised)).Where(d => d is not null).Select(d => d!.Value).Order().ToList();
            var sheetRaised = sheet.Faults.Count(f => f.Fault.Name == group.Key && f.Counts && f.RaisedInTime);
            Line($"| {group.Key} | {group.Count()} | {counted.Count} | {counted.Count(f => f.SeenInTime)} | {counted.Count(f => f.RaisedInTime)} | {counted.Count(f => !f.RaisedInTime && f.Raised is not null)} | {counted.Count(f => !f.RaisedInTime && f.Delay(f.Noticed) is <= FaultScore.VisitsAllowed)} | {(delays.Count == 0 ? "-" : delays[delays.Count / 2].ToString(CultureInfo.InvariantCulture))} | {group.Count(f => f.WrongDiagnoses.Count > 0)} | {counted.Count(f => f.StoodBefore)} | {sheetRaised} |");
        }

        Line($"\n| headline kind | right | false | wrong diagnosis | true by record |\n|---|---|---|---|---|");
        foreach (var group in engine.Headlines.GroupBy(h => h.Flag.Kind).OrderByDescending(g => g.Count(h => h.Standing is Standing.False or Standing.Wrong)))
        {
            Line($"| {group.Key} | {group.Count(h => h.Standing == Standing.Right)} | {group.Count(h => h.Standing == Standing.False)} | {group.Count(h => h.Standing == Standing.Wrong)} | {group.Count(h => h.Standing == Standing.ByRecord)} |");
        }

        Line($"\n## Missed or late\n");
        foreach (var f in engine.Counted.Where(f => f.Fault.OnlyWatched ? !f.SeenInTime : !f.RaisedInTime).OrderBy(f => f.Fault.Name, StringComparer.Ordinal).Take(worst))
        {
            var said = f.Raised is { } late ? $"raised {late:yyyy-MM-dd}" : f.Seen is { } seen ? $"only watch, {seen:yyyy-MM-dd}" : "never";
            Line($"- {f.Seed}/{f.Course.System.Site.Code} {f.Fault.Name}: from {f.Fault.Onset:yyyy-MM-dd} to {f.Fault.Repaired:yyyy-MM-dd}, knowable {f.Course.DayOf(f.KnowableAt!.Value):yyyy-MM-dd}, {said}; visits every {f.Course.System.EveryDays} d, {f.Course.System.Programme.Feeds[0].Mode}");
        }

        Line($"\n## False headlines and wrong diagnoses\n");
        foreach (var h in engine.Headlines.Where(h => h.Standing is Standing.False or Standing.Wrong).OrderBy(h => h.Flag.Kind, StringComparer.Ordinal).Take(worst))
        {
            var faults = string.Join(", ", h.Course.System.Faults.Select(f => FormattableString.Invariant($"{f.Name} {f.Onset:yyyy-MM-dd}..{f.Repaired:yyyy-MM-dd}")));
            Line($"- {h.Seed}/{h.Course.System.Site.Code} {h.Flag.Kind} {h.Flag.About} ({h.Flag.Severity}, {h.Flag.Raised:yyyy-MM-dd}..{h.Flag.Closed:yyyy-MM-dd}){(h.Standing == Standing.Wrong ? " WRONG" : "")}: {h.Flag.Text} [{(faults.Length == 0 ? "healthy" : faults)}]");
        }

        Line($"\n## Headlines true by the records alone (not counted)\n");
        foreach (var h in engine.Headlines.Where(h => h.Standing == Standing.ByRecord).OrderBy(h => h.Flag.Kind, StringComparer.Ordinal).Take(worst / 2))
        {
            Line($"- {h.Seed}/{h.Course.System.Site.Code} {h.Flag.Kind} {h.Flag.About} ({h.Flag.Severity}, {h.Flag.Raised:yyyy-MM-dd}..{h.Flag.Closed:yyyy-MM-dd}): {h.Flag.Text}");
        }

        return page.ToString();
    }

    private static string Median(BankScore score)
    {
        var delays = score.Counted.Select(f => f.Delay(f.Raised)).Where(d => d is not null).Select(d => d!.Value).Order().ToList();
        return delays.Count == 0 ? "-" : delays[delays.Count / 2].ToString(CultureInfo.InvariantCulture);
    }
}
