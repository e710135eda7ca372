using LogBook.Domain.Languages;
using LogBook.Domain.Numbers;
using LogBook.Domain.Quantities;

namespace LogBook.Application.MoveIn;

/// <summary>Reads the rows of a block.</summary>
internal sealed class MoveInRows(MoveInSource source, IReadOnlyDictionary<string, ColumnMeaning> meanings, MoveInPlaces places, MoveInOpen open, List<MoveInSkip> skipped)
{
    private static readonly string[] Totals = ["total", "totals", "sum", "subtotal", "average", "avg", "mean", "min", "max", "promedio", "media", "suma", "soma", "minimum", "maximum"];
    private static readonly HashSet<string> NotDone = ["n/a", "na", "n.a.", "n/d", "-", "--", "---", "–", "—", "x", "none", "not taken", "not tested", "not done", "nt", "no", "s/d", "?"];
    private static readonly HashSet<string> MaybeNothing = ["nd", "n.d.", "nil", "not detected", "no detectado", "nao detectado"];

    private Language Language => source.Language;

    public IEnumerable<MoveInRow> Of(MoveInBlock block)
    {
        var columns = block.Headings.Select((heading, column) => (Heading: heading, Column: column)).Where(entry => entry.Heading.Length > 0)
            .Select(entry => new Column(entry.Column, entry.Heading, meanings[Headings.KeyOf(entry.Heading)])).Where(column => column.Meaning.Kind != ColumnKind.Leave).ToList();
        if (columns.Find(column => column.Meaning.Kind == ColumnKind.Day) is not { } day)
        {
            skipped.Add(new MoveInSkip(block.Sheet.Name, 0, MoveInTexts.NoDayColumn.In(Language)));
            yield break;
        }

        foreach (var column in columns)
        {
            Learn(block, column);
        }

        for (var row = block.FirstRow; row <= block.LastRow; row++)
        {
            if (Row(block, row, columns, day) is { } made)
            {
                yield return made;
            }
        }
    }

    private MoveInRow? Row(MoveInBlock block, int row, List<Column> columns, Column dayColumn)
    {
        var sheet = block.Sheet;
        var cells = sheet.Rows[row].Where(cell => !cell.IsEmpty).ToList();
        if (cells.Count == 0)
        {
            return null;
        }

        var written = DayReading.Parse(sheet.At(row, dayColumn.Index));
        if (!written.Any && cells.Find(cell => cell.Text.Any(char.IsLetter)) is { Text: { Length: > 0 } first } && Totals.Contains(Headings.Words(first).Trim().Split(' ')[0], StringComparer.Ordinal))
        {
            skipped.Add(new MoveInSkip(sheet.Name, row + 1, MoveInTexts.TotalRow.In(Language)));
            return null;
        }

        if (!written.Any && cells.TrueForAll(cell => cell.Number is null && !cell.Text.Any(char.IsDigit)) && sheet.At(row, dayColumn.Index) is var lead && (lead.IsEmpty || cells.Count == 1))
        {
            skipped.Add(new MoveInSkip(sheet.Name, row + 1, MoveInTexts.WordsRow.In(Language, string.Join(" ", cells.Select(cell => cell.Text)))));
            return null;
        }

        var values = columns.Where(column => column.Meaning.Kind is ColumnKind.Test or ColumnKind.DrumLevel or ColumnKind.DrumAdded or ColumnKind.Dial or ColumnKind.Total or ColumnKind.Hours && !sheet.At(row, column.Index).IsEmpty).ToList();
        var notes = columns.Where(column => column.Meaning.Kind == ColumnKind.Note).Select(column => sheet.At(row, column.Index).Text).Where(text => text.Length > 0).ToList();
        if (values.Count == 0 && notes.Count == 0)
        {
            skipped.Add(new MoveInSkip(sheet.Name, row + 1, MoveInTexts.Empty.In(Language)));
            return null;
        }

        if (DayOf(Place(sheet, row, dayColumn), written, dayColumn) is not { } day)
        {
            return null;
        }

        var site = SiteOf(sheet, row, columns);
        var (technician, told) = TechnicianOf(sheet, row, columns);
        var (isTimeKnown, time) = TimeOf(sheet, row, columns, written);
        var system = site is null ? null : SystemOf(sheet, row, columns, site);
        var read = values.Select(column => Value(sheet, row, column, site, system, notes)).ToList();
        return site is null || system is null || technician is null || !isTimeKnown
            ? null
            : new MoveInRow(Place(sheet, row, dayColumn), site, system, technician, told, day, time, [.. read.OfType<MoveInValue>()], notes);
    }

    // An empty cell tells no time; one that is not understood is asked about, so that no visit gets another time in silence.
    private (bool IsKnown, TimeOnly? Time) TimeOf(MoveInSheet sheet, int row, List<Column> columns, DayReading written)
    {
        var (isKnown, time) = (true, written.Time);
        foreach (var at in columns.Where(column => column.Meaning.Kind == ColumnKind.Time && !sheet.At(row, column.Index).IsEmpty).Select(column => Place(sheet, row, column)))
        {
            var told = DayReading.ParseTime(sheet.At(row, at.Column));
            time ??= told;
            isKnown &= told is not null || open.Ask("time", at, MoveInTexts.TimeMissing.In(Language, at.Value), [new MoveInChoice("none", MoveInTexts.NoTime.In(Language))], isFault: true) is not null;
        }

        return (isKnown, time);
    }

    private DateOnly? DayOf(MoveInPlace at, DayReading written, Column column)
    {
        if (!written.Any)
        {
            // The row is not lost: it stays a question until somebody says that it is none, or mends the file.
            if (open.Ask("day", at, MoveInTexts.DayMissing.In(Language, at.Value), [new MoveInChoice(MoveInOpen.Leave, MoveInTexts.LeaveRow.In(Language))], isFault: true) is not null)
            {
                skipped.Add(new MoveInSkip(at.Sheet, at.Row + 1, MoveInTexts.LeftOut.In(Language)));
            }

            return null;
        }

        if (!written.IsDoubtful)
        {
            return written.DayFirst ?? written.MonthFirst;
        }

        // The column tells by itself where some of its days can be read one way only, and all of those the same way.
        if (column.DayFirstSeen != column.MonthFirstSeen)
        {
            return column.DayFirstSeen ? written.DayFirst : written.MonthFirst;
        }

        MoveInChoice[] choices = [new("dmy", MoveInTexts.DayFirst.In(Language, LongDay(written.DayFirst!.Value))), new("mdy", MoveInTexts.MonthFirst.In(Language, LongDay(written.MonthFirst!.Value)))];
        var isMixed = column.DayFirstSeen;
        var answer = open.Ask("order", at, (isMixed ? MoveInTexts.WhichDay : MoveInTexts.DayOrder).In(Language, at.Value), choices, byColumn: !isMixed);
        return answer switch { "dmy" => written.DayFirst, "mdy" => written.MonthFirst, _ => null };
    }

    private string? SiteOf(MoveInSheet sheet, int row, List<Column> columns)
    {
        if (columns.Find(column => column.Meaning.Kind == ColumnKind.Site) is not { } column)
        {
            return places.SiteOfSheet(sheet.Name);
        }

        var at = Place(sheet, row, column);
        return places.Site(at.Value) ?? Named("site", at, MoveInTexts.WhichSite.In(Language, at.Value), source.Firm.Document.Sites.Select(site => new MoveInChoice(site.Code, $"{site.Code} {site.Name}")));
    }

    private string? SystemOf(MoveInSheet sheet, int row, List<Column> columns, string site)
    {
        var column = columns.Find(known => known.Meaning.Kind == ColumnKind.System);
        var text = column is null ? "" : sheet.At(row, column.Index).Text;
        if (places.System(site, text) is { } known)
        {
            return known;
        }

        var at = column is null ? new MoveInPlace(sheet.Name, row, 0, "", sheet.Name) : Place(sheet, row, column);
        return Named($"system|{site}", at, MoveInTexts.WhichSystem.In(Language, at.Value, site), places.SystemsOf(site).Select(system => new MoveInChoice(system.Code, $"{system.Code} {system.Name}")));
    }

    // Who it was, and what the file itself tells of it: that alone is the same whoever moves the file in.
    private (string? Code, string Told) TechnicianOf(MoveInSheet sheet, int row, List<Column> columns)
    {
        var column = columns.Find(known => known.Meaning.Kind == ColumnKind.Technician);
        if (column is null || (sheet.At(row, column.Index).IsEmpty && source.Mapping.Technician is not null))
        {
            return (source.Mapping.Technician, "");
        }

        var at = Place(sheet, row, column);
        var known = places.Person(at.Value);
        return (known ?? Named("person", at, MoveInTexts.WhichPerson.In(Language, at.Value), source.Firm.Document.People.Select(person => new MoveInChoice(person.Code, $"{person.Code} {person.Name}"))), known ?? Headings.KeyOf(at.Value));
    }

    // Asked once for each way of writing, not for each row; an empty cell says nothing of another empty one, so each is asked by itself.
    private string? Named(string kind, MoveInPlace at, string says, IEnumerable<MoveInChoice> choices) =>
        open.AskOnce(string.IsNullOrWhiteSpace(at.Value) ? $"{kind}|{at.Sheet}|{at.Address}" : $"{kind}|{Headings.KeyOf(at.Value)}", at, at.Address, says, [.. choices]);

    private MoveInValue? Value(MoveInSheet sheet, int row, Column column, string? site, string? system, List<string> notes)
    {
        var (cell, at) = (sheet.At(row, column.Index), Place(sheet, row, column));
        MoveInValue? LeftOut()
        {
            notes.Add(MoveInTexts.NoteOf.In(Language, column.Heading, at.Value));
            return null;
        }

        if (site is not null && system is not null && !IsPart(column.Meaning, site, system))
        {
            var says = MoveInTexts.NotKnown.In(Language, column.Meaning.Code, $"{site} {system}");
            return open.Ask("part", at, says, [open.LeaveChoice], isFault: true) is null ? null : LeftOut();
        }

        var key = Headings.KeyOf(cell.Text);
        if (NotDone.Contains(key))
        {
            return column.Meaning.Kind == ColumnKind.Test ? new MoveInValue(column.Meaning, at, null, column.Meaning.Unit, NotTaken: cell.Text.Trim()) : LeftOut();
        }

        if (MaybeNothing.Contains(key) && column.Meaning.Kind == ColumnKind.Test)
        {
            return open.Ask("none", at, MoveInTexts.NotDone.In(Language, at.Value), [new("not-done", MoveInTexts.WasNotDone.In(Language)), new("nothing", MoveInTexts.NothingFound.In(Language)), open.LeaveChoice]) switch
            {
                "not-done" => new MoveInValue(column.Meaning, at, null, column.Meaning.Unit, NotTaken: cell.Text.Trim()),
                "nothing" => new MoveInValue(column.Meaning, at, null, column.Meaning.Unit, NotQuantifiable: true),
                MoveInOpen.Leave => LeftOut(),
                _ => null,
            };
        }

        var (text, unit) = WithUnit(cell, column.Meaning.Unit);
        if (cell.Number is { } number)
        {
            return Made(column, at, number, unit, null, site, system, LeftOut);
        }

        var reading = NumberEntry.Parse(text, Language.English);
        switch (reading.Kind)
        {
            case NumberReadingKind.Understood:
                return Made(column, at, reading.Value!.Value, unit, reading.Qualifier, site, system, LeftOut);
            case NumberReadingKind.Ask:
                return Chosen(column, at, text, reading) is { } chosen ? Made(column, at, chosen, unit, reading.Qualifier, site, system, LeftOut) : Answer("number", at) == MoveInOpen.Leave ? LeftOut() : null;
            default:
                return open.Ask("word", at, MoveInTexts.NoNumber.In(Language, at.Value), [open.LeaveChoice], isFault: true) is null ? null : LeftOut();
        }
    }

    // "1.234": the other numbers of the column tell which sign is the decimal one, if they all agree; otherwise a person does.
    private double? Chosen(Column column, MoveInPlace at, string text, NumberReading reading)
    {
        var sign = text.Contains(',', StringComparison.Ordinal) ? ',' : '.';
        var (asGroup, asDecimal) = (reading.Choices.Max(), reading.Choices.Min());
        if (reading.Choices.Count == 2 && column.PointSeen != column.CommaSeen)
        {
            return (column.PointSeen ? '.' : ',') == sign ? asDecimal : asGroup;
        }

        var isMixed = column.PointSeen && column.CommaSeen;
        MoveInChoice[] choices = reading.Choices.Count == 2
            ? [new("group", Shown.Entered(asGroup, Language)), new("decimal", Shown.Entered(asDecimal, Language)), open.LeaveChoice]
            : [new("group", Shown.Entered(asGroup, Language)), open.LeaveChoice];
        return open.Ask("number", at, MoveInTexts.WhichNumber.In(Language, at.Value), choices, byColumn: !isMixed) switch { "group" => asGroup, "decimal" => asDecimal, _ => null };
    }

    private string? Answer(string kind, MoveInPlace at) =>
        source.Answers.GetValueOrDefault($"{kind}|{at.Sheet}|{at.Address}") ?? source.Answers.GetValueOrDefault(MoveInOpen.ColumnId(kind, at));

    // A unit behind the number overrules that of the column: "95 mg/L".
    private static (string Text, string? Unit) WithUnit(MoveInCell cell, string? unit)
    {
        var text = cell.Text.Trim();
        var at = text.LastIndexOfAny(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9']);
        return at >= 0 && at + 1 < text.Length && UnitWords.Of(text[(at + 1)..]) is [var own] ? (text[..(at + 1)], own) : (text, unit);
    }

    private MoveInValue? Made(Column column, MoveInPlace at, double number, string? unit, string? qualifier, string? site, string? system, Func<MoveInValue?> leftOut)
    {
        MoveInValue? Refused(string says) => open.Ask("measure", at, says, [open.LeaveChoice], isFault: true) is null ? null : leftOut();

        // Only a result of a test is kept with its sign: for the others "<5" would be kept as 5.
        if (qualifier is not null && column.Meaning.Kind != ColumnKind.Test)
        {
            return Refused(MoveInTexts.NoSign.In(Language, at.Value));
        }

        if (column.Meaning.Kind is ColumnKind.Dial or ColumnKind.Total && site is not null && system is not null)
        {
            var counts = places.SystemsOf(site).First(known => known.Code == system).Meters.First(meter => meter.Code.Equals(column.Meaning.Code, StringComparison.OrdinalIgnoreCase)).Unit;
            if (unit is not null && unit != counts)
            {
                MoveInChoice[] choices =
                [
                    new("meter", MoveInTexts.AsMeter.In(Language, Shown.Unit(counts, Language))), new("convert", MoveInTexts.Convert.In(Language, Shown.Unit(unit, Language))), open.LeaveChoice,
                ];
                switch (open.Ask("unit", at, MoveInTexts.OtherUnit.In(Language, column.Meaning.Code, Shown.Unit(counts, Language), Shown.Unit(unit, Language)), choices))
                {
                    case "meter":
                        return new MoveInValue(column.Meaning, at, number, counts, qualifier);
                    case "convert" when Units.Convert(number, unit, counts) is { HasValue: true } converted:
                        return new MoveInValue(column.Meaning, at, Math.Round(converted.Value, 6), counts, qualifier);
                    case null:
                        return null;
                    default:
                        return leftOut();
                }
            }
        }

        if (column.Meaning.Kind == ColumnKind.DrumAdded && unit != "L")
        {
            return Units.Convert(number, unit, "L") is { HasValue: true } litres
                ? new MoveInValue(column.Meaning, at, Math.Round(litres.Value, 6), "L")
                : Refused(MoveInTexts.WrongUnit.In(Language, at.Value, Shown.Unit("L", Language)));
        }

        if (column.Meaning.Kind == ColumnKind.Hours && unit is not (null or "h"))
        {
            return Refused(MoveInTexts.WrongUnit.In(Language, at.Value, Shown.Unit("h", Language)));
        }

        return new MoveInValue(column.Meaning, at, number, unit, qualifier);
    }

    private bool IsPart(ColumnMeaning meaning, string site, string system)
    {
        var own = places.SystemsOf(site).First(known => known.Code == system);
        bool Same(string code) => code.Equals(meaning.Code, StringComparison.OrdinalIgnoreCase);
        return meaning.Kind switch
        {
            ColumnKind.DrumLevel or ColumnKind.DrumAdded => own.Drums.Any(drum => Same(drum.Code)),
            ColumnKind.Dial or ColumnKind.Total => own.Meters.Any(meter => Same(meter.Code)),
            ColumnKind.Hours => own.Outputs.Any(output => Same(output.Code)),
            _ => true,
        };
    }

    private static void Learn(MoveInBlock block, Column column)
    {
        for (var row = block.FirstRow; row <= block.LastRow; row++)
        {
            var cell = block.Sheet.At(row, column.Index);
            if (column.Meaning.Kind == ColumnKind.Day)
            {
                var day = DayReading.Parse(cell);
                if (cell.Date is null && day.Any && !day.IsDoubtful && cell.Text.IndexOfAny(['/', '-']) is 1 or 2 && !cell.Text.Any(char.IsLetter))
                {
                    column.DayFirstSeen |= day.DayFirst is not null && day.DayFirst.Value.Day > 12;
                    column.MonthFirstSeen |= day.MonthFirst is not null;
                }
            }
            else if (cell.Number is null && NumberEntry.Parse(WithUnit(cell, null).Text, Language.English).Kind == NumberReadingKind.Understood)
            {
                // With both signs the last one is the decimal; grouped thousands alone tell nothing of it.
                var last = cell.Text.LastIndexOfAny(['.', ',']);
                var isGrouped = last >= 0 && cell.Text.Count(letter => letter == cell.Text[last]) > 1;
                column.PointSeen |= last >= 0 && (isGrouped ? cell.Text[last] == ',' : cell.Text[last] == '.');
                column.CommaSeen |= last >= 0 && (isGrouped ? cell.Text[last] == '.' : cell.Text[last] == ',');
            }
        }
    }

    private static MoveInPlace Place(MoveInSheet sheet, int row, Column column) => new(sheet.Name, row, column.Index, column.Heading, sheet.At(row, column.Index).Text);

    // The one way of writing a day that nobody reads in two ways.
    private static string LongDay(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private sealed class Column(int index, string heading, ColumnMeaning meaning)
    {
        public int Index => index;

        public string Heading => heading;

        public ColumnMeaning Meaning => meaning;

        public bool DayFirstSeen { get; set; }

        public bool MonthFirstSeen { get; set; }

        public bool PointSeen { get; set; }

        public bool CommaSeen { get; set; }
    }
}
