namespace LogBook.Domain.TestKits;

/// <summary>IUPAC abridged standard atomic weights (five figures), g/mol, and what follows from them.</summary>
/// <remarks>Source: IUPAC Commission on Isotopic Abundances and Atomic Weights, abridged table. Reference: 06-test-kits.csv.</remarks>
internal static class AtomicWeights
{
    internal const double H = 1.008;
    internal const double C = 12.011;
    internal const double N = 14.007;
    internal const double O = 15.999;
    internal const double Na = 22.990;
    internal const double Mg = 24.305;
    internal const double Si = 28.085;
    internal const double P = 30.974;
    internal const double S = 32.06;
    internal const double Cl = 35.45;
    internal const double K = 39.098;
    internal const double Ca = 40.078;
    internal const double Br = 79.904;
    internal const double Mo = 95.95;

    internal const double Water = (2 * H) + O;
    internal const double CaO = Ca + O;

    /// <summary>100.086 g/mol.</summary>
    internal const double CaCO3 = Ca + C + (3 * O);

    /// <summary>Mass of one mole of charge as CaCO3, 50.043 g/eq.</summary>
    internal const double CaCO3PerCharge = CaCO3 / 2;
}
