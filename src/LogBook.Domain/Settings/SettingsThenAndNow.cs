using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>Every setting of a system as found and as left, up to a day.</summary>
public sealed record SettingsThenAndNow
{
    /// <summary>The day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Programme in force on the day, or null.</summary>
    public required Programme? Programme { get; init; }

    /// <summary>Settings of the programme and those read at the controller, by purpose, in the order of the sheet.</summary>
    public required IReadOnlyList<SettingTrack> Tracks { get; init; }

    /// <summary>Target, setting and measurement of bleed and feeds.</summary>
    public required IReadOnlyList<TargetLine> Targets { get; init; }

    /// <summary>Last visit on or before the day, or null.</summary>
    public required SystemVisit? LastVisit { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="history">History of the system; visits after the day are not looked at.</param>
    /// <param name="on">Day in the site's zone.</param>
    /// <returns>The settings up to that day.</returns>
    public static SettingsThenAndNow Of(SystemHistory history, DateOnly on)
    {
        var programme = history.ProgrammeOn(on);
        var planned = programme is null ? [] : ProgrammeSettings.Of(programme, history.System);
        var steps = new Dictionary<string, List<SettingStep>>(StringComparer.OrdinalIgnoreCase);
        VisitFacts? last = null;
        foreach (var visit in history.Visits.Where(visit => history.DayOf(visit.At) <= on))
        {
            last = new VisitFacts(history, visit, last);
            Add(steps, last);
        }

        var names = planned.Select(setting => setting.Name).Concat(steps.Keys).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        return new SettingsThenAndNow
        {
            On = on,
            Programme = programme,
            Tracks = [.. names.Select(name => Track(name, programme, planned, steps.GetValueOrDefault(name) ?? [])).OrderBy(track => SettingNames.PurposeOf(track.Name))],
            Targets = programme is null || last is null ? [] : SettingTargets.Of(last, programme),
            LastVisit = last?.Visit,
        };
    }

    private static void Add(Dictionary<string, List<SettingStep>> steps, VisitFacts visit)
    {
        if (visit.Record.Settings.Count == 0)
        {
            return;
        }

        var compared = SettingsComparison.Of(visit).ToDictionary(one => one.Name, StringComparer.OrdinalIgnoreCase);
        foreach (var reading in visit.Record.Settings.Where(reading => reading.NotRead != true && (reading.Found ?? reading.Left) is not null))
        {
            var before = compared.GetValueOrDefault(reading.Name);
            var away = before?.IsChanged == true;
            var list = steps.TryGetValue(reading.Name, out var known) ? known : steps[reading.Name] = [];
            list.Add(new SettingStep(
                visit.Visit.Visit.Id, visit.Day, visit.Visit.Visit.Technician, reading.Found, reading.Left, away ? before!.Left : null, away, reading.Unit, reading.Reason));
        }
    }

    private static SettingTrack Track(string name, Programme? programme, IReadOnlyList<ControllerSetting> planned, IReadOnlyList<SettingStep> steps) => new(
        name,
        planned.FirstOrDefault(setting => setting.Name.Equals(name, StringComparison.OrdinalIgnoreCase))?.Value,
        steps.LastOrDefault(step => step.Unit is not null)?.Unit ?? SettingNames.UnitOf(name, programme),
        steps);
}
