using LogBook.Domain.Estimates;

namespace LogBook.Domain.Records;

/// <summary>Output of a pump as it was known at one visit.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Visit">The visit.</param>
/// <param name="ByDrum">Output from the drop of the drum per hour run; null where the visit does not tell.</param>
/// <param name="ByDrawdown">Output by a timed measuring column at the visit, L/h; null where none was made.</param>
/// <param name="AgainstOwn">Output by the drum against what it should be by the pump's own past, %; null before there is one.</param>
/// <param name="AgainstPlate">Output by the drum against the rating on file, %; null where there is none.</param>
public sealed record PumpPoint(DateTime At, Guid Visit, PumpOutputs? ByDrum, Estimate? ByDrawdown, Estimate? AgainstOwn, Estimate? AgainstPlate)
{
    /// <summary>Millilitres for each hour run, by the drum; null where the visit does not tell.</summary>
    public Estimate? MillilitresPerHour => ByDrum is { LitresPerHour: { HasValue: true, Value: var litres } } ? litres.Scaled(1000, "mL/h") : null;

    /// <summary>Millilitres an hour by the measuring column; null where none was timed.</summary>
    public Estimate? ColumnMillilitresPerHour => ByDrawdown?.Scaled(1000, "mL/h");
}
