using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Saturation;

/// <summary>Calcite saturation by the equilibrium form of Standard Methods 2330 B.</summary>
/// <remarks>
/// Constants of Plummer and Busenberg 1982. Without ion pairing it reads 0 to 0.3 higher than a speciation program.
/// Reference: 03-saturation-indices.md, "Standard Methods 2330 B form".
/// </remarks>
public static class CalciteEquilibrium
{
    private const double MgCaCO3PerMol = 100_087;
    private const double MgCaCO3PerEquivalent = 50_043.5;
    private const double MostIonicStrength = 0.5;

    /// <summary>Second dissociation constant of carbonic acid, −log K2.</summary>
    /// <param name="temperature">0 to 90 °C.</param>
    /// <returns>pK2; none outside the range.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, pK2.</remarks>
    public static Computed<double> PK2(Temperature temperature) => AtKelvin(temperature, k =>
        107.8871 + (0.03252849 * k) - (5151.79 / k) - (38.92561 * Math.Log10(k)) + (563713.9 / (k * k)));

    /// <summary>Solubility product of calcite, −log Ks.</summary>
    /// <param name="temperature">0 to 90 °C.</param>
    /// <returns>pKs; none outside the range.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, pKs_calcite.</remarks>
    public static Computed<double> PKs(Temperature temperature) => AtKelvin(temperature, k =>
        171.9065 + (0.077993 * k) - (2839.319 / k) - (71.595 * Math.Log10(k)));

    /// <summary>Ion product of water, −log Kw.</summary>
    /// <param name="temperature">0 to 90 °C.</param>
    /// <returns>pKw; none outside the range.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, pKw.</remarks>
    public static Computed<double> PKw(Temperature temperature) => AtKelvin(temperature, k => (4471 / k) + (0.01706 * k) - 6.0875);

    /// <summary>Debye-Hückel constant A.</summary>
    /// <param name="temperature">0 to 90 °C.</param>
    /// <returns>A; none outside the range.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, debye_huckel_A.</remarks>
    public static Computed<double> DebyeHuckelA(Temperature temperature) => AtKelvin(temperature, k =>
        1.82e6 * Math.Pow(((60954 / (k + 116)) - 68.937) * k, -1.5));

    /// <summary>Ionic strength from dissolved solids, TDS/40 000.</summary>
    /// <param name="tdsMgPerL">mg/L, not negative.</param>
    /// <returns>mol/L; none for a negative number.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, ionic_strength_from_TDS.</remarks>
    public static Computed<double> IonicStrength(double tdsMgPerL) => double.IsFinite(tdsMgPerL) && tdsMgPerL >= 0
        ? Computed<double>.Of(tdsMgPerL / 40_000)
        : Computed<double>.None(SaturationReasons.NothingDissolved);

    /// <summary>Ionic strength from conductivity, 1.6e-5 EC; over-reads cooling waters (0.92 to 1.91e-5).</summary>
    /// <param name="conductivity">At 25 °C.</param>
    /// <returns>mol/L.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, ionic_strength_from_EC.</remarks>
    public static double IonicStrength(Conductivity conductivity) => 1.6e-5 * conductivity.MicrosiemensPerCm;

    /// <summary>Saturation index of calcite, pH − pHs, with I = TDS/40 000.</summary>
    /// <param name="ph">At the temperature of the water.</param>
    /// <param name="water">Concentrations above zero.</param>
    /// <returns>Index; none with a concentration of zero, a temperature outside, or an ionic strength of 0.5 and more.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, SI_SM2330; 03-phreeqc-grid.csv, SI_SM2330_TDS.</remarks>
    public static Computed<double> Index(Ph ph, CalciteWater water) => Index(ph, water, water.TdsMgPerL / 40_000);

    /// <summary>Saturation index of calcite, pH − pHs, with an ionic strength that is known from the ions.</summary>
    /// <param name="ph">At the temperature of the water.</param>
    /// <param name="water">Concentrations above zero.</param>
    /// <param name="ionicStrength">mol/L, not negative; without ion pairing, <see cref="Compensation.DissolvedSolids"/>.</param>
    /// <returns>Index; none with a concentration of zero, a temperature outside, or an ionic strength that is negative, 0.5 or more.</returns>
    /// <remarks>Reference: 03-phreeqc-grid.csv, SI_SM2330_I.</remarks>
    public static Computed<double> Index(Ph ph, CalciteWater water, double ionicStrength)
    {
        if (!water.IsKnown || !(ionicStrength >= 0))
        {
            return Computed<double>.None(SaturationReasons.NothingDissolved);
        }

        if (ionicStrength >= MostIonicStrength)
        {
            return Computed<double>.None(SaturationReasons.TooConcentrated);
        }

        return PK2(water.Temperature).Then(pK2 => PKs(water.Temperature).Then(pKs => PKw(water.Temperature).Then(pKw =>
            DebyeHuckelA(water.Temperature).Then(a => Index(ph.Value, water, ionicStrength, (pK2, pKs, pKw, a))))));
    }

    private static Computed<double> Index(double ph, CalciteWater water, double strength, (double PK2, double PKs, double PKw, double A) constants)
    {
        var root = Math.Sqrt(strength);
        var pfm = constants.A * ((root / (1 + root)) - (0.3 * strength));
        var bicarbonate = ((water.AlkalinityMgPerL / MgCaCO3PerEquivalent) + Math.Pow(10, pfm - ph) - Math.Pow(10, ph + pfm - constants.PKw))
            / (1 + (0.5 * Math.Pow(10, ph - constants.PK2)));

        // At a high pH hydroxide alone may be more than the alkalinity entered: then no bicarbonate is left to take a logarithm of.
        if (!(bicarbonate > 0))
        {
            return Computed<double>.None(SaturationReasons.NothingDissolved);
        }

        var saturationPh = constants.PK2 - constants.PKs - Math.Log10(water.CalciumMgPerL / MgCaCO3PerMol) - Math.Log10(bicarbonate) + (5 * pfm);
        return Computed<double>.Of(ph - saturationPh);
    }

    private static Computed<double> AtKelvin(Temperature temperature, Func<double, double> formula) => temperature.Celsius is >= 0 and <= 90
        ? Computed<double>.Of(formula(temperature.Celsius + 273.15))
        : Computed<double>.None(SaturationReasons.TemperatureOutside);
}
