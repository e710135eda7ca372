using System.Text.Json;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Settings;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Settings;

/// <summary>Settings then and now, and the re-entry sheet, for the firm's own people. A constant number of statements.</summary>
public sealed class SettingsQuery(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    // Set-up is changed a few times a year; more lines than this are another firm's import.
    private const int MostChanges = 400;

    private static readonly string[] Settings =
    [
        FindingKinds.SettingsLost, FindingKinds.SettingsChanged, FindingKinds.ControllerClock, FindingKinds.DosePlanClash, FindingKinds.DoseMissed, FindingKinds.DoseUntreated,
        FindingKinds.HoldTooLong, FindingKinds.LabelExceeded,
    ];

    /// <summary>Settings then and now; null where there is no such system or the viewer may not see it.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="systemCode">Code of the system.</param>
    /// <param name="on">Day; null for today.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<SettingsView?> ThenAndNowAsync(Viewer viewer, string siteCode, string systemCode, DateOnly? on = null, CancellationToken cancellationToken = default)
    {
        if (await ReadAsync(viewer, siteCode, systemCode, cancellationToken) is not { } records)
        {
            return null;
        }

        return new SettingsView(
            records.Heading,
            records.Today,
            SettingsThenAndNow.Of(records.History, on ?? records.Today),
            [.. records.History.Visits.Where(visit => visit.Record.Settings.Count > 0).Select(visit => records.History.DayOf(visit.At)).Distinct().OrderDescending()],
            [.. records.Findings.Where(row => Settings.Contains(row.Key.Kind))]);
    }

    /// <summary>The re-entry sheet; null where there is no such system or the viewer may not see it.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="systemCode">Code of the system.</param>
    /// <param name="on">Day whose settings are wanted; null for the day before the settings were lost, or today where they were not.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<ReEntryView?> ReEntryAsync(Viewer viewer, string siteCode, string systemCode, DateOnly? on = null, CancellationToken cancellationToken = default)
    {
        if (await ReadAsync(viewer, siteCode, systemCode, cancellationToken) is not { } records)
        {
            return null;
        }

        var lost = records.Findings.FirstOrDefault(row => row.Key.Kind == FindingKinds.SettingsLost);
        var day = on ?? (lost is null ? records.Today : lost.Finding.FirstSeen.AddDays(-1));
        var since = MidnightUtc(records.History.Zone, day.AddDays(1));

        // Changes of other systems must not use up the lines.
        var key = $"{records.Heading.SiteCode}/{records.Heading.SystemCode}".ToUpperInvariant();
#pragma warning disable CA1304, CA1311, CA1862 // The database compares, and knows no comparison of .NET's.
        var rows = await store.ReadAsync(
            viewer,
            db => db.AuditTrail
                .Where(row => row.At >= since && row.What == AuditActs.Changed && (row.Entity == nameof(SetUpKind.Product) || (row.Entity == nameof(SetUpKind.System) && row.Key.ToUpper() == key)) && row.Old != null && row.New != null)
                .OrderBy(row => row.Id).Take(MostChanges)
                .Select(row => new { row.At, row.Entity, row.Old, row.New })
                .ToListAsync(cancellationToken),
            cancellationToken);
#pragma warning restore CA1304, CA1311, CA1862
        var changes = rows
            .Select(row => ChangeOf(records.History.DayOf(row.At), row.Entity, row.Old!, row.New!))
            .Where(change => change.SystemAfter is not { } system
                || (CodeKeys.Of(system.Site) == CodeKeys.Of(records.Heading.SiteCode) && CodeKeys.Of(system.Code) == CodeKeys.Of(records.Heading.SystemCode)))
            .ToList();
        var sheet = ReEntrySheet.Of(records.History, day, records.Today, changes);
        var next = records.History.Visits.FirstOrDefault(visit => records.History.DayOf(visit.At) > day && visit.Record.Settings.Count > 0);
        return new ReEntryView(
            records.Heading,
            records.Today,
            sheet,
            records.Findings,
            next is null ? null : records.History.DayOf(next.At),
            next is null ? [] : sheet.Check(next.Record),
            sheet.Programme?.Feeds.Any(feed => feed.Mode == FeedMode.DosePlan) == true ? PlanCalendar.Week(sheet.Programme, records.Today) : null)
        {
            Placed = [.. records.Findings.Select(row => (row, SettingSubjects.GroupOf(sheet, records.History.System, row.Finding.About)))],
        };
    }

    private async Task<SystemRecords?> ReadAsync(Viewer viewer, string siteCode, string systemCode, CancellationToken cancellationToken)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        return await store.ReadAsync(viewer, db => SystemRecords.ReadAsync(db, viewer, firm, siteCode, systemCode, clock.GetUtcNow().UtcDateTime, cancellationToken), cancellationToken);
    }

    private static SetUpChange ChangeOf(DateOnly on, string entity, string before, string after) => entity == nameof(SetUpKind.Product)
        ? new SetUpChange(on, ProductBefore: Read<Product>(before), ProductAfter: Read<Product>(after))
        : new SetUpChange(on, SystemBefore: Documents.System(before), SystemAfter: Documents.System(after));

    // Where a clock change skips midnight, the day begins an hour later.
    private static DateTime MidnightUtc(TimeZoneInfo zone, DateOnly day)
    {
        var midnight = day.ToDateTime(TimeOnly.MinValue);
        return TimeZoneInfo.ConvertTimeToUtc(zone.IsInvalidTime(midnight) ? midnight.AddHours(1) : midnight, zone);
    }

    private static T? Read<T>(string json) => (T?)JsonSerializer.Deserialize(json, typeof(T), ExchangeJson.Default);
}
