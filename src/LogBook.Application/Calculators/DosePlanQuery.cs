using LogBook.Application.Data;
using LogBook.Application.Settings;
using LogBook.Application.Sites;
using LogBook.Domain.Calculators;
using LogBook.Domain.Findings;

namespace LogBook.Application.Calculators;

/// <summary>Numbers for the calculations of one system, for the firm's own people. A constant number of statements; nothing is stored.</summary>
public sealed class DosePlanQuery(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    private static readonly string[] Doses =
    [
        FindingKinds.DosePlanClash, FindingKinds.DoseMissed, FindingKinds.DoseUntreated, FindingKinds.HoldTooLong, FindingKinds.LabelExceeded, FindingKinds.BiocideLapse,
        FindingKinds.FeedLow, FindingKinds.FeedHigh, FindingKinds.PumpOutput,
    ];

    /// <summary>What is known; null where there is no such system or the viewer may not see it.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="systemCode">Code of the system.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<DosePlanView?> OfAsync(Viewer viewer, string siteCode, string systemCode, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var records = await store.ReadAsync(
            viewer, db => SystemRecords.ReadAsync(db, viewer, firm, siteCode, systemCode, clock.GetUtcNow().UtcDateTime, cancellationToken), cancellationToken);
        return records is null ? null : new DosePlanView(
            records.Heading,
            records.History.Site,
            firm,
            CalculatorStart.Of(records.History, records.Today),
            records.Today,
            records.Today.AddDays(-(((int)records.Today.DayOfWeek + 6) % 7)),
            [.. records.Findings.Where(row => Doses.Contains(row.Key.Kind))]);
    }
}
