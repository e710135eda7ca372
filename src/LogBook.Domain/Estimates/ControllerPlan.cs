using System.Globalization;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>The programme as the controller holds it: what was asked for, with the settings last read in its place.</summary>
/// <remarks>
/// At the visit itself a setting counts as found, at earlier ones as left. What was never read is taken as the programme asks. Only settings
/// read since the programme began count.
/// </remarks>
public static class ControllerPlan
{
    private const int Reach = 60;

    /// <summary>The programme with the settings last read.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>The programme, or null where none is in force.</returns>
    public static Programme? Of(VisitFacts visit) => visit.Controller.Programme;

    /// <summary>Works it out.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="before">What was worked out for the visit before, or null: where nothing has changed since, the plan stays the same object.</param>
    internal static (Programme? Programme, LastSetting[] Read) Of(VisitFacts visit, (Programme? Programme, LastSetting[] Read)? before)
    {
        if (visit.Programme is not { } programme)
        {
            return (null, []);
        }

        var read = SettingsLeft.FoundAt(visit);
        if (!Array.TrueForAll(read, Counts))
        {
            read = Array.FindAll(read, Counts);
        }

        return before is { Programme: not null } last && ReferenceEquals(visit.Previous!.Programme, programme) && SameValues(read, last.Read)
            ? (last.Programme, read)
            : (Of(visit, programme, read), read);

        bool Counts(LastSetting setting) => setting.On.Day >= programme.From && visit.Place - setting.On.Place < Reach;
    }

    private static bool SameValues(LastSetting[] a, LastSetting[] b)
    {
        if (a.Length != b.Length)
        {
            return false;
        }

        for (var i = 0; i < a.Length; i++)
        {
            if (!a[i].Name.Equals(b[i].Name, StringComparison.OrdinalIgnoreCase) || a[i].Unit != b[i].Unit || a[i].Value != b[i].Value)
            {
                return false;
            }
        }

        return true;
    }

    private static Programme Of(VisitFacts visit, Programme programme, LastSetting[] settings)
    {
        var read = settings.ToDictionary(setting => setting.Name, setting => (setting.Value, setting.Unit), StringComparer.OrdinalIgnoreCase);
        return read.Count == 0
            ? programme
            : programme with
            {
                SetPointUsPerCm = Number(read, "setPointUsPerCm", "uS/cm", programme.SetPointUsPerCm),
                HighAlarmUsPerCm = Number(read, "highAlarmUsPerCm", "uS/cm", programme.HighAlarmUsPerCm),
                PlanWeeks = Number(read, "planWeeks", null, programme.PlanWeeks) is { } weeks and >= 1 ? (int)weeks : programme.PlanWeeks,
                Feeds = [.. programme.Feeds.Select(feed => With(read, feed, OutputOf(visit, feed)))],
            };
    }

    /// <summary>Output that drives a feed: its own, else that of the only pump on its drum.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="feed">The feed.</param>
    /// <returns>Code of the output, or null.</returns>
    public static string? OutputOf(VisitFacts visit, Feed feed) =>
        feed.Output ?? visit.History.System.Pumps.FirstOrDefault(pump => pump.Drum.Equals(feed.Drum, StringComparison.OrdinalIgnoreCase))?.Output;

    /// <summary>Product of the drum of a feed.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="feed">The feed.</param>
    /// <returns>The product, or null where it is not on file.</returns>
    public static Product? ProductOf(VisitFacts visit, Feed feed) =>
        visit.History.System.Drums.LastOrDefault(drum => drum.Code.Equals(feed.Drum, StringComparison.OrdinalIgnoreCase)) is { } drum
            ? visit.History.Firm.Products.GetValueOrDefault(drum.Product)
            : null;

    /// <summary>How far the controller's calendar runs ahead of the true one, as read at a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="programme">Programme whose weeks the controller shows.</param>
    /// <returns>Clock and week together; zero where they were not read.</returns>
    public static TimeSpan Ahead(VisitFacts visit, Programme programme)
    {
        var clock = TimeSpan.FromMinutes(visit.Record.ClockOffByMin ?? 0);
        if (visit.Record.ProgrammeWeek is not { } shown)
        {
            return clock;
        }

        var weeks = programme.PlanWeeks ?? PlanCalendar.UsualWeeks;
        var calendar = PlanCalendar.Week(programme, visit.History.DayOf(visit.Visit.At + clock));
        var off = (((shown - calendar) % weeks) + weeks) % weeks;
        return clock + TimeSpan.FromDays(7 * (off > weeks / 2 ? off - weeks : off));
    }

    /// <summary>True starts of a calendar dose by the controller's own clock and week.</summary>
    /// <param name="visit">Visit at which clock and week were read.</param>
    /// <param name="programme">Programme as the controller holds it.</param>
    /// <param name="feed">One of its feeds by dose plan.</param>
    /// <param name="fromUtc">Start of the stretch, included.</param>
    /// <param name="toUtc">End of the stretch, excluded.</param>
    /// <returns>Starts, UTC, in order.</returns>
    public static IReadOnlyList<DateTime> TrueStarts(VisitFacts visit, Programme programme, Feed feed, DateTime fromUtc, DateTime toUtc)
    {
        var ahead = Ahead(visit, programme);
        var starts = visit.History.Doses.Starts(programme, feed, fromUtc + ahead, toUtc + ahead).ToArray();
        for (var i = 0; i < starts.Length; i++)
        {
            starts[i] -= ahead;
        }

        return starts;
    }

    private static Feed With(Dictionary<string, (SettingValue Value, string? Unit)> read, Feed feed, string? output)
    {
        if (output is null)
        {
            return feed;
        }

        var minutes = Number(read, output + "/bleedDownFirst/minutes", "min", feed.BleedDownFirst?.Minutes);
        var to = Number(read, output + "/bleedDownFirst/toUsPerCm", "uS/cm", feed.BleedDownFirst?.ToUsPerCm);
        return feed with
        {
            Mode = read.TryGetValue(output + "/mode", out var mode) && mode.Value.Text is { } text && text != "dose-plan" && feed.Mode == FeedMode.DosePlan ? FeedMode.ByHand : feed.Mode,
            Weeks = List(read, output + "/weeks", feed.Weeks, part => int.TryParse(part, NumberStyles.Integer, CultureInfo.InvariantCulture, out var week) ? week : null),
            Days = List(read, output + "/days", feed.Days, Day),
            Starts = Texts(read, output + "/starts", feed.Starts),
            WaitsFor = Texts(read, output + "/waitsFor", feed.WaitsFor),
            RunMinutes = Number(read, output + "/runMinutes", "min", feed.RunMinutes),
            HoldBleedShutMin = Number(read, output + "/holdBleedShutMin", "min", feed.HoldBleedShutMin),
            BleedDownFirst = minutes is null && to is null ? null : new BleedDown { Minutes = minutes, ToUsPerCm = to },
        };
    }

    private static double? Number(Dictionary<string, (SettingValue Value, string? Unit)> read, string name, string? unit, double? asked)
    {
        if (!read.TryGetValue(name, out var setting))
        {
            return asked;
        }

        if (setting.Value.IsNone)
        {
            return null;
        }

        return setting.Value.Number is not { } number ? asked
            : unit is null || setting.Unit is null || setting.Unit == unit ? number
            : Units.Convert(number, setting.Unit, unit) is { HasValue: true, Value: var converted } ? converted : asked;
    }

    private static IReadOnlyList<string> Texts(Dictionary<string, (SettingValue Value, string? Unit)> read, string name, IReadOnlyList<string> asked) =>
        read.TryGetValue(name, out var setting) ? Parts(setting.Value) : asked;

    private static IReadOnlyList<T> List<T>(Dictionary<string, (SettingValue Value, string? Unit)> read, string name, IReadOnlyList<T> asked, Func<string, T?> parse)
        where T : struct
    {
        if (!read.TryGetValue(name, out var setting))
        {
            return asked;
        }

        var parts = Parts(setting.Value).Select(parse).ToList();
        return parts.Contains(null) ? asked : [.. parts.Select(part => part!.Value)];
    }

    private static string[] Parts(SettingValue value) => value.IsNone
        ? []
        : value.ToString().Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static Weekday? Day(string part) => part.ToUpperInvariant() switch
    {
        "MON" => Weekday.Monday,
        "TUE" => Weekday.Tuesday,
        "WED" => Weekday.Wednesday,
        "THU" => Weekday.Thursday,
        "FRI" => Weekday.Friday,
        "SAT" => Weekday.Saturday,
        "SUN" => Weekday.Sunday,
        _ => null,
    };
}
