using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>Which band of a rule a result lies in.</summary>
public static class ResultBands
{
    /// <summary>The highest band that a result reaches.</summary>
    /// <param name="rule">The rule, in the version to judge by.</param>
    /// <param name="reading">The result, in any unit that the band's unit can be converted to.</param>
    /// <returns>
    /// The band; null for a result below all of them, one that is still to come, one below a detection limit and one that the laboratory
    /// could not quantify.
    /// </returns>
    public static RuleBand? Of(Rule rule, Reading reading)
    {
        if (reading.Value is not { } value || reading.Qualifier == "<" || reading.NotQuantifiable == true || reading.NotTaken is not null)
        {
            return null;
        }

        RuleBand? highest = null;
        double? from = null;
        foreach (var band in rule.Bands)
        {
            // Bands of one rule may be written in several units: they are compared in that of the result.
            if (Units.Convert(band.From, band.Unit, reading.Unit) is { HasValue: true, Value: var lowest } && value >= lowest && (from is null || lowest > from))
            {
                (highest, from) = (band, lowest);
            }
        }

        return highest;
    }
}
