using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Saturation;

/// <summary>Langelier, Ryznar and Puckorius indices by the simple forms, pHs = 9.3 + A + B − C − D.</summary>
/// <remarks>
/// An index is about equilibrium, not rate, and knows nothing of inhibitors: treated towers run at +1 to +2 by design. Against a speciation
/// program the closed form is within 0.35, the table form within 0.45: show one decimal, and never take less than 0.3 for a direction.
/// Reference: 03-saturation-indices.md, 03-saturation-indices.csv.
/// </remarks>
public static class Langelier
{
    // UFC 3-240-13FN (25 May 2005) Table B-2: B at 32, 34 … °F.
    private static readonly double[] TableB =
    [
        2.60, 2.57, 2.54, 2.51, 2.48, 2.45, 2.43, 2.40, 2.37, 2.34, 2.31, 2.28, 2.25, 2.22, 2.20,
        2.17, 2.14, 2.11, 2.09, 2.06, 2.04, 2.03, 2.00, 1.97, 1.95, 1.92, 1.90, 1.88, 1.86, 1.84,
        1.82, 1.80, 1.78, 1.76, 1.74, 1.72, 1.71, 1.69, 1.67, 1.65, 1.64, 1.62, 1.60, 1.58, 1.57,
        1.55, 1.53, 1.51, 1.50, 1.48, 1.46, 1.44, 1.43, 1.41, 1.40, 1.38, 1.37, 1.35, 1.34, 1.32,
        1.31, 1.29, 1.28, 1.27, 1.26, 1.24, 1.23, 1.22, 1.21,
    ];

    private const double FirstFahrenheit = 32;
    private const double StepFahrenheit = 2;

    /// <summary>Temperature factor B.</summary>
    /// <param name="temperature">0 to 90 °C for the closed form, the printed range of the table for the other (straight lines between its rows).</param>
    /// <param name="form">Which of both.</param>
    /// <returns>B; none outside the range.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, factor_B_closed_form, factor_B_table; 03-factor-b-table.csv.</remarks>
    public static Computed<double> FactorB(Temperature temperature, LangelierForm form = LangelierForm.ClosedForm)
    {
        if (form == LangelierForm.ClosedForm)
        {
            return temperature.Celsius is >= 0 and <= 90
                ? Computed<double>.Of((-13.12 * Math.Log10(temperature.Celsius + 273)) + 34.55)
                : Computed<double>.None(SaturationReasons.TemperatureOutside);
        }

        // A hair of slack, so that a table temperature given in °C is not refused for its last digit.
        var place = Math.Round((temperature.Fahrenheit - FirstFahrenheit) / StepFahrenheit, 9);
        if (place < 0 || place > TableB.Length - 1)
        {
            return Computed<double>.None(SaturationReasons.TemperatureOutside);
        }

        var row = Math.Min((int)place, TableB.Length - 2);
        return Computed<double>.Of(TableB[row] + ((place - row) * (TableB[row + 1] - TableB[row])));
    }

    /// <summary>pH at which calcite would neither form nor dissolve.</summary>
    /// <param name="water">Concentrations above zero.</param>
    /// <param name="form">Which temperature factor.</param>
    /// <returns>pHs; none with a concentration of zero or a temperature outside.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, pHs_closed_form, pHs_table_form.</remarks>
    public static Computed<double> SaturationPh(CalciteWater water, LangelierForm form = LangelierForm.ClosedForm) => water.IsKnown
        ? FactorB(water.Temperature, form).Map(b =>
            9.3 + ((Math.Log10(water.TdsMgPerL) - 1) / 10) + b - (Math.Log10(water.CalciumMgPerL) - 0.4) - Math.Log10(water.AlkalinityMgPerL))
        : Computed<double>.None(SaturationReasons.NothingDissolved);

    /// <summary>Langelier index, pH − pHs.</summary>
    /// <param name="ph">At the temperature of the water.</param>
    /// <param name="water">Concentrations above zero.</param>
    /// <param name="form">Which temperature factor.</param>
    /// <returns>Index, or the reason.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, LSI_closed_form, LSI.</remarks>
    public static Computed<double> Index(Ph ph, CalciteWater water, LangelierForm form = LangelierForm.ClosedForm) =>
        SaturationPh(water, form).Map(saturation => Index(ph, saturation));

    /// <summary>Langelier index from a saturation pH.</summary>
    /// <param name="ph">pH.</param>
    /// <param name="saturationPh">pHs.</param>
    /// <returns>pH − pHs.</returns>
    public static double Index(Ph ph, double saturationPh) => ph.Value - saturationPh;

    /// <summary>Ryznar index, 2 pHs − pH.</summary>
    /// <param name="ph">pH.</param>
    /// <param name="saturationPh">pHs.</param>
    /// <returns>Index; lower is more scale-forming.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, RSI.</remarks>
    public static double Ryznar(Ph ph, double saturationPh) => (2 * saturationPh) - ph.Value;

    /// <summary>Puckorius index, 2 pHs − pHeq.</summary>
    /// <param name="saturationPh">pHs.</param>
    /// <param name="alkalinityMgPerL">Total alkalinity, mg/L as CaCO3, above zero.</param>
    /// <returns>Index, or the reason.</returns>
    /// <remarks>Reference: 03-saturation-indices.csv, PSI.</remarks>
    public static Computed<double> Puckorius(double saturationPh, double alkalinityMgPerL) =>
        EquilibriumPh(alkalinityMgPerL).Map(equilibrium => (2 * saturationPh) - equilibrium);

    /// <summary>Equilibrium pH of a cooling water, 1.465 log Alk + 4.54.</summary>
    /// <param name="alkalinityMgPerL">Total alkalinity, mg/L as CaCO3, above zero.</param>
    /// <returns>pH, or the reason.</returns>
    /// <remarks>UFC 3-240-13FN prints 1.485, against its own table and example. Reference: 03-saturation-indices.csv, pHeq.</remarks>
    public static Computed<double> EquilibriumPh(double alkalinityMgPerL) => double.IsFinite(alkalinityMgPerL) && alkalinityMgPerL > 0
        ? Computed<double>.Of((1.465 * Math.Log10(alkalinityMgPerL)) + 4.54)
        : Computed<double>.None(SaturationReasons.NothingDissolved);
}
