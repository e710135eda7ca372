using LogBook.Domain.Quantities;

namespace LogBook.Domain.Exchange.Shapes;

/// <summary>One field of the table, or what a list holds.</summary>
/// <param name="Name">Name in the document.</param>
/// <param name="Kind">What may stand in it.</param>
internal sealed record Field(string Name, FieldKind Kind)
{
    /// <summary>Whether absence is an error.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Smallest number allowed.</summary>
    public double? Min { get; init; }

    /// <summary>Largest number allowed.</summary>
    public double? Max { get; init; }

    /// <summary>Whether <see cref="Min"/> itself is refused.</summary>
    public bool IsAbove { get; init; }

    /// <summary>The closed list of a choice.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>Whether the choices are units.</summary>
    public bool IsUnit { get; init; }

    /// <summary>Shape of an object.</summary>
    public Shape? Shape { get; init; }

    /// <summary>What a list holds.</summary>
    public Field? Item { get; init; }

    /// <summary>Fewest and most entries of a list.</summary>
    public (int Min, int? Max) Count { get; init; } = (0, null);

    /// <summary>When set, the quantity as a person entered it may stand beside as "…Entered", in a unit of this dimension.</summary>
    public UnitDimension? EnteredIn { get; init; }

    /// <summary>Whether null has a meaning of its own ("none").</summary>
    public bool IsNullKept { get; init; }
}
