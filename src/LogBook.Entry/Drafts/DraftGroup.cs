using System.Globalization;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Numbers;

namespace LogBook.Entry.Drafts;

/// <summary>The fields of one record of a draft, read one by one; remembers where each came from and what could not be read.</summary>
internal sealed class DraftGroup(VisitDraft draft, string key, string path, DraftTrace trace)
{
    public const string Removed = "removed";

    public bool IsRemoved => Text(Removed) is not null;

    public string Key => key;

    public string? Text(string name)
    {
        trace.Note(Path(name), Field(name));
        var text = draft.Text(Field(name)).Trim();
        return text.Length > 0 ? text : null;
    }

    public double? Number(string name) => Number(name, name);

    // The name on the form may differ from the field of the record it becomes.
    public double? Number(string name, string recordField)
    {
        trace.Note(Path(recordField), Field(name));
        var field = draft.Field(Field(name));
        if (field is null)
        {
            return null;
        }

        var reading = NumberEntry.Parse(field.Text, trace.Language);
        var value = reading.Settled(field.Choice);
        if (value is null && reading.Kind != NumberReadingKind.Empty)
        {
            trace.Unread.Add(new UnreadField(Field(name), field.Text, reading));
        }

        return value;
    }

    public string? Qualifier(string name) => NumberEntry.Parse(draft.Text(Field(name)), trace.Language).Qualifier;

    public int? Whole(string name) => Number(name) is { } value && value == Math.Truncate(value) && Math.Abs(value) < 1_000_000 ? (int)value : null;

    public void Locate(string recordField, string name) => trace.Note(Path(recordField), Field(name));

    public string? Unit(string name)
    {
        trace.Note(Path("unit"), Field(name));
        return draft.Field(Field(name))?.Unit is { Length: > 0 } unit ? unit : null;
    }

    // A unit that the form converts from, which is not the unit of the record.
    public string? PlainUnit(string name) => draft.Field(Field(name))?.Unit;

    public bool IsNumber(string name) => draft.Field(Field(name))?.Unit is not null;

    public double? First(string name) => draft.Field(Field(name))?.First;

    public bool? Confirmed(string name) => draft.Field(Field(name))?.Confirmed == true ? true : null;

    public bool? Yes(string name) => Text(name) switch
    {
        "yes" => true,
        "no" => false,
        _ => null,
    };

    public TEnum? Choice<TEnum>(string name)
        where TEnum : struct, Enum =>
        Enum.TryParse<TEnum>(Text(name), out var value) ? value : null;

    public DateOnly? Day(string name)
    {
        if (Text(name) is not { } text)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        trace.Unread.Add(new UnreadField(Field(name), text, null));
        return null;
    }

    public Moment? Time(string name, Moment? original)
    {
        if (Text(name) is not { } text)
        {
            return null;
        }

        var moment = draft.ReadMoment(text, original, draft.Arrived());
        if (moment is null)
        {
            trace.Unread.Add(new UnreadField(Field(name), text, null));
        }

        return moment;
    }

    public Guid? Id(string name) => Guid.TryParse(Text(name), out var id) ? id : null;

    /// <summary>Notes that no record was made of what was typed here.</summary>
    /// <param name="needed">Fields without which there is none.</param>
    /// <param name="apart">Fields that are not lost with this record.</param>
    public void NoteUnfinished(IReadOnlyList<string> needed, params IReadOnlyList<string> apart)
    {
        if (needed.FirstOrDefault(name => Text(name) is null) is { } missing && draft.TypedUnder(key).FirstOrDefault(name => !apart.Contains(name)) is { } typed)
        {
            trace.Unfinished.Add(new UnfinishedRecord(Field(missing), Field(typed)));
        }
    }

    /// <summary>Notes that one of two fields was typed that mean nothing without each other.</summary>
    public void NoteHalf(string first, string second)
    {
        if (Text(first) is null != Text(second) is null)
        {
            trace.Unfinished.Add(Text(first) is null ? new(Field(first), Field(second)) : new(Field(second), Field(first)));
        }
    }

    private string Field(string name) => DraftKey.Under(key, name);

    private string Path(string name) => path.Length == 0 ? name : path + "." + name;
}
