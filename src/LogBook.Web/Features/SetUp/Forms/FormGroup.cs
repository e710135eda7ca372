using System.Text.Json.Nodes;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>
/// What stands in a form: the texts as typed, whether they can be read or not. Members of the record that the form does not ask for
/// are carried along, so that saving a form loses nothing of an import.
/// </summary>
public sealed class FormGroup(FormGroup? parent, string id)
{
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<FormGroup>> _rows = new(StringComparer.Ordinal);
    private bool _isOptional;
    private readonly Dictionary<string, int> _next = new(StringComparer.Ordinal);

    /// <summary>The group around it.</summary>
    public FormGroup? Parent => parent;

    /// <summary>The whole form.</summary>
    public FormGroup Root => parent?.Root ?? this;

    /// <summary>Part of the identifiers on the page; stays when rows before it go.</summary>
    public string Id => id;

    /// <summary>Answers to "which number is meant".</summary>
    public Dictionary<string, double> Answers { get; } = new(StringComparer.Ordinal);

    /// <summary>Units chosen.</summary>
    public Dictionary<string, string> Units { get; } = new(StringComparer.Ordinal);

    /// <summary>Fields as they came from the record, to be written again unchanged while their text is.</summary>
    internal Dictionary<string, FormOrigin> Origins { get; } = new(StringComparer.Ordinal);

    /// <summary>Members that the form does not ask for.</summary>
    internal JsonObject Rest { get; } = [];

    /// <summary>The text of a field.</summary>
    public string Text(string name) => _texts.GetValueOrDefault(name, "");

    /// <summary>Sets the text of a field.</summary>
    public void Set(string name, string? text)
    {
        _texts[name] = text ?? "";
        Answers.Remove(name);
    }

    /// <summary>The groups of a list, or the one of a group field.</summary>
    public IReadOnlyList<FormGroup> Rows(string name) => _rows.TryGetValue(name, out var rows) ? rows : [];

    /// <summary>Adds a group.</summary>
    public FormGroup Add(string name)
    {
        if (!_rows.TryGetValue(name, out var rows))
        {
            _rows[name] = rows = [];
        }

        // Counted on when rows go, so that no identifier is used twice.
        var number = _next.GetValueOrDefault(name);
        _next[name] = number + 1;
        var row = new FormGroup(this, $"{id}-{name}{number}");
        rows.Add(row);
        return row;
    }

    /// <summary>Takes a group away.</summary>
    public void Remove(string name, FormGroup row)
    {
        if (_rows.TryGetValue(name, out var rows))
        {
            rows.Remove(row);
        }
    }

    /// <summary>The one group of a group field.</summary>
    public FormGroup Only(string name) => _rows.TryGetValue(name, out var rows) && rows.Count > 0 ? rows[0] : AddOptional(name);

    /// <summary>Whether it may be left empty as a whole and is.</summary>
    public bool IsLeftOut => _isOptional && _texts.Values.All(string.IsNullOrWhiteSpace);

    /// <summary>Identifier of a field on the page.</summary>
    public string Place(string name) => $"{id}-{name}";

    private FormGroup AddOptional(string name)
    {
        var group = Add(name);
        group._isOptional = true;
        return group;
    }

    /// <summary>Whether something stands in a field.</summary>
    public bool Has(FormField field) => field.Kind switch
    {
        FormKind.Group => Rows(field.Name).Any(row => field.Fields.Any(row.Has)),
        FormKind.Rows or FormKind.Pairs => Rows(field.Name).Count > 0,
        _ => Text(field.Name).Trim().Length > 0,
    };
}
