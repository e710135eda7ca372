using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;

namespace LogBook.Application.MoveIn;

/// <summary>Makes visits from rows: the same row twice is one, rows of one day belong together, and each visit is checked as at entry.</summary>
internal sealed class MoveInMaker(MoveInSource source, MoveInOpen open, List<MoveInSkip> skipped)
{
    // As the intake compares: the usual value of a test is the median of its last six; a test may be missing on some visits.
    private const int VisitsCompared = 12;

    // A sheet seldom tells the time; noon lies within the day in every zone and season.
    private static readonly TimeOnly Unknown = new(12, 0);

    public IReadOnlyList<MoveInVisit> Visits(IReadOnlyList<MoveInRow> rows)
    {
        var stays = rows.GroupBy(row => (row.Site, row.System, row.Day, row.Time)).OrderBy(group => group.Key.Day).ThenBy(group => group.Key.Time).SelectMany(group => StaysOf([.. group])).ToList();
        var made = stays.GroupBy(stay => (stay.Site, stay.Technician, stay.Told, stay.Day, stay.Time, stay.Turn))
            .GroupBy(group => (group.Key.Site, group.Key.Told, group.Key.Day, group.Key.Time, group.Key.Turn)).SelectMany(alike => alike.Select((group, place) => Make([.. group], place)))
            .OrderBy(visit => visit.Visit.Arrived.Utc).ThenBy(visit => visit.Visit.Site, StringComparer.Ordinal).ToList();
        var before = new Dictionary<string, List<Visit>>(StringComparer.OrdinalIgnoreCase);
        var visits = new List<MoveInVisit>(made.Count);
        foreach (var visit in made)
        {
            var earlier = before.TryGetValue(visit.Visit.Site, out var known) ? known : before[visit.Visit.Site] = [];
            if (Checked(visit, earlier) is { } good)
            {
                visits.Add(good);
                earlier.Add(good.Visit);
                if (earlier.Count > VisitsCompared)
                {
                    earlier.RemoveAt(0);
                }
            }
        }

        return visits;
    }

    // Rows of one system and day: parts of one visit, the same row twice, or two visits.
    private IEnumerable<Stay> StaysOf(List<MoveInRow> rows)
    {
        var stays = new List<Stay>();
        foreach (var row in rows)
        {
            var target = stays.Find(stay => row.Values.All(value => !stay.Values.TryGetValue(value.Key, out var other) || other.SaysTheSame(value)));
            if (target is not null)
            {
                Join(target, row);
                continue;
            }

            if (stays.Count == 0)
            {
                stays.Add(Begin(row, 0));
                continue;
            }

            var first = stays[0];
            var clash = row.Values.First(value => first.Values.TryGetValue(value.Key, out var other) && !other.SaysTheSame(value));
            var says = MoveInTexts.TwoRows.In(source.Language, first.Row + 1, row.Row + 1, row.Sheet, $"{clash.At.Heading} {first.Values[clash.Key].At.Value} / {clash.At.Value}");
            MoveInChoice[] choices = [new("both", MoveInTexts.TwoVisits.In(source.Language)), new("first", MoveInTexts.KeepFirst.In(source.Language)), new("second", MoveInTexts.KeepSecond.In(source.Language))];
            switch (open.Ask("twice", clash.At, says, choices, byColumn: false))
            {
                case "both":
                    stays.Add(Begin(row, stays.Count));
                    break;
                case "second":
                    // One visit: the row that is not right where the two differ still tells what the other does not.
                    skipped.Add(new MoveInSkip(first.Sheet, first.Row + 1, MoveInTexts.OtherTaken.In(source.Language, row.Row + 1, row.Sheet)));
                    stays[0] = Begin(row, 0);
                    Add(stays[0], first.Values.Values, first.Notes);
                    break;
                case "first":
                    skipped.Add(new MoveInSkip(row.Sheet, row.Row + 1, MoveInTexts.OtherTaken.In(source.Language, first.Row + 1, first.Sheet)));
                    Add(first, row.Values, row.Notes);
                    break;
                default:
                    break;
            }
        }

        return stays;
    }

    private static Stay Begin(MoveInRow row, int turn) => new(row.At, row.Site, row.System, row.Technician, row.Told, row.Day, row.Time, turn, row.Values.GroupBy(value => value.Key).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal), [.. row.Notes]);

    private void Join(Stay target, MoveInRow row)
    {
        if (Add(target, row.Values, row.Notes) == 0)
        {
            skipped.Add(new MoveInSkip(row.Sheet, row.Row + 1, MoveInTexts.Twice.In(source.Language, target.Row + 1, target.Sheet)));
        }
    }

    private static int Add(Stay target, IEnumerable<MoveInValue> values, IEnumerable<string> notes)
    {
        var added = values.Count(value => target.Values.TryAdd(value.Key, value));
        foreach (var note in notes.Where(note => !target.Notes.Contains(note, StringComparer.Ordinal)).ToList())
        {
            target.Notes.Add(note);
            added++;
        }

        return added;
    }

    // The place counts visits that the file itself does not tell apart, and that a person gave to different technicians.
    private MoveInVisit Make(List<Stay> stays, int place)
    {
        var first = stays[0];
        var zone = TimeZoneInfo.FindSystemTimeZoneById(source.Firm.Sites[first.Site].TimeZone);
        var wall = first.Day.ToDateTime(first.Time ?? Unknown).AddHours(first.Turn);
        while (zone.IsInvalidTime(wall))
        {
            wall = wall.AddMinutes(30);
        }

        var arrived = Moment.Of(new DateTimeOffset(wall, zone.GetUtcOffset(wall)));
        var cells = new Dictionary<string, MoveInPlace>(StringComparer.Ordinal);
        var systems = stays.OrderBy(stay => stay.System, StringComparer.OrdinalIgnoreCase).Select((stay, index) => SystemOf(stay, $"systems[{index.ToString(CultureInfo.InvariantCulture)}]", cells)).ToList();
        var notes = stays.SelectMany(stay => stay.Notes).Distinct(StringComparer.Ordinal).ToList();
        if (cells.Count == 0)
        {
            cells["notes"] = first.At;
        }

        return new MoveInVisit(
            new Visit
            {
                Id = Identity(first.Site, arrived, first.Told, first.Turn, place),
                Site = source.Firm.Sites[first.Site].Code,
                Technician = first.Technician,
                Kind = VisitKind.Routine,
                Arrived = arrived,
                Systems = systems,
                Notes = notes.Count == 0 ? null : string.Join("\n", notes),
            },
            cells);
    }

    private VisitedSystem SystemOf(Stay stay, string path, Dictionary<string, MoveInPlace> cells)
    {
        var (readings, drums, meters, hours) = (new List<Reading>(), new List<DrumReading>(), new List<MeterReading>(), new List<HoursReading>());
        foreach (var value in stay.Values.Values.OrderBy(value => value.At.Sheet == stay.Sheet ? 0 : 1).ThenBy(value => value.At.Column))
        {
            var code = value.Meaning.Code!;
            switch (value.Meaning.Kind)
            {
                case ColumnKind.Test:
                    cells[$"{path}.readings[{readings.Count}]"] = value.At;
                    readings.Add(new Reading
                    {
                        At = value.Meaning.At!, Test = code, Value = value.Number, Unit = value.Unit!, Qualifier = value.Qualifier, NotTaken = value.NotTaken, NotQuantifiable = value.NotQuantifiable ? true : null,
                        Confirmed = IsConfirmed(value.At) ? true : null,
                    });
                    break;
                case ColumnKind.DrumLevel or ColumnKind.DrumAdded:
                    var drum = Place(drums, known => known.Drum.Equals(code, StringComparison.OrdinalIgnoreCase), () => new DrumReading { Drum = code });
                    cells[$"{path}.drums[{drum}].{(value.Meaning.Kind == ColumnKind.DrumLevel ? "level" : "addedL")}"] = value.At;
                    drums[drum] = value.Meaning.Kind == ColumnKind.DrumLevel ? drums[drum] with { Level = value.Number, Unit = value.Unit } : drums[drum] with { AddedL = value.Number };
                    break;
                case ColumnKind.Dial or ColumnKind.Total:
                    var meter = Place(meters, known => known.Meter.Equals(code, StringComparison.OrdinalIgnoreCase), () => new MeterReading { Meter = code });
                    cells[$"{path}.meters[{meter}].{(value.Meaning.Kind == ColumnKind.Dial ? "dial" : "total")}"] = value.At;
                    meters[meter] = value.Meaning.Kind == ColumnKind.Dial ? meters[meter] with { Dial = value.Number } : meters[meter] with { Total = value.Number };
                    break;
                default:
                    cells[$"{path}.hoursRun[{hours.Count}]"] = value.At;
                    hours.Add(new HoursReading { Output = code, Hours = value.Number ?? 0 });
                    break;
            }
        }

        return new VisitedSystem { System = stay.System, Readings = readings, Drums = drums, Meters = meters, HoursRun = hours };
    }

    // What blocks at entry blocks here, and what would be asked again is asked: by the cell, in the words of the form.
    private MoveInVisit? Checked(MoveInVisit made, IReadOnlyList<Visit> before)
    {
        var issues = VisitChecks.Check(made.Visit, new VisitContext(source.Firm, before, source.Language));
        var isGood = true;
        var left = new List<(string Path, MoveInPlace At)>();
        foreach (var issue in issues)
        {
            var (path, at) = made.CellOf(issue.Path);
            switch (AnswerTo(issue, at))
            {
                case null:
                    isGood = false;
                    break;
                case MoveInOpen.Leave:
                    left.Add((path ?? issue.Path, at));
                    break;
                default:
                    break;
            }
        }

        return !isGood ? null : left.Count == 0 ? made : Without(made, left);
    }

    private string? AnswerTo(Issue issue, MoveInPlace at) => issue.Blocks
        ? open.Ask("refused", at, issue.Message, [open.LeaveChoice], isFault: true)
        : open.Ask("doubt", at, issue.Message, [new MoveInChoice(MoveInOpen.Take, MoveInTexts.TakeIt.In(source.Language)), open.LeaveChoice]);

    private bool IsConfirmed(MoveInPlace at) =>
        (source.Answers.GetValueOrDefault($"doubt|{at.Sheet}|{at.Address}") ?? source.Answers.GetValueOrDefault(MoveInOpen.ColumnId("doubt", at))) == MoveInOpen.Take;

    // A value left out is told in the notes, so that nothing of the sheet is lost.
    private static MoveInVisit Without(MoveInVisit made, List<(string Path, MoveInPlace At)> left)
    {
        var places = left.Select(entry => entry.At).ToHashSet();
        var paths = made.Cells.Where(cell => places.Contains(cell.Value)).Select(cell => cell.Key).ToHashSet(StringComparer.Ordinal);
        var systems = made.Visit.Systems.Select((record, s) => record with
        {
            Readings = [.. record.Readings.Where((_, i) => !paths.Contains($"systems[{s}].readings[{i}]"))],
            Drums = [.. record.Drums.Select((drum, i) => (paths.Contains($"systems[{s}].drums[{i}].level") ? drum with { Level = null, Unit = null } : drum) is var kept && paths.Contains($"systems[{s}].drums[{i}].addedL") ? kept with { AddedL = null } : kept).Where(drum => drum.Level is not null || drum.AddedL is not null)],
            HoursRun = [.. record.HoursRun.Where((_, i) => !paths.Contains($"systems[{s}].hoursRun[{i}]"))],
            Meters = [.. record.Meters.Select((meter, i) => meter with { Dial = paths.Contains($"systems[{s}].meters[{i}].dial") ? null : meter.Dial, Total = paths.Contains($"systems[{s}].meters[{i}].total") ? null : meter.Total }).Where(meter => meter.Dial is not null || meter.Total is not null)],
        }).ToList();
        var notes = left.Select(entry => $"{entry.At.Heading}: {entry.At.Value}").Distinct(StringComparer.Ordinal).Where(note => made.Visit.Notes?.Contains(note, StringComparison.Ordinal) != true);
        return new MoveInVisit(
            made.Visit with { Systems = systems, Notes = string.Join("\n", notes.Prepend(made.Visit.Notes).Where(note => !string.IsNullOrEmpty(note))) },
            made.Cells.Where(cell => !paths.Contains(cell.Key)).ToDictionary(cell => cell.Key, cell => cell.Value, StringComparer.Ordinal));
    }

    private static int Place<T>(List<T> list, Predicate<T> isIt, Func<T> make)
    {
        var place = list.FindIndex(isIt);
        if (place < 0)
        {
            list.Add(make());
        }

        return place < 0 ? list.Count - 1 : place;
    }

    // The time of the visit and a hash of what it is, in the shape of version 7: the same row always gets the same identity.
    private static Guid Identity(string site, Moment arrived, string told, int turn, int place)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"move-in|{site.ToUpperInvariant()}|{arrived.Utc:O}|{told.ToUpperInvariant()}|{turn}{(place == 0 ? "" : $"|{place}")}")));
        Span<byte> bytes = stackalloc byte[16];
        BinaryPrimitives.WriteInt64BigEndian(bytes, new DateTimeOffset(arrived.Utc, TimeSpan.Zero).ToUnixTimeMilliseconds() << 16);
        hash.AsSpan(0, 10).CopyTo(bytes[6..]);
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x70);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true);
    }

    private sealed record Stay(MoveInPlace At, string Site, string System, string Technician, string Told, DateOnly Day, TimeOnly? Time, int Turn, Dictionary<string, MoveInValue> Values, List<string> Notes)
    {
        public string Sheet => At.Sheet;

        public int Row => At.Row;
    }
}
