namespace LogBook.Application.Data;

/// <summary>A set-up record of the firm itself: person, product, instrument, lot, rule, test, setting of the engine, plan of a day or notice to an authority.</summary>
public sealed class SetUpRow : IVersioned, IRetirable
{
    public int Id { get; set; }

    public SetUpKind Kind { get; set; }

    public string Code { get; set; } = "";

    public string CodeKey { get; set; } = "";

    /// <summary>First day in force, for rules; otherwise the first of all days, so that the key is unique on both providers.</summary>
    public DateOnly From { get; set; }

    public string Name { get; set; } = "";

    /// <summary>Canonical JSON of the exchange record.</summary>
    public string Document { get; set; } = "";

    public int Version { get; set; } = 1;

    public DateTime? RetiredAt { get; set; }

    public string? RetiredWhy { get; set; }
}
