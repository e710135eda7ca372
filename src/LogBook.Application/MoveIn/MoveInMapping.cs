using System.Text.Json;

namespace LogBook.Application.MoveIn;

/// <summary>How a firm's own layout is read: what each heading means. Kept under a name, it serves the next file of the same layout.</summary>
public sealed record MoveInMapping
{
    /// <summary>Its name.</summary>
    public string Name { get; init; } = "";

    /// <summary>Meaning of each heading, by <see cref="Headings.KeyOf"/>.</summary>
    public IReadOnlyDictionary<string, ColumnMeaning> Columns { get; init => field = value ?? new Dictionary<string, ColumnMeaning>(StringComparer.Ordinal); } = new Dictionary<string, ColumnMeaning>(StringComparer.Ordinal);

    /// <summary>Site by name of the sheet; "" stands for every other sheet. Absent where a column tells.</summary>
    public IReadOnlyDictionary<string, string> Sites { get; init => field = value ?? new Dictionary<string, string>(StringComparer.Ordinal); } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Who made the visits where no column tells.</summary>
    public string? Technician { get; init; }

    /// <summary>The layout alone. One file's layout serves the next; the sites behind the names of its sheets do not: "Sheet1" is another site's there.</summary>
    public MoveInMapping Layout() => Sites.Count == 0 ? this : this with { Sites = new Dictionary<string, string>(StringComparer.Ordinal) };

    internal static MoveInMapping Read(string json) => JsonSerializer.Deserialize<MoveInMapping>(json, JsonSerializerOptions.Web)!;

    internal string Write() => JsonSerializer.Serialize(
        this with { Columns = new SortedDictionary<string, ColumnMeaning>(Columns.ToDictionary(), StringComparer.Ordinal), Sites = new SortedDictionary<string, string>(Sites.ToDictionary(), StringComparer.Ordinal) }, JsonSerializerOptions.Web);
}
