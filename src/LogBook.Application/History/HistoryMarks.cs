using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Settings;
using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>What a visit leaves on the time axis of its system.</summary>
internal static class HistoryMarks
{
    private static readonly HashSet<EventType> CleaningEvents = [EventType.Cleaned, EventType.Disinfected, EventType.Drained, EventType.Refilled, EventType.StrainerCleaned];
    private static readonly HashSet<EventType> ProbeEvents = [EventType.ProbeCleaned, EventType.ProbeRenewed];

    /// <summary>Changes made at the visit, and those found against what was left last (<paramref name="left"/>, which is brought up to date).</summary>
    public static IEnumerable<HistoryMark> Settings(SystemHistory history, SystemVisit visit, Dictionary<string, SettingValue> left)
    {
        var at = HistoryBuilder.Wall(history, visit.At);
        foreach (var setting in visit.Record.Settings.Where(setting => setting.NotRead != true))
        {
            var name = VisitTexts.NameOfSetting(setting.Name);
            if (setting.Found is { } found && left.TryGetValue(setting.Name, out var before) && before != found)
            {
                yield return new(HistoryMarkKind.Settings, at, visit.Visit.Id, new Said(HistoryTexts.SettingFoundChanged, name, Value(setting, before), Value(setting, found)));
            }

            if (setting is { Found: not null, Left: not null } && setting.Found != setting.Left)
            {
                yield return new(HistoryMarkKind.Settings, at, visit.Visit.Id, Changed(setting));
            }

            if ((setting.Left ?? setting.Found) is { } stays)
            {
                left[setting.Name] = stays;
            }
        }
    }

    /// <summary>Deliveries, exchanged containers, additions by hand.</summary>
    public static IEnumerable<HistoryMark> Stock(SystemHistory history, SystemVisit visit)
    {
        var at = HistoryBuilder.Wall(history, visit.At);
        foreach (var drum in visit.Record.Drums)
        {
            if (drum.Swapped == true)
            {
                yield return new(HistoryMarkKind.Delivery, at, visit.Visit.Id, new Said(HistoryTexts.Swapped, drum.Drum));
            }
            else if (drum.AddedL > 0)
            {
                yield return new(HistoryMarkKind.Delivery, at, visit.Visit.Id, new Said(HistoryTexts.Delivered, drum.Drum, Number(drum.AddedL.Value)));
            }
        }

        foreach (var addition in visit.Record.Additions)
        {
            var when = addition.At is { } moment ? HistoryBuilder.Wall(history, moment.Utc) : at;
            yield return new(HistoryMarkKind.Delivery, when, visit.Visit.Id, new Said(HistoryTexts.AddedByHand, addition.Product, WithUnit(addition.Amount, addition.Unit)));
        }
    }

    /// <summary>Events of the visit.</summary>
    public static IEnumerable<HistoryMark> Events(SystemHistory history, SystemVisit visit)
    {
        foreach (var happened in visit.Record.Events)
        {
            var kind = CleaningEvents.Contains(happened.Type) ? HistoryMarkKind.Cleaning : ProbeEvents.Contains(happened.Type) ? HistoryMarkKind.Calibration : HistoryMarkKind.Event;
            var name = EventWords.NameOf(happened);
            var words = EventWords.NoteOf(happened) is { } note ? new Said(HistoryTexts.EventWithNote, name, note) : new Said(name);
            yield return new(kind, HistoryBuilder.Wall(history, happened.At?.Utc ?? visit.At), visit.Visit.Id, words);
        }
    }

    /// <summary>Probes cleaned or calibrated.</summary>
    public static IEnumerable<HistoryMark> Probes(SystemHistory history, SystemVisit visit)
    {
        var at = HistoryBuilder.Wall(history, visit.At);
        foreach (var probe in visit.Record.Probes)
        {
            var name = probe.Probe ?? "–";
            if (probe.AfterCleaning is { } cleaned)
            {
                yield return new(HistoryMarkKind.Calibration, at, visit.Visit.Id, new Said(HistoryTexts.ProbeCleaned, name, WithUnit(probe.AsFound, probe.Unit), WithUnit(cleaned, probe.Unit)));
            }

            if (probe is { Calibrated: true, AsLeft: { } asLeft })
            {
                yield return new(HistoryMarkKind.Calibration, at, visit.Visit.Id, new Said(HistoryTexts.ProbeCalibrated, name, WithUnit(probe.AfterCleaning ?? probe.AsFound, probe.Unit), WithUnit(asLeft, probe.Unit)));
            }
        }
    }

    /// <summary>Results that came in later, on the moment they came in.</summary>
    public static IEnumerable<HistoryMark> Results(SystemHistory history, SystemVisit visit)
    {
        foreach (var reading in visit.Record.Readings.Where(reading => reading.ResultAt is not null))
        {
            yield return new(
                HistoryMarkKind.Result,
                HistoryBuilder.Wall(history, reading.ResultAt!.Value.Utc),
                visit.Visit.Id,
                Came(reading));
        }
    }

    /// <summary>Photos of the system, and those of the visit that belong to none.</summary>
    public static IEnumerable<HistoryMark> Photos(SystemHistory history, SystemVisit visit)
    {
        foreach (var photo in visit.Visit.Photos)
        {
            var slash = photo.Of.IndexOf('/', StringComparison.Ordinal);
            var (first, rest) = slash < 0 ? (photo.Of, photo.Of) : (photo.Of[..slash], photo.Of[(slash + 1)..]);
            var isOwn = first.Equals(history.System.Code, StringComparison.OrdinalIgnoreCase);
            if (isOwn || !visit.Visit.Systems.Any(system => system.System.Equals(first, StringComparison.OrdinalIgnoreCase)))
            {
                yield return new(HistoryMarkKind.Photo, HistoryBuilder.Wall(history, photo.TakenAt?.Utc ?? visit.At), visit.Visit.Id, new Said(HistoryTexts.PhotoOf, isOwn ? rest : photo.Of));
            }
        }
    }

    /// <summary>A setting that was changed at a visit, in words.</summary>
    public static Said Changed(SettingReading setting) =>
        new(HistoryTexts.SettingChanged, VisitTexts.NameOfSetting(setting.Name), Value(setting, setting.Found!), Value(setting, setting.Left!));

    /// <summary>A result, in words.</summary>
    public static Said Came(Reading reading) => new(HistoryTexts.Result, TestTexts.NameOf(reading.Test), ReadingWords.Of(reading));

    private static Text Value(SettingReading setting, SettingValue value) => SettingValues.Of(setting.Name, value, setting.Unit ?? SettingNames.UnitOf(setting.Name, null));

    private static Text Number(double value) => ReadingWords.InAll(language => Shown.Entered(value, language));

    private static Text WithUnit(double value, string unit) => ReadingWords.InAll(language => Shown.Entered(value, unit, language));
}
