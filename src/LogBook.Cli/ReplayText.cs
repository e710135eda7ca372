using System.Globalization;
using LogBook.Application.Demo;

namespace LogBook.Cli;

/// <summary>A score of the engine as a table on the console.</summary>
internal static class ReplayText
{
    /// <summary>Everything about one firm.</summary>
    public static IEnumerable<string> Of(ReplayReport report)
    {
        yield return Invariant($"Seed {report.Seed}: {report.InTime.Count} of {report.Stories.Count} stories in time, {report.Forbidden} wrong diagnoses, {Control(report)}, {report.FalseFlags.Count} false flags in {report.HealthyYears:0.0} healthy system-years ({report.FalseFlagsPerYear:0.00} a year).");
        yield return "";
        yield return Row("story", "site", "latest", "found", "as", "first headline", "wrong");
        foreach (var line in report.Lines)
        {
            yield return Row(
                line.Story,
                line.Site ?? "-",
                Day(line.Latest),
                line.Found is { } found ? Day(found.From) + (line.IsInTime ? "" : " LATE") : "-",
                line.Found?.Kind ?? "(" + string.Join(", ", line.Accepted) + ")",
                line.First is { } first ? $"{Day(first.From)} {first.Kind}" : "-",
                line.Forbidden.Count == 0 ? "" : string.Join(", ", line.Forbidden.Select(f => $"{f.Site} {f.Kind} {Day(f.From)}").Take(4)) + (line.Forbidden.Count > 4 ? Invariant($" and {line.Forbidden.Count - 4} more") : ""));
        }

        yield return "";
        foreach (var control in report.Control)
        {
            yield return Invariant($"Control {control.Site}: {control.Flags.Count} headlines, at most {control.Most} bearable.");
            foreach (var flag in control.Flags)
            {
                yield return "  " + Flag(flag);
            }
        }

        yield return "False flags by kind: " + (report.FalseFlags.Count == 0 ? "none" : string.Join(", ", report.FalseFlags.CountBy(f => f.Kind).OrderByDescending(k => k.Value).ThenBy(k => k.Key, StringComparer.Ordinal).Select(k => Invariant($"{k.Key} {k.Value}"))));
        foreach (var flag in report.FalseFlags)
        {
            yield return "  " + Flag(flag);
        }
    }

    /// <summary>Several firms, a line each, and all of them together.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<ReplayReport> reports)
    {
        foreach (var report in reports)
        {
            yield return Invariant($"Seed {report.Seed}: {report.InTime.Count} of {report.Stories.Count} in time, missed {Missed(report)}; {report.Forbidden} wrong; {Control(report)}; {report.FalseFlagsPerYear:0.00} false flags a year.");
        }

        yield return "";
        foreach (var story in reports[0].Stories)
        {
            yield return Invariant($"{story,-5} in time {reports.Count(r => r.InTime.Contains(story)),3} of {reports.Count}, wrong diagnoses {reports.Sum(r => r.Lines.Where(l => l.Story == story).Sum(l => l.Forbidden.Count))}");
        }

        var all = reports.Sum(r => r.Stories.Count);
        yield return "";
        yield return "False flags by kind: " + string.Join(", ", reports.SelectMany(r => r.FalseFlags).CountBy(f => f.Kind).OrderByDescending(k => k.Value).ThenBy(k => k.Key, StringComparer.Ordinal).Select(k => Invariant($"{k.Key} {k.Value}")));
        yield return Invariant($"{100.0 * reports.Sum(r => r.InTime.Count) / all:0.0} % of {all} stories in time, {reports.Sum(r => r.Forbidden)} wrong diagnoses, {reports.Sum(r => r.FalseFlags.Count) / reports.Sum(r => r.HealthyYears):0.00} false flags for each healthy system-year ({reports.Sum(r => r.HealthyYears):0.0} years).");
    }

    private static string Missed(ReplayReport report) => report.Stories.Except(report.InTime).ToList() is { Count: > 0 } missed ? string.Join(' ', missed) : "none";

    private static string Control(ReplayReport report) => Invariant($"control {report.Control.Sum(c => c.Flags.Count)}");

    private static string Flag(Headline flag) => $"{Day(flag.From)} {flag.Site} {flag.Worst} {flag.Kind} {flag.About}".TrimEnd();

    private static string Row(string story, string site, string latest, string found, string kind, string first, string wrong) =>
        $"{story,-6}{site,-7}{latest,-12}{found,-17}{kind,-34}{first,-34}{wrong}".TrimEnd();

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
