using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Domain.Exchange;
using LogBook.Domain.Exchange.Shapes;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Visits;

/// <summary>
/// The checks of an entry: the same at typing, at saving, on import and on receipt from the tablet. What blocks must be
/// corrected; what does not block has the code "value-suspect" and means: please read again.
/// </summary>
public static class VisitChecks
{
    /// <summary>Code of every issue that does not block.</summary>
    public const string ValueSuspect = "value-suspect";

    // A number field may hold NaN while somebody types: it is to be told as an issue, not to break the writer.
    private static readonly ExchangeJson DraftJson =
        new(new JsonSerializerOptions(ExchangeJson.Default.Options) { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals });

    /// <summary>Checks a visit, finished or not.</summary>
    /// <param name="draft">The visit; required texts that are not entered yet may be empty or null.</param>
    /// <param name="context">What it is compared with.</param>
    /// <returns>Issues with paths relative to the visit ("systems[0].readings[2].value"); those that block first.</returns>
    public static IReadOnlyList<Issue> Check(Visit draft, VisitContext context)
    {
        var form = new ShapeCheck(context.Language);
        var json = JsonSerializer.SerializeToElement(draft, DraftJson.Visit);
        form.Check(json, ExchangeShapes.Visit);
        var refused = form.Issues.Select(i => i.Path).ToHashSet(StringComparer.Ordinal);
        var readable = refused.Count > 0 || form.NeedsTidying
            ? JsonSerializer.Deserialize(Tidying.Of(json, ExchangeShapes.Visit, refused), ExchangeJson.Default.Visit)!
            : draft;
        var content = new IssueList(context.Language);
        new VisitReferenceCheck(context.Firm, content).Check(readable, "");
        new VisitChecksReadings(context, content).Check(readable);
        new VisitChecksCounters(context, content).Check(readable);
        var blocked = content.Issues.Where(i => i.Blocks).Select(i => i.Path).ToHashSet(StringComparer.Ordinal);
        var told = content.Issues.Where(i =>
            !refused.Contains(i.Path)
            && !i.Message.Contains(Tidying.StandIn, StringComparison.Ordinal)
            && (i.Blocks || !blocked.Contains(i.Path)));
        return [.. form.Issues.Concat(told).OrderByDescending(i => i.Blocks)];
    }

    /// <summary>Checks one field, for use at every keystroke: only the part of the visit that the field belongs to is looked at.</summary>
    /// <param name="draft">The visit.</param>
    /// <param name="context">What it is compared with.</param>
    /// <param name="path">Path of a field or part, relative to the visit: "systems[0].readings[2].value", "left".</param>
    /// <returns>Issues whose path is the given one or below it.</returns>
    public static IReadOnlyList<Issue> CheckField(Visit draft, VisitContext context, string path) =>
        [.. Check(Reduced(draft, path), context).Where(i => i.Path.StartsWith(path, StringComparison.Ordinal)
            && (i.Path.Length == path.Length || i.Path[path.Length] is '.' or '['))];

    /// <summary>The visit with only the list that a path leads into; places in the lists stay what they are.</summary>
    private static Visit Reduced(Visit draft, string path)
    {
        const string Start = "systems[";
        var end = path.IndexOf(']', StringComparison.Ordinal);
        if (!path.StartsWith(Start, StringComparison.Ordinal) || end < 0
            || !int.TryParse(path.AsSpan(Start.Length, end - Start.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            || index >= draft.Systems.Count)
        {
            return draft with { Systems = [.. draft.Systems.Select(Bare)] };
        }

        var rest = path[(end + 1)..].TrimStart('.');
        var list = rest[..(rest.IndexOf('[', StringComparison.Ordinal) is var at and >= 0 ? at : rest.Length)];
        return draft with
        {
            Photos = [],
            Recommendations = [],
            Signatures = [],
            Samples = [],
            Systems = [.. draft.Systems.Select((s, i) => i == index ? Reduced(s, list) : Bare(s))],
        };
    }

    private static VisitedSystem Bare(VisitedSystem system) => new() { System = system.System };

    private static VisitedSystem Reduced(VisitedSystem system, string list) => system with
    {
        // Readings and probe checks say the same thing twice and are compared; events silence doubts after a cleaning.
        Readings = list is "readings" or "probes" ? system.Readings : [],
        Probes = list is "probes" ? system.Probes : [],
        Meters = list == "meters" ? system.Meters : [],
        Drums = list == "drums" ? system.Drums : [],
        HoursRun = list == "hoursRun" ? system.HoursRun : [],
        Pumps = list == "pumps" ? system.Pumps : [],
        Drawdowns = list == "drawdowns" ? system.Drawdowns : [],
        Switches = list == "switches" ? system.Switches : [],
        Settings = list == "settings" ? system.Settings : [],
        Additions = list == "additions" ? system.Additions : [],
        Events = list is "events" or "readings" ? system.Events : [],
        Alarms = list == "alarms" ? system.Alarms : [],
        Observations = list == "observations" ? system.Observations : [],
        Actions = list == "actions" ? system.Actions : [],
    };
}
