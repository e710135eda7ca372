namespace LogBook.Domain.Simulation;

/// <summary>How a product behaves in the simulated water.</summary>
public sealed record PlantProduct
{
    /// <summary>Code of the product.</summary>
    public required string Code { get; init; }

    /// <summary>What it becomes in the water.</summary>
    public required Substance Becomes { get; init; }

    /// <summary>Density, kg/L.</summary>
    public required double DensityKgPerL { get; init; }

    /// <summary>Mass of <see cref="Becomes"/> for each mass of product; 1 where the level is told as product.</summary>
    public double Share { get; init; } = 1;

    /// <summary>Half-life by decay alone, h; 0 means that it does not decay.</summary>
    public double HalfLifeH { get; init; }

    /// <summary>Chloride added for each mg of the substance fed, mg. A hypochlorite ends as chloride, 1 mg for each mg as Cl2.</summary>
    public double ChloridePerMg { get; init; }

    /// <summary>Contact time others wait for, h.</summary>
    public double ContactHours { get; init; }
}
