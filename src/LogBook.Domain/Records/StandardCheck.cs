using LogBook.Domain.History;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Records;

/// <summary>A hand meter in its standard.</summary>
/// <param name="Instrument">Code of the meter.</param>
/// <param name="Name">Its name, or null.</param>
/// <param name="Check">The check as entered.</param>
/// <param name="ErrorPercent">Reading against the standard, %; null for a standard of zero.</param>
/// <param name="LimitPercent">Error that is borne, %.</param>
public sealed record StandardCheck(string Instrument, string? Name, InstrumentCheck Check, double? ErrorPercent, double LimitPercent)
{
    /// <summary>Checks of the meters that a system's probes were compared with.</summary>
    /// <param name="firm">The firm, for the instruments.</param>
    /// <param name="instruments">Codes of the meters.</param>
    /// <returns>Latest first.</returns>
    /// <remarks>Reference: 05-probe-drift.csv, offset_pct.</remarks>
    public static IReadOnlyList<StandardCheck> Of(FirmSetUp firm, IEnumerable<string> instruments) =>
    [
        .. instruments.Distinct(StringComparer.OrdinalIgnoreCase)
            .Select(code => firm.Instruments.GetValueOrDefault(code)).OfType<Instrument>()
            .SelectMany(instrument => instrument.Checks.Select(check => new StandardCheck(
                instrument.Code,
                instrument.Name,
                check,
                check.Standard > 0 ? 100 * ((check.Read / check.Standard) - 1) : null,
                firm.Engine.Thresholds.StandardPercent.Value)))
            .OrderByDescending(check => check.Check.At.Utc),
    ];

    /// <summary>Whether it is off by more than is borne.</summary>
    public bool IsOff => ErrorPercent is { } error && Math.Abs(error) > LimitPercent;
}
