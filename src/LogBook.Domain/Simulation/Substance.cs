namespace LogBook.Domain.Simulation;

/// <summary>What the simulated water carries. Concentrations mg/L in the exchange format's own basis, unless said otherwise.</summary>
public enum Substance
{
    /// <summary>Cycles: 1 in the make-up, concentrated like any conservative ion.</summary>
    Cycles,

    /// <summary>Conductivity as if it were conservative, µS/cm; the true one lies below it (<see cref="PlantModel.ConductivityBend"/>).</summary>
    Conductance,

    /// <summary>Chloride as Cl.</summary>
    Chloride,

    /// <summary>Silica as SiO2.</summary>
    Silica,

    /// <summary>Calcium as CaCO3 had nothing deposited.</summary>
    CalciumKept,

    /// <summary>Alkalinity as CaCO3 had nothing deposited.</summary>
    AlkalinityKept,

    /// <summary>Calcium as CaCO3.</summary>
    Calcium,

    /// <summary>Inhibitor as product.</summary>
    Inhibitor,

    /// <summary>First non-oxidising biocide as product.</summary>
    Biocide,

    /// <summary>Second non-oxidising biocide as product.</summary>
    SecondBiocide,

    /// <summary>Free halogen as Cl2.</summary>
    Halogen,

    /// <summary>Alkalinity taken by acid, as CaCO3; leaves with the water like an ion.</summary>
    Acid,
}
