namespace LogBook.Domain.Visits;

/// <summary>A drum at one visit.</summary>
public sealed record DrumReading
{
    /// <summary>Code of the drum.</summary>
    public required string Drum { get; init; }

    /// <summary>Depth of liquid, gross weight, percent or litres, as found, before anything was added.</summary>
    public double? Level { get; init; }

    /// <summary>UCUM unit of the level.</summary>
    public string? Unit { get; init; }

    /// <summary>Delivered into it, L.</summary>
    public double? AddedL { get; init; }

    /// <summary>Taken out of it, L.</summary>
    public double? RemovedL { get; init; }

    /// <summary>The container was exchanged.</summary>
    public bool? Swapped { get; init; }

    /// <summary>Level afterwards, in "unit".</summary>
    public double? Left { get; init; }

    /// <summary>Product beside it, L.</summary>
    public double? SpareL { get; init; }

    /// <summary>Lot of what was added.</summary>
    public string? Lot { get; init; }

    /// <summary>Code of the product found on it.</summary>
    public string? ProductFound { get; init; }

    /// <summary>Level as first typed, in "unit", where it was asked for again; the same as the level where reading again confirmed it.</summary>
    public double? FirstLevel { get; init; }
}
