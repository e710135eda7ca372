using LogBook.Application.Clocks;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.RecordPacks;

/// <summary>Reads the records of a site. The number of statements does not depend on the number of visits.</summary>
public sealed class RecordPackReader(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    private static readonly DateOnly Earliest = new(1900, 1, 1);
    private static readonly DateOnly Farthest = new(2200, 12, 31);

    /// <summary>Whether somebody may take the records along: those who look after all sites, and the customer for their own.</summary>
    public static bool MayTake(Viewer viewer) => viewer.MayReview || viewer.Role == PersonRole.Customer;

    /// <summary>What a pack of a period would hold; null where there is no such site or the viewer may not take its records.</summary>
    public async Task<RecordPreview?> PreviewAsync(Viewer viewer, string siteCode, DateOnly? from, DateOnly? to, CancellationToken cancellationToken = default) => !MayTake(viewer)
        ? null
        : await PreviewAsync(viewer, await setUp.FirmAsync(viewer, withRetired: true, cancellationToken), siteCode, from, to, cancellationToken);

    private Task<RecordPreview?> PreviewAsync(Viewer viewer, FirmSetUp firm, string siteCode, DateOnly? from, DateOnly? to, CancellationToken cancellationToken) =>
        store.ReadAsync<RecordPreview?>(
            viewer,
            async db =>
            {
                var key = CodeKeys.Of(siteCode);
                if (await db.Sites.SingleOrDefaultAsync(row => row.CodeKey == key, cancellationToken) is not { } row)
                {
                    return null;
                }

                var zone = TimeZoneInfo.FindSystemTimeZoneById(row.TimeZone);
                var last = Sensible(to ?? SitesQuery.DayIn(zone, clock.GetUtcNow().UtcDateTime));
                var first = Sensible(from ?? last.AddYears(-1).AddDays(1));
                var (begin, end) = Bounds(first, last, zone);
                var ofSite = db.Visits.Where(visit => visit.SiteId == row.Id);
                var inPeriod = ofSite.Where(visit => visit.ArrivedAt >= begin && visit.ArrivedAt < end);
                var counts = await inPeriod.GroupBy(_ => 1).Select(group => new
                {
                    Visits = group.Count(visit => visit.VoidedAt == null),
                    Voided = group.Count(visit => visit.VoidedAt != null),
                    Amendments = group.Sum(visit => visit.CurrentVersion - 1),
                }).SingleOrDefaultAsync(cancellationToken);
                var readings = await inPeriod.Where(visit => visit.VoidedAt == null).Join(db.Readings, visit => visit.Id, reading => reading.VisitRowId, (_, reading) => reading.Id).CountAsync(cancellationToken);
                var photos = await inPeriod.Where(visit => viewer.IsOfFirm || visit.VoidedAt == null).Join(db.Photos, visit => visit.Id, photo => photo.VisitRowId, (_, photo) => photo)
                    .GroupBy(_ => 1).Select(group => new { Named = group.Count(), Here = group.Count(photo => photo.StoredAt != null), Bytes = group.Sum(photo => photo.Bytes) }).SingleOrDefaultAsync(cancellationToken);
                var span = await ofSite.GroupBy(_ => 1).Select(group => new { First = group.Min(visit => visit.ArrivedAt), Last = group.Max(visit => visit.ArrivedAt) }).SingleOrDefaultAsync(cancellationToken);
                var hold = viewer.MayReview ? await LegalHoldStore.FindAsync(db, siteCode, cancellationToken) : null;
                DateOnly? lastEntry = span is null ? null : SitesQuery.DayIn(zone, span.Last);
                return new RecordPreview(
                    Documents.Site(row.Document),
                    first,
                    last,
                    counts?.Visits ?? 0,
                    viewer.IsOfFirm ? counts?.Voided ?? 0 : 0,
                    readings,
                    counts?.Amendments ?? 0,
                    photos?.Named ?? 0,
                    photos?.Here ?? 0,
                    photos?.Bytes ?? 0,
                    span is null ? null : SitesQuery.DayIn(zone, span.First),
                    lastEntry,
                    lastEntry is { } day ? Retention.Of(firm.SystemsOf(row.Code), firm.Rules, SitesQuery.DayIn(zone, span!.First), day, hold?.IsHeld == true) : null,
                    hold);
            },
            cancellationToken);

    /// <summary>The records of a period; null where there is no such site or the viewer may not take its records.</summary>
    public async Task<RecordPack?> ReadAsync(Viewer viewer, string siteCode, DateOnly from, DateOnly to, CancellationToken cancellationToken = default)
    {
        if (!MayTake(viewer) || to < from)
        {
            return null;
        }

        (from, to) = (Sensible(from), Sensible(to));
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        if (!firm.Sites.TryGetValue(siteCode, out var site))
        {
            return null;
        }

        var key = CodeKeys.Of(siteCode);
        var zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
        var (begin, end) = Bounds(from, to, zone);
        return await store.ReadAsync(
            viewer,
            async db =>
            {
                var firmName = await db.Firm.Select(row => row.Name).SingleOrDefaultAsync(cancellationToken) ?? "";
                var rows = await db.Visits
                    .Join(db.Sites.Where(row => row.CodeKey == key), visit => visit.SiteId, row => row.Id, (visit, row) => visit)
                    .Join(db.VisitVersions, visit => visit.Id, version => version.VisitRowId, (visit, version) => new { Visit = visit, Version = version })
                    .ToListAsync(cancellationToken);
                var visits = rows.GroupBy(pair => pair.Visit.Id).Select(group => VisitOf(group.First().Visit, group.Select(pair => pair.Version), site.Code)).OrderBy(visit => visit.Visit.Arrived.Utc).ThenBy(visit => visit.Visit.Id).ToList();
                var photos = await db.Photos
                    .Join(db.Visits.Where(visit => visit.ArrivedAt >= begin && visit.ArrivedAt < end && (viewer.IsOfFirm || visit.VoidedAt == null)), photo => photo.VisitRowId, visit => visit.Id, (photo, visit) => new { Photo = photo, Visit = visit })
                    .Join(db.Sites.Where(row => row.CodeKey == key), pair => pair.Visit.SiteId, row => row.Id, (pair, row) => pair)
                    .OrderBy(pair => pair.Visit.ArrivedAt).ThenBy(pair => pair.Photo.Id)
                    .Select(pair => new { pair.Visit.VisitId, pair.Photo })
                    .ToListAsync(cancellationToken);
                var prefix = Notice.PrefixOf(key);
                var notices = await db.SetUp.Where(row => row.Kind == SetUpKind.Notice && row.RetiredAt == null && row.CodeKey.StartsWith(prefix)).OrderBy(row => row.Id).Select(row => row.Document).ToListAsync(cancellationToken);
                var hold = viewer.MayReview ? await LegalHoldStore.FindAsync(db, siteCode, cancellationToken) : null;
                return Make(viewer, firmName, firm, site, from, to, zone, visits, [.. photos.Select(pair => (pair.VisitId, pair.Photo))], [.. notices.Select(Notice.Read)], hold);
            },
            cancellationToken);
    }

    private RecordPack Make(
        Viewer viewer, string firmName, FirmSetUp firm, Site site, DateOnly from, DateOnly to, TimeZoneInfo zone, IReadOnlyList<PackVisit> visits, IReadOnlyList<(Guid, PhotoRow)> photos, IReadOnlyList<Notice> notices, LegalHold? hold)
    {
        DateOnly DayOf(PackVisit visit) => SitesQuery.DayIn(zone, visit.Visit.Arrived.Utc);
        var today = SitesQuery.DayIn(zone, clock.GetUtcNow().UtcDateTime);
        var judgedOn = to < today ? to : today;
        var counting = visits.Where(visit => visit.Counts).ToList();
        var systems = firm.SystemsOf(site.Code).OrderBy(system => system.Code, StringComparer.OrdinalIgnoreCase)
            .Select(system => SystemHistory.From(
                firm, site.Code, system.Code, counting.SelectMany(visit => visit.Versions.Select(version => version.Visit)), [.. notices.Where(notice => CodeKeys.Of(notice.System) == CodeKeys.Of(system.Code)).Select(notice => notice.Told)]))
            .Select(history => new PackSystem(history, judgedOn < from ? [] : RuleRecords.Of(history, from, judgedOn)))
            .ToList();
        var inPeriod = visits.Where(visit => DayOf(visit) >= from && DayOf(visit) <= to && (visit.Counts || viewer.IsOfFirm)).ToList();
        var promised = counting.Where(visit => visit.Visit.Kind is not (VisitKind.Delivery or VisitKind.Result)).Select(DayOf);
        return new RecordPack
        {
            FirmName = firmName,
            Site = site,
            CustomerName = firm.Customers.TryGetValue(site.Customer, out var customer) ? customer.Name : site.Customer,
            From = from,
            To = to,
            JudgedOn = judgedOn,
            MadeAt = Utc.Now(clock),
            MadeBy = viewer.Who,
            Zone = zone,
            Firm = firm,
            Systems = systems,
            Visits = inPeriod,
            Promises = judgedOn < from ? [] : VisitPromises.Of(promised, site.VisitEveryDays, [.. systems.Select(system => system.History.System.Operation)], from, judgedOn),
            Photos = [.. PackPhotos.Of(viewer, site, inPeriod, photos)],
            LastEntry = visits.Count == 0 ? null : visits.Max(DayOf),
            Keeping = visits.Count == 0 ? null : Retention.Of(firm.SystemsOf(site.Code), firm.Rules, visits.Min(DayOf), visits.Max(DayOf), hold?.IsHeld == true),
            Hold = hold,
            TellsVersions = viewer.IsOfFirm,
        };
    }

    private static PackVisit VisitOf(VisitRow row, IEnumerable<VisitVersionRow> versions, string site)
    {
        List<PackVersion> all =
        [
            .. versions.OrderBy(version => version.Version).Select(version => new PackVersion(
                version.Version, VisitReader.Placed(Documents.Visit(version.Document), row, site), version.ReceivedAt, version.Who, version.Reason, version.Sha256)),
        ];
        return new PackVisit(all.Find(version => version.Number == row.CurrentVersion)?.Visit ?? all[^1].Visit, all, row.ReviewedBy, row.ReviewedAt, row.VoidedBy, row.VoidedAt, row.VoidedWhy, row.ReceivedAt);
    }

    // Addresses are typed by people: a year 1 would leave what calendars and zones can work with.
    private static DateOnly Sensible(DateOnly day) => day < Earliest ? Earliest : day > Farthest ? Farthest : day;

    // A day begins at the first moment that exists: where clocks go forward at midnight that is later.
    private static (DateTime Begin, DateTime End) Bounds(DateOnly from, DateOnly to, TimeZoneInfo zone)
    {
        DateTime Start(DateOnly day)
        {
            var wall = day.ToDateTime(TimeOnly.MinValue, DateTimeKind.Unspecified);
            while (zone.IsInvalidTime(wall))
            {
                wall = wall.AddMinutes(30);
            }

            return TimeZoneInfo.ConvertTimeToUtc(wall, zone);
        }

        return (Start(from), Start(to < DateOnly.MaxValue ? to.AddDays(1) : to));
    }
}
