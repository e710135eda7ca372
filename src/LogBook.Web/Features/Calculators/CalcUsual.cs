using LogBook.Domain.Estimates;

namespace LogBook.Web.Features.Calculators;

/// <summary>How well a number is usually known that a person types where nothing is on file: nobody says how it was measured.</summary>
public static class CalcUsual
{
    /// <summary>Standard uncertainty as a share of the number.</summary>
    /// <param name="table">The firm's uncertainties.</param>
    /// <param name="key">Key of the field.</param>
    /// <param name="unit">Its unit.</param>
    /// <returns>Share; 0 where the table knows no such kind.</returns>
    public static double ShareOf(UncertaintyTable table, string key, string unit) => (key, unit) switch
    {
        ("pump", _) or ("now", "L/h") => table.Share(UncertaintyCodes.PumpRating),
        ("volume", _) => table.Share(UncertaintyCodes.SystemVolume),
        ("valve", _) or ("bleed", _) => table.Share(UncertaintyCodes.BleedValveUntimed),
        ("make-up", _) => table.ConductivityReading("", provedWithin30Days: false, waterCelsius: null).On(1, unit).StandardUncertainty,
        _ => 0,
    };
}
