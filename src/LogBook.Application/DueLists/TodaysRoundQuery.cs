using LogBook.Application.Data;
using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

#pragma warning disable CA1304, CA1311, CA1862 // These run in the database, as upper(), the same on both providers.

namespace LogBook.Application.DueLists;

/// <summary>Today's round: a technician's own sites with what changed since the last visit, or all sites for who reviews. Eight statements at most.</summary>
public sealed class TodaysRoundQuery(LogBookStore store, SitesQuery sites)
{
    /// <summary>Entries told for a site; the rest is on its page.</summary>
    public const int MostEntries = 12;

    /// <summary>The round; null for a viewer who has none (customers and their staff).</summary>
    public async Task<Round?> OfAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        if (viewer.Role != PersonRole.Technician || viewer.PersonCode is null)
        {
            var all = await sites.ListAsync(viewer, null, cancellationToken);
            return new Round(null, [.. all.Select(site => new RoundStop(site, null, []))]);
        }

        var own = await sites.ListAsync(viewer, viewer.PersonCode, cancellationToken);
        var since = await SinceAsync(viewer, viewer.PersonCode, cancellationToken);
        return new Round(
            viewer.PersonCode,
            [
                .. own.Select(site => since.TryGetValue(site.Code, out var told)
                    ? new RoundStop(site, told.OwnLast, told.Entries)
                    : new RoundStop(site, null, [])),
            ]);
    }

    private async Task<Dictionary<string, (DateOnly OwnLast, IReadOnlyList<SinceEntry> Entries)>> SinceAsync(Viewer viewer, string person, CancellationToken cancellationToken) => await store.ReadAsync(
        viewer,
        async db =>
        {
            var key = CodeKeys.Of(person);
            var lastOwn = await db.Visits
                .Where(visit => visit.VoidedAt == null && visit.Technician.ToUpper() == key && visit.Kind != VisitKind.Delivery && visit.Kind != VisitKind.Result)
                .Join(db.Sites.Where(site => site.AssignedTo == key && site.RetiredAt == null), visit => visit.SiteId, site => site.Id, (visit, site) => new { site.Id, site.Code, site.TimeZone, visit.ArrivedAt, visit.LeftAt })
                .GroupBy(pair => new { pair.Id, pair.Code, pair.TimeZone })
                .Select(group => new { group.Key.Id, group.Key.Code, group.Key.TimeZone, Arrived = group.Max(pair => pair.ArrivedAt), Left = group.Max(pair => pair.LeftAt) })
                .ToListAsync(cancellationToken);
            if (lastOwn.Count == 0)
            {
                return [];
            }

            var ids = lastOwn.ConvertAll(site => site.Id);
            var earliest = lastOwn.Min(site => site.Arrived);

            // Versions that came in after the person left: visits by others, and what was amended or came back from the laboratory.
            var later = await db.Visits
                .Where(visit => visit.VoidedAt == null && ids.Contains(visit.SiteId))
                .Join(
                    db.VisitVersions.Where(version => version.ReceivedAt > earliest),
                    visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                    version => new { version.VisitRowId, version.Version },
                    (visit, version) => new { visit.SiteId, visit.ArrivedAt, visit.Technician, version.Version, version.Document })
                .Where(pair => pair.ArrivedAt > earliest || pair.Version > 1)
                .OrderByDescending(pair => pair.ArrivedAt).Take(400)
                .ToListAsync(cancellationToken);
            var earliestDay = DateOnly.FromDateTime(earliest).AddDays(-1);
            var findings = await AttentionQuery.Seen(db, viewer)
                .Where(finding => finding.SiteId != null && ids.Contains(finding.SiteId.Value) && finding.FirstSeen >= earliestDay && (finding.State == FindingState.Open || finding.State == FindingState.Acknowledged))
                .Select(finding => new { finding.SiteId, finding.SystemId, finding.Kind, finding.AboutKey, finding.FirstSeen, finding.FirstVisit, finding.Severity })
                .ToListAsync(cancellationToken);
            var systemCodes = await db.Systems.Where(system => ids.Contains(system.SiteId)).Select(system => new { system.Id, system.Code }).ToDictionaryAsync(system => system.Id, system => system.Code, cancellationToken);

            return lastOwn.ToDictionary(
                site => site.Code,
                site =>
                {
                    var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
                    var left = site.Left is { } moment && moment > site.Arrived ? moment : site.Arrived;
                    var leftDay = SitesQuery.DayIn(zone, left);
                    var entries = later.Where(pair => pair.SiteId == site.Id)
                        .SelectMany(pair => Told(Documents.Visit(pair.Document), key, left, zone))
                        .Concat(findings.Where(finding => finding.SiteId == site.Id && finding.FirstSeen > leftDay).Select(finding => new SinceEntry(
                            SinceKind.Finding,
                            finding.FirstSeen,
                            new Said(FindingTexts.NameOf(finding.Kind)),
                            finding.FirstVisit,
                            new FindingKey(site.Code, finding.SystemId is { } id ? systemCodes.GetValueOrDefault(id) : null, finding.Kind, finding.AboutKey, finding.FirstSeen),
                            finding.Severity)))
                        .OrderByDescending(entry => entry.Day).ThenBy(entry => entry.Kind)
                        .Take(MostEntries)
                        .ToList();
                    return (leftDay, (IReadOnlyList<SinceEntry>)entries);
                });
        },
        cancellationToken);

    private static IEnumerable<SinceEntry> Told(Visit visit, string person, DateTime left, TimeZoneInfo zone)
    {
        var day = SitesQuery.DayIn(zone, visit.Arrived.Utc);
        var byOther = CodeKeys.Of(visit.Technician) != person;
        if (visit.Arrived.Utc > left && byOther)
        {
            yield return new SinceEntry(SinceKind.Visit, day, new Said(RoundTexts.OtherVisit, VisitTexts.NameOf(visit.Kind), visit.Technician), visit.Id);
            foreach (var setting in visit.Systems.SelectMany(system => system.Settings).Where(setting => setting is { Found: not null, Left: not null } && setting.Found != setting.Left))
            {
                yield return new SinceEntry(SinceKind.Setting, day, HistoryMarks.Changed(setting), visit.Id);
            }
        }

        if (visit.Version > 1 && visit.AmendedAt is { } amended && amended.Utc > left)
        {
            yield return new SinceEntry(
                SinceKind.Amendment,
                SitesQuery.DayIn(zone, amended.Utc),
                new Said(RoundTexts.Amended, visit.AmendedBy ?? "–", string.IsNullOrWhiteSpace(visit.Reason) ? RoundTexts.NoReason : visit.Reason),
                visit.Id);
        }

        foreach (var reading in visit.Systems.SelectMany(system => system.Readings).Where(reading => reading.ResultAt is { } result && result.Utc > left))
        {
            yield return new SinceEntry(SinceKind.Result, SitesQuery.DayIn(zone, reading.ResultAt!.Value.Utc), HistoryMarks.Came(reading), visit.Id);
        }
    }
}
