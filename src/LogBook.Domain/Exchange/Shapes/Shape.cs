namespace LogBook.Domain.Exchange.Shapes;

/// <summary>One object type of the exchange format. The reader's checks and the published JSON Schema both come from it.</summary>
/// <param name="name">Name in the schema.</param>
/// <param name="fields">Its fields, in the order of the description.</param>
internal sealed class Shape(string name, params Field[] fields)
{
    private readonly Dictionary<string, Field> _byName = AllFields(fields).ToDictionary(f => f.Name, StringComparer.Ordinal);

    /// <summary>Name in the schema.</summary>
    public string Name { get; } = name;

    /// <summary>Fields, those for quantities as entered included.</summary>
    public IReadOnlyList<Field> Fields { get; } = [.. AllFields(fields)];

    /// <summary>Fields required for some choices.</summary>
    public IReadOnlyList<Demand> Demands { get; init; } = [];

    /// <summary>Fields that need another beside them.</summary>
    public IReadOnlyList<(string Name, string Needs)> Needs { get; init; } = [];

    /// <summary>Sets of fields of which at least one must be complete; a flag counts when true.</summary>
    public IReadOnlyList<IReadOnlyList<string>> OneOf { get; init; } = [];

    /// <summary>Pairs that exclude each other: the first, when it stands (a flag: when true), and the second.</summary>
    public IReadOnlyList<(string Name, string Other)> Exclusive { get; init; } = [];

    /// <summary>A field by name, letter for letter.</summary>
    public Field? Find(string fieldName) => _byName.GetValueOrDefault(fieldName);

    private static IEnumerable<Field> AllFields(IEnumerable<Field> fields)
    {
        foreach (var field in fields)
        {
            yield return field;
            if (field.EnteredIn is { } dimension)
            {
                yield return new Field(field.Name + "Entered", FieldKind.Object) { Shape = ExchangeShapes.EnteredIn(dimension) };
            }
        }
    }
}
