using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>A field of a set-up form. What may stand in it is checked by the exchange format; here is only how it is asked for.</summary>
/// <param name="Name">Name in the exchange format.</param>
/// <param name="Kind">How it is filled in.</param>
/// <param name="Label">What people call it.</param>
public sealed record FormField(string Name, FormKind Kind, Text Label)
{
    /// <summary>Said below the field.</summary>
    public Text? Hint { get; init; }

    /// <summary>Whether the form says that it is needed.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Whether it stays as it is once it was saved: codes are how everything else refers to a record.</summary>
    public bool IsFixed { get; init; }

    /// <summary>Unit of the number in the record, as people read it; empty for none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Units the number may be entered in (UCUM), the first being that of the record; kept beside it as entered.</summary>
    public IReadOnlyList<string> Units { get; init; } = [];

    /// <summary>The record's number is the first unit divided by this (litres a minute beside litres an hour).</summary>
    public double Divisor { get; init; } = 1;

    /// <summary>Values to choose from.</summary>
    public Func<FormScope, FormGroup, IEnumerable<FormOption>> Options { get; init; } = static (_, _) => [];

    /// <summary>Whether it applies; one that does not is shown only while something stands in it.</summary>
    public Func<FormScope, FormGroup, bool> Applies { get; init; } = static (_, _) => true;

    /// <summary>Fields of the groups below.</summary>
    public IReadOnlyList<FormField> Fields { get; init; } = [];

    /// <summary>What one group of the list is called.</summary>
    public Text? RowName { get; init; }

    /// <summary>Follows a change of the field.</summary>
    public Action<FormScope, FormGroup>? Changed { get; init; }

    /// <summary>What a new group begins with.</summary>
    public Action<FormScope, FormGroup>? Begin { get; init; }

    /// <summary>Whether it holds groups.</summary>
    public bool IsDeep => Kind is FormKind.Group or FormKind.Rows or FormKind.Pairs;
}
