using LogBook.Domain.Exchange;

namespace LogBook.Domain.Visits;

/// <summary>A bottle taken.</summary>
public sealed record Sample
{
    /// <summary>Number of the bottle.</summary>
    public string? Bottle { get; init; }

    /// <summary>Sample point.</summary>
    public string? Point { get; init; }

    /// <summary>When.</summary>
    public Moment? TakenAt { get; init; }

    /// <summary>Temperature, °C.</summary>
    public double? TemperatureCel { get; init; }

    /// <summary>Residual, mg/L.</summary>
    public double? ResidualMgPerL { get; init; }

    /// <summary>Laboratory.</summary>
    public string? Lab { get; init; }

    /// <summary>Code of the system.</summary>
    public string? System { get; init; }
}
