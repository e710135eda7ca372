using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>A limit of a count that asks for action.</summary>
/// <param name="From">Lowest count that reaches it, in its unit.</param>
/// <param name="Unit">UCUM unit.</param>
/// <param name="Severity">How soon.</param>
/// <param name="Rule">The rule whose band it is; null for a limit of this firm's settings.</param>
/// <param name="Says">What the rule says to do; null where it says nothing.</param>
public sealed record CountLimit(double From, string Unit, Severity Severity, Rule? Rule = null, string? Says = null)
{
    /// <summary>The highest limit that a dip slide, a colony count or a Legionella result reaches, known from the set-up alone.</summary>
    /// <param name="firm">Set-up with the rules and the settings of the engine.</param>
    /// <param name="system">The system.</param>
    /// <param name="programme">Programme in force, or null.</param>
    /// <param name="reading">The result as entered, in any unit of counts per volume.</param>
    /// <param name="sampled">Day of the sample in the site's zone.</param>
    /// <returns>
    /// The band of the rule in force on the day; without such a rule the fixed limit for total counts and dip slides, unless the programme
    /// has a range for the test, which then is the limit. Null below all of them, for another test, and for a result that is still to come,
    /// below a detection limit or not quantifiable.
    /// </returns>
    /// <remarks>The same limits as the finding of high counts; their sources stand at <see cref="FindingThresholds.ColoniesPlan"/> and <see cref="FindingThresholds.ColoniesAct"/>.</remarks>
    public static CountLimit? ReachedBy(FirmSetUp firm, WaterSystem system, Programme? programme, Reading reading, DateOnly sampled)
    {
        if (reading.Test is not (TestCodes.DipSlide or TestCodes.ColonyCount or TestCodes.Legionella))
        {
            return null;
        }

        var rule = Array.Find(new RuleCalendar(system.Rules, firm.Rules).On(sampled), r => r.Bands.Count > 0 && reading.Test.Equals(r.Test, StringComparison.OrdinalIgnoreCase));
        if (rule is not null)
        {
            return ResultBands.Of(rule, reading) is { } band ? new CountLimit(band.From, band.Unit, band.Severity, rule, band.Says) : null;
        }

        if (programme?.Ranges.FirstOrDefault(range => range.Test.Equals(reading.Test, StringComparison.OrdinalIgnoreCase) && range.High is not null) is { } range)
        {
            return RangeJudgement.Of(reading, range) == RangeStanding.Above ? new CountLimit(range.High!.Value, range.Unit, Severity.Plan) : null;
        }

        if (reading.Test == TestCodes.Legionella || reading.NotTaken is not null || reading.NotQuantifiable == true || reading.Qualifier == "<" || reading.Value is not { } value
            || Units.Convert(value, reading.Unit, UnitCodes.CfuPerMl) is not { HasValue: true, Value: var count })
        {
            return null;
        }

        var thresholds = firm.Engine.For(system.Site, system.Code).Thresholds;
        return count >= thresholds.ColoniesAct.Value ? new CountLimit(thresholds.ColoniesAct.Value, UnitCodes.CfuPerMl, Severity.Act)
            : count >= thresholds.ColoniesPlan.Value ? new CountLimit(thresholds.ColoniesPlan.Value, UnitCodes.CfuPerMl, Severity.Plan)
            : null;
    }
}
