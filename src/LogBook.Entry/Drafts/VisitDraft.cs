using System.Globalization;
using System.Text.Json;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Domain.Numbers;

namespace LogBook.Entry.Drafts;

/// <summary>
/// Working copy of one visit: the text of every field as typed, valid or not, under a key. The visit is made of it when
/// asked for, so that nothing a person typed can be lost by a conversion.
/// </summary>
public sealed class VisitDraft
{
    // Filled or kept by the form: they say how, where or when, but nothing that a person would miss.
    private static readonly HashSet<string> OfTheForm = new(StringComparer.Ordinal)
    {
        "row", "id", "removed", "mode", "at", "for", "type", "state", "method", "perDrop", "instrument", "follows", "takenAt", "resultAt", "waitEnded", "receivedAt", "settleStart", "notTaken", "notQuantifiable",
    };

    private readonly SortedDictionary<string, DraftField> _fields = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _cautionsSeen = new(StringComparer.Ordinal);
    private Dictionary<string, List<string>>? _partsByKey;
    private int _lastRow;

    private VisitDraft(Guid id, string site, string technician, string timeZone, Visit? amended)
    {
        Id = id;
        Site = site;
        Technician = technician;
        TimeZone = timeZone;
        Amended = amended;
    }

    /// <summary>Identity of the visit, version 7.</summary>
    public Guid Id { get; }

    /// <summary>Code of the site.</summary>
    public string Site { get; }

    /// <summary>Code of the person who did the visit.</summary>
    public string Technician { get; }

    /// <summary>IANA name of the site's zone.</summary>
    public string TimeZone { get; }

    /// <summary>The visit that this draft amends, or null for a new one.</summary>
    public Visit? Amended { get; }

    /// <summary>Every field that was touched, by key.</summary>
    public IReadOnlyDictionary<string, DraftField> Fields
    {
        get
        {
            Watch?.ReadAll();
            return _fields;
        }
    }

    /// <summary>Is told what of the draft is read and written, so that a form shows anew only what is another.</summary>
    internal IDraftWatch? Watch { get; set; }

    /// <summary>Names of the cautions acknowledged at this visit.</summary>
    public IReadOnlyCollection<string> CautionsSeen => _cautionsSeen;

    /// <summary>Whether nobody has entered anything: its texts are those of a routine visit, or of the visit that it amends, at the start. A caution that was read is no entry.</summary>
    public bool IsUntouched
    {
        get
        {
            var begun = new VisitDraft(Id, Site, Technician, TimeZone, Amended);
            if (Amended is { } visit)
            {
                DraftWriter.Write(visit, begun);
            }
            else
            {
                begun.Begin(VisitKind.Routine);
            }

            return Texts().SequenceEqual(begun.Texts());
        }
    }

    /// <summary>Starts a visit: its identity and its arrival are made now.</summary>
    /// <param name="site">The site.</param>
    /// <param name="technician">Code of the person.</param>
    /// <param name="clock">Clock of the device.</param>
    /// <param name="kind">Why the visit takes place.</param>
    /// <returns>The draft.</returns>
    public static VisitDraft Start(Site site, string technician, TimeProvider clock, VisitKind kind = VisitKind.Routine)
    {
        var draft = new VisitDraft(Guid.CreateVersion7(clock.GetUtcNow()), site.Code, technician, site.TimeZone, null);
        draft.Begin(kind);
        return draft;
    }

    /// <summary>Opens a visit again to amend it: a late result or a correction.</summary>
    /// <param name="visit">The visit as it stands.</param>
    /// <param name="site">Its site.</param>
    /// <returns>A draft that holds everything the visit holds.</returns>
    public static VisitDraft Amend(Visit visit, Site site)
    {
        var draft = new VisitDraft(visit.Id, visit.Site, visit.Technician, site.TimeZone, visit);
        DraftWriter.Write(visit, draft);
        return draft;
    }

    /// <summary>Reads a kept draft; keys that were being typed when it was kept count as entered.</summary>
    /// <param name="json">From <see cref="ToJson"/>.</param>
    /// <returns>The draft.</returns>
    /// <exception cref="JsonException">The text is not a draft.</exception>
    public static VisitDraft FromJson(string json)
    {
        var document = JsonSerializer.Deserialize(json, DraftJson.Default.DraftDocument) ?? throw new JsonException("The draft is empty.");
        if (document.Form != 1)
        {
            throw new JsonException("The draft was written by a newer LogBook.");
        }

        // What a person did not keep with this program may lack parts.
        if (document is { CautionsSeen: null } or { Fields: null } or { Site: null } or { Technician: null } or { TimeZone: null } || document.Fields.Values.Any(field => field is null))
        {
            throw new JsonException("The draft is not whole.");
        }

        var draft = new VisitDraft(document.Id, document.Site, document.Technician, document.TimeZone, document.Amended) { _lastRow = document.LastRow };
        draft._cautionsSeen.UnionWith(document.CautionsSeen);
        foreach (var (key, field) in document.Fields)
        {
            draft._fields[key] = field.Typing is { } typed ? Retyped(field, typed) : field;
        }

        return draft;
    }

    /// <summary>The draft as a text to keep.</summary>
    /// <returns>JSON.</returns>
    public string ToJson() => JsonSerializer.Serialize(
        new DraftDocument
        {
            Id = Id,
            Site = Site,
            Technician = Technician,
            TimeZone = TimeZone,
            Amended = Amended,
            LastRow = _lastRow,
            CautionsSeen = [.. _cautionsSeen],
            Fields = _fields,
        },
        DraftJson.Default.DraftDocument);

    /// <summary>The visit as far as it can be read.</summary>
    /// <returns>The visit; <see cref="Build"/> also tells what could not be read.</returns>
    public Visit ToVisit() => Build().Visit;

    /// <summary>The visit, what could not be read, and which field each path of the visit came from.</summary>
    /// <param name="language">Language of the numbers' choices.</param>
    /// <returns>The outcome.</returns>
    public DraftBuild Build(Language language = Language.English) => DraftReader.Read(this, language);

    /// <summary>A field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>The field, or null when it was never touched.</returns>
    public DraftField? Field(string key)
    {
        Watch?.Read(key);
        return _fields.GetValueOrDefault(key);
    }

    /// <summary>Text of a field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>The text; empty when it was never touched.</returns>
    public string Text(string key) => Field(key)?.Text ?? string.Empty;

    /// <summary>What is understood of a field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="language">Language of the choices.</param>
    /// <returns>The reading.</returns>
    public NumberReading Reading(string key, Language language) => NumberEntry.Parse(Text(key), language);

    /// <summary>Number of a field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>The number, or null when there is none yet.</returns>
    public double? Number(string key) => Field(key) is { } field ? NumberEntry.Parse(field.Text, Language.English).Settled(field.Choice) : null;

    /// <summary>Sets a field.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="field">The field; an untouched one removes it.</param>
    public void Set(string key, DraftField field)
    {
        var before = _fields.GetValueOrDefault(key);
        var isEmpty = field == new DraftField();
        if (before == field || (before is null && isEmpty))
        {
            return;
        }

        if (isEmpty)
        {
            _fields.Remove(key);
        }
        else
        {
            _fields[key] = field;
        }

        if (before is null || isEmpty)
        {
            _partsByKey = null;
        }

        // What is still being typed is no text yet.
        if (before is null || isEmpty || before != field with { Typing = before.Typing })
        {
            Watch?.Wrote(key, before is null || isEmpty);
        }
    }

    /// <summary>Sets the text of a field and forgets answers that belonged to another text.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="text">As typed.</param>
    /// <param name="unit">Unit shown beside it; the field's own stays when absent.</param>
    public void SetText(string key, string? text, string? unit = null)
    {
        var field = Field(key) ?? new DraftField();
        Set(key, Retyped(field, text ?? string.Empty) with { Unit = field.Unit ?? unit });
    }

    /// <summary>Keeps what is being typed, without judging it.</summary>
    /// <param name="key">Key of the field.</param>
    /// <param name="text">As typed so far.</param>
    /// <param name="unit">Unit shown beside it.</param>
    public void KeepTyped(string key, string text, string? unit = null)
    {
        var field = Field(key) ?? new DraftField();
        Set(key, field with { Typing = text == field.Text ? null : text, Unit = field.Unit ?? unit });
    }

    /// <summary>Whether anything stands under a key.</summary>
    /// <param name="key">Start of the keys.</param>
    /// <returns>True when a field has a text.</returns>
    public bool HasAny(string key)
    {
        Watch?.ReadUnder(key);
        return _fields.Any(f => f.Key.StartsWith(key + "/", StringComparison.Ordinal) && f.Value.Text.Length > 0);
    }

    /// <summary>The next parts under a key, in order of entry for rows and of code otherwise.</summary>
    /// <param name="key">Start of the keys.</param>
    /// <returns>Distinct parts.</returns>
    public IReadOnlyList<string> PartsUnder(string key)
    {
        Watch?.ReadParts(key);
        return (_partsByKey ??= IndexParts()).GetValueOrDefault(key) ?? [];
    }

    /// <summary>Fields of a record that hold what a person entered, without those that the form fills or keeps for itself.</summary>
    /// <param name="record">Key of the record.</param>
    /// <returns>Their names.</returns>
    internal IEnumerable<string> TypedUnder(string record) => PartsUnder(record)
        .Where(name => !OfTheForm.Contains(name) && !name.StartsWith("photo", StringComparison.Ordinal) && Text(DraftKey.Under(record, name)).Trim().Length > 0);

    /// <summary>Rows of a list that were not taken away.</summary>
    /// <param name="list">Key of the list.</param>
    /// <returns>Keys of the rows.</returns>
    public IReadOnlyList<string> Rows(string list) =>
        [.. PartsUnder(list).Select(part => DraftKey.Under(list, part)).Where(row => Text(DraftKey.Under(row, DraftGroup.Removed)).Length == 0)];

    /// <summary>Adds a row to a list.</summary>
    /// <param name="list">Key of the list.</param>
    /// <returns>Key of the row.</returns>
    public string AddRow(string list)
    {
        _lastRow++;
        var row = DraftKey.Under(list, _lastRow.ToString(CultureInfo.InvariantCulture));
        SetText(DraftKey.Under(row, "row"), "new");
        return row;
    }

    /// <summary>Adds a row whose record has an identity.</summary>
    /// <param name="list">Key of the list.</param>
    /// <param name="clock">Clock of the device.</param>
    /// <returns>Key of the row.</returns>
    public string AddRow(string list, TimeProvider clock)
    {
        var row = AddRow(list);
        SetText(DraftKey.Under(row, "id"), Guid.CreateVersion7(clock.GetUtcNow()).ToString("D"));
        return row;
    }

    /// <summary>Takes a row away; its texts stay in the draft.</summary>
    /// <param name="row">Key of the row.</param>
    public void RemoveRow(string row) => SetText(DraftKey.Under(row, DraftGroup.Removed), "yes");

    /// <summary>Notes that a caution was read.</summary>
    /// <param name="caution">Name of the caution.</param>
    public void SeeCaution(string caution) => _cautionsSeen.Add(caution);

    /// <summary>Arrival.</summary>
    /// <returns>The moment.</returns>
    public Moment Arrived() => ReadMoment(Text(DraftKey.Of(DraftKey.Visit, "arrived")), Amended?.Arrived, null)
        ?? Amended?.Arrived
        ?? Moment.Of(Born());

    internal Moment? ReadMoment(string text, Moment? original, Moment? notBefore)
    {
        if (text.Length == 0)
        {
            return null;
        }

        if (original is { } kept && SiteTime.Write(kept) == text)
        {
            return kept;
        }

        return Moment.TryParse(text, out var moment) ? moment : SiteTime.Read(text, SiteTime.Zone(TimeZone), notBefore);
    }

    // What stands in a visit from its first moment.
    private void Begin(VisitKind kind)
    {
        SetText(DraftKey.Of(DraftKey.Visit, "kind"), kind.ToString());
        SetText(DraftKey.Of(DraftKey.Visit, "arrived"), SiteTime.At(Born(), SiteTime.Zone(TimeZone)).Text);
    }

    // Not by way of Fields: whoever asks what was entered shows nothing of it.
    private IEnumerable<(string Key, string Text)> Texts() => _fields.Select(field => (field.Key, field.Value.Typing ?? field.Value.Text)).Where(field => field.Item2.Length > 0);

    // Every step of the form asks for parts many times between two changes; one pass over the keys answers them all.
    private Dictionary<string, List<string>> IndexParts()
    {
        var index = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        foreach (var key in _fields.Keys)
        {
            var parts = DraftKey.Parts(key);
            var at = -1;
            for (var depth = 1; depth < parts.Count; depth++)
            {
                at = key.IndexOf('/', at + 1);
                var list = index.TryGetValue(key[..at], out var known) ? known : index[key[..at]] = [];
                if (!list.Contains(parts[depth]))
                {
                    list.Add(parts[depth]);
                }
            }
        }

        foreach (var list in index.Values)
        {
            list.Sort((a, b) => Row(a).CompareTo(Row(b)) is var order and not 0 ? order : string.CompareOrdinal(a, b));
        }

        return index;
    }

    private static int Row(string part) => int.TryParse(part, CultureInfo.InvariantCulture, out var row) ? row : int.MaxValue;

    private static DraftField Retyped(DraftField field, string text) => field.Text == text
        ? field with { Typing = null }
        : field with { Text = text, Typing = null, Choice = null, Confirmed = false };

    // A version 7 identity begins with its time of birth in milliseconds (RFC 9562).
    private DateTimeOffset Born() => DateTimeOffset.FromUnixTimeMilliseconds(Convert.ToInt64(Id.ToString("N")[..12], 16));
}
