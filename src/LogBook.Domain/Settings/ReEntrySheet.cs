using LogBook.Domain.Calculators;
using LogBook.Domain.Dosing;
using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>All settings to enter into a controller that has lost them, as they stood at the end of a day.</summary>
/// <remarks>
/// A setting stands as it was last left on or before the day, unless the programme in force began after that; what was never read stands as the
/// programme asks. Nothing is assumed: every line says where it comes from. LogBook never enters anything; a person does, and reads it back.
/// </remarks>
public sealed record ReEntrySheet
{
    /// <summary>The day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Programme in force on the day, or null.</summary>
    public required Programme? Programme { get; init; }

    /// <summary>Last visit on or before the day, or null.</summary>
    public required SystemVisit? LastVisit { get; init; }

    /// <summary>Lines by purpose.</summary>
    public required IReadOnlyList<ReEntryGroup> Groups { get; init; }

    /// <summary>All lines in the order of the sheet.</summary>
    public IEnumerable<ReEntryLine> Lines => Groups.SelectMany(group => group.Lines);

    /// <summary>Works out a sheet.</summary>
    /// <param name="history">Whole history of the system: what came after the day is told beside the lines.</param>
    /// <param name="on">Day in the site's zone.</param>
    /// <param name="today">Today in the site's zone: the label is kept with the pump and the product of today, not with those on file for later.</param>
    /// <param name="changes">Changes of the set-up after the day, in order.</param>
    /// <returns>The sheet; without groups where neither programme nor reading is there.</returns>
    public static ReEntrySheet Of(SystemHistory history, DateOnly on, DateOnly today, IReadOnlyList<SetUpChange>? changes = null)
    {
        var then = SettingsThenAndNow.Of(history, on);
        var planned = then.Programme is null ? [] : ProgrammeSettings.Of(then.Programme, history.System);
        var later = new LaterChanges(history, on, changes ?? []);
        var lines = then.Tracks.Select(track => LineOf(track, then.Programme, planned, later)).OfType<ReEntryLine>().ToList();
        var planWeeks = lines.Find(line => line.Setting.Name == "planWeeks")?.Setting.Value.Number is >= 1 and var weeks ? (int)weeks : then.Programme?.PlanWeeks;
        VisitFacts? last = null;
        foreach (var visit in history.Visits.Where(visit => history.DayOf(visit.At) <= today))
        {
            last = new VisitFacts(history, visit, last);
        }

        return new ReEntrySheet
        {
            On = on,
            Programme = then.Programme,
            LastVisit = then.LastVisit,
            Groups =
            [
                .. lines.GroupBy(line => (Purpose: SettingNames.PurposeOf(line.Setting.Name), Output: SettingNames.OutputOf(line.Setting.Name)))
                    .OrderBy(group => group.Key.Purpose)
                    .Select(group => GroupOf(history, today, group.Key.Purpose, group.Key.Output, planWeeks, [.. group], later, last)),
            ],
        };
    }

    /// <summary>What a controller holds once the sheet has been entered.</summary>
    /// <param name="controller">What it holds before, such as its defaults.</param>
    /// <param name="system">The system.</param>
    /// <returns>Its settings afterwards.</returns>
    public Programme EnteredInto(Programme controller, WaterSystem system) => ProgrammeSettings.Enter(controller, [.. Lines.Select(line => line.Setting)], system);

    /// <summary>Compares the sheet with what stands in the controller afterwards.</summary>
    /// <param name="entered">Values by name of the setting, in the unit of the line; names that are missing were not looked at.</param>
    /// <returns>Every line, in order.</returns>
    public IReadOnlyList<ReadBack> Check(IReadOnlyDictionary<string, SettingValue> entered) =>
    [
        .. Lines.Select(line => entered.TryGetValue(line.Setting.Name, out var value)
            ? new ReadBack(line, value, SettingAgreement.Agrees(line.Setting, value, line.Setting.Unit, null))
            : new ReadBack(line, null, null)),
    ];

    /// <summary>Compares the sheet with a later visit: what was left there, in the unit of that reading.</summary>
    /// <param name="visit">What was done on the system.</param>
    /// <returns>Every line, in order.</returns>
    public IReadOnlyList<ReadBack> Check(VisitedSystem visit)
    {
        var left = visit.Settings.Where(setting => setting.NotRead != true && (setting.Left ?? setting.Found) is not null)
            .GroupBy(setting => setting.Name, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(group => group.Key, group => group.Last(), StringComparer.OrdinalIgnoreCase);
        return
        [
            .. Lines.Select(line => left.TryGetValue(line.Setting.Name, out var reading)
                ? new ReadBack(line, reading.Left ?? reading.Found, SettingAgreement.Agrees(line.Setting, (reading.Left ?? reading.Found)!, reading.Unit ?? line.Setting.Unit, reading.Step))
                : new ReadBack(line, null, null)),
        ];
    }

    private static ReEntryLine? LineOf(SettingTrack track, Programme? programme, IReadOnlyList<ControllerSetting> planned, LaterChanges later)
    {
        var asked = planned.FirstOrDefault(setting => setting.Name.Equals(track.Name, StringComparison.OrdinalIgnoreCase));

        // Only what was read since the programme began tells of it.
        var read = track.Steps.LastOrDefault(step => (step.Left ?? step.Found) is not null && (programme is null || step.On >= programme.From));
        if (read is null)
        {
            return asked is null ? null : new ReEntryLine(asked, null, null, null, later.OfSetting(asked));
        }

        var left = (read.Left ?? read.Found)!;
        var unit = read.Unit ?? SettingNames.UnitOf(track.Name, programme);
        if (left.IsNone)
        {
            // The controller has no such setting: there is nothing to enter, unless the programme asks for it.
            return asked is null ? null : new ReEntryLine(asked, null, null, null, later.OfSetting(asked));
        }

        var setting = new ControllerSetting(asked?.Name ?? track.Name, left, unit);
        return new ReEntryLine(setting, read.On, read.Visit, asked is not null && !SettingAgreement.Agrees(setting, asked.Value, asked.Unit, null) ? asked.Value : null, later.OfSetting(setting));
    }

    private static ReEntryGroup GroupOf(SystemHistory history, DateOnly today, SettingPurpose purpose, string? output, int? planWeeks, IReadOnlyList<ReEntryLine> lines, LaterChanges later, VisitFacts? last)
    {
        if (output is null)
        {
            return new ReEntryGroup(purpose, null, null, lines, [], later.OfPurpose(purpose));
        }

        var pump = PartsOnDay.PumpOn(history.System, output, today);
        var drum = pump is null ? null : PartsOnDay.DrumOn(history.System, pump.Drum, today);
        var product = drum is null ? null : history.Firm.Products.GetValueOrDefault(drum.Product);
        return new ReEntryGroup(purpose, output, product, lines, StopsOf(history, product, pump, planWeeks, lines, last), later.OfOutput(output));
    }

    // The label of today, with the pump of today: an old run of a new product may be too much. Dose, week, gap and contact are judged by the
    // plan that stands on the sheet; a controller that holds nothing keeps nothing.
    private static IReadOnlyList<LabelStop> StopsOf(SystemHistory history, Product? product, Pump? pump, int? planWeeks, IReadOnlyList<ReEntryLine> lines, VisitFacts? last)
    {
        if (product is null || KnownPumps.ForLabel(history, last, pump) is not { } known || history.System.VolumeL is not > 0)
        {
            return [];
        }

        var feed = lines.Select(Readable).Aggregate(new Feed { Drum = pump!.Drum, Output = pump.Output, Mode = FeedMode.DosePlan }, ProgrammeSettings.Enter);
        return feed.RunMinutes is { } run
            ? [.. LabelStops.OfFeed(product, run / 60 * known.Estimate.Value * (product.DensityKgPerL ?? 1) * 1e6 / history.System.VolumeL.Value, FeedMode.DosePlan, feed, planWeeks).Select(stop => stop.By(known))]
            : [];
    }

    // Days a controller shows in words nobody can read are not every day: there the programme's count.
    private static ControllerSetting Readable(ReEntryLine line)
    {
        if (line.Programme is not { } asked || SettingNames.FieldOf(line.Setting.Name) is not ("weeks" or "days"))
        {
            return line.Setting;
        }

        var read = ProgrammeSettings.Enter(new Feed { Drum = "", Mode = FeedMode.DosePlan }, line.Setting);
        return read.Weeks.Count + read.Days.Count == 0 && !line.Setting.Value.IsNone ? line.Setting with { Value = asked } : line.Setting;
    }
}
