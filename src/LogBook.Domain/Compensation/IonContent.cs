namespace LogBook.Domain.Compensation;

/// <summary>Major ions of a water, mg/L as the ion; zero when not measured.</summary>
public sealed record IonContent
{
    /// <summary>Calcium as Ca, mg/L.</summary>
    public double Calcium { get; init; }

    /// <summary>Magnesium as Mg, mg/L.</summary>
    public double Magnesium { get; init; }

    /// <summary>Sodium as Na, mg/L.</summary>
    public double Sodium { get; init; }

    /// <summary>Potassium as K, mg/L.</summary>
    public double Potassium { get; init; }

    /// <summary>Bicarbonate as HCO3, mg/L.</summary>
    public double Bicarbonate { get; init; }

    /// <summary>Chloride as Cl, mg/L.</summary>
    public double Chloride { get; init; }

    /// <summary>Sulphate as SO4, mg/L.</summary>
    public double Sulphate { get; init; }

    /// <summary>Nitrate as NO3, mg/L.</summary>
    public double Nitrate { get; init; }
}
