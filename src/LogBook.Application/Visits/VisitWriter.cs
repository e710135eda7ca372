using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Visits;

/// <summary>Puts visits into their rows within one unit of work; used for one visit and for a whole import.</summary>
/// <remarks>First <see cref="Take"/> each visit, in the order in which they became known, then <see cref="FlushAsync"/> once.</remarks>
internal sealed class VisitWriter
{
    private readonly LogBookDb _db;
    private readonly Viewer _viewer;
    private readonly FirmSetUp _firm;
    private readonly DateTime _now;
    private readonly IntakeSource _source;
    private readonly string? _mailDomain;
    private readonly Dictionary<string, SiteRow> _sites;
    private readonly ILookup<int, SystemRow> _systems;
    private readonly Dictionary<Guid, Standing> _standing;
    private readonly Dictionary<Guid, Guid> _photos;
    private readonly List<(Standing Standing, Visit Visit, string Canonical, string Sha256, string? Before)> _taken = [];
    private readonly List<(Standing Standing, Visit Visit, ConflictRow Row)> _conflicts = [];

    private VisitWriter(
        LogBookDb db, Viewer viewer, FirmSetUp firm, DateTime now, IntakeSource source, string? mailDomain,
        Dictionary<string, SiteRow> sites, ILookup<int, SystemRow> systems, Dictionary<Guid, Standing> standing, Dictionary<Guid, Guid> photos)
    {
        _db = db;
        _viewer = viewer;
        _firm = firm;
        _now = now;
        _source = source;
        _mailDomain = mailDomain;
        _sites = sites;
        _systems = systems;
        _standing = standing;
        _photos = photos;
    }

    /// <summary>Systems whose records were changed.</summary>
    public HashSet<int> Touched { get; } = [];

    /// <summary>Loads what stands, under the viewer: a site or visit that the viewer does not see does not exist here.</summary>
    /// <param name="db">Context of the unit of work.</param>
    /// <param name="viewer">Who hands in.</param>
    /// <param name="firm">Set-up, for the contacts.</param>
    /// <param name="visits">Visits that will be taken.</param>
    /// <param name="now">Receipt.</param>
    /// <param name="source">Way they came.</param>
    /// <param name="mailDomain">Right-hand side of Message-IDs; null when no summaries are wanted.</param>
    /// <param name="cancellationToken">Stops.</param>
    public static async Task<VisitWriter> LoadAsync(
        LogBookDb db, Viewer viewer, FirmSetUp firm, IReadOnlyList<Visit> visits, DateTime now, IntakeSource source, string? mailDomain, CancellationToken cancellationToken)
    {
        var codes = visits.Select(visit => CodeKeys.Of(visit.Site)).Distinct().ToList();
        var sites = await db.Sites.AsNoTracking().Where(site => codes.Contains(site.CodeKey)).ToListAsync(cancellationToken);
        var siteIds = sites.Select(site => site.Id).ToList();
        var systems = await db.Systems.AsNoTracking().Where(system => siteIds.Contains(system.SiteId)).ToListAsync(cancellationToken);
        var standing = new Dictionary<Guid, Standing>();
        foreach (var ids in visits.Select(visit => visit.Id).Distinct().Chunk(500))
        {
            // One statement: a visit that is new, which most are, costs one look.
            var rows = await db.Visits.AsTracking().Where(row => ids.Contains(row.VisitId)).ToListAsync(cancellationToken);
            if (rows.Count == 0)
            {
                continue;
            }

            var rowIds = rows.Select(row => row.Id).ToList();
            var versions = await db.VisitVersions.AsNoTracking().Where(version => rowIds.Contains(version.VisitRowId))
                .Select(version => new { version.VisitRowId, version.Version, version.Sha256 }).ToListAsync(cancellationToken);
            foreach (var row in rows)
            {
                standing[row.VisitId] = new Standing(row, versions.Where(v => v.VisitRowId == row.Id).ToDictionary(v => v.Version, v => v.Sha256), IsNew: false);
            }
        }

        var photos = new Dictionary<Guid, Guid>();
        foreach (var ids in visits.SelectMany(visit => visit.Photos).Select(photo => photo.Id).Distinct().Chunk(500))
        {
            var known = await db.Photos.AsNoTracking().Where(photo => ids.Contains(photo.PhotoId))
                .Join(db.Visits, photo => photo.VisitRowId, visit => visit.Id, (photo, visit) => new { photo.PhotoId, visit.VisitId }).ToListAsync(cancellationToken);
            foreach (var photo in known)
            {
                photos[photo.PhotoId] = photo.VisitId;
            }
        }

        return new VisitWriter(
            db, viewer, firm, now, source, mailDomain, sites.ToDictionary(site => site.CodeKey), systems.ToLookup(system => system.SiteId), standing, photos);
    }

    /// <summary>Decides about one visit. Nothing is in the database before <see cref="FlushAsync"/>.</summary>
    /// <param name="written">The visit, checked.</param>
    /// <param name="path">Path of the visit, for issues.</param>
    public IntakeOutcome Take(Visit written, string path)
    {
        var visit = VisitDocument.WithIds(written);
        var canonical = VisitDocument.Canonical(visit);
        var sha256 = VisitDocument.Sha256OfCanonical(canonical);
        var version = visit.Version ?? 1;
        if (!_sites.TryGetValue(CodeKeys.Of(visit.Site), out var site))
        {
            return new IntakeOutcome.NotFound();
        }

        var standing = _standing.GetValueOrDefault(visit.Id);
        if (standing is not null && standing.Versions.TryGetValue(version, out var known))
        {
            return known == sha256 ? new IntakeOutcome.Stored(visit.Id, version, sha256, AlreadyKnown: true, []) : Conflict(standing, visit, canonical, sha256);
        }

        var current = standing?.Row.CurrentVersion ?? 0;
        if (version != current + 1 || (version > 1 && visit.Amends is { } amends && amends != current))
        {
            return Refused(path + "version", "version-gap", IntakeTexts.VersionGap.In(_viewer.Language, version, current));
        }

        if (standing is not null && site.Id != standing.Row.SiteId && site.Id != standing.Row.MovedFromSiteId)
        {
            return Refused(path + "site", "site-stays", IntakeTexts.SiteStays.In(_viewer.Language));
        }

        if (visit.Photos.FirstOrDefault(photo => _photos.TryGetValue(photo.Id, out var owner) && owner != visit.Id) is { } taken)
        {
            return Refused(path + "photos", "photo-taken", IntakeTexts.PhotoTaken.In(_viewer.Language, taken.Id));
        }

        var at = standing?.Row.SiteId ?? site.Id;
        if (visit.Systems.FirstOrDefault(record => SystemOf(at, record.System) is null) is { } unknown)
        {
            return Refused(path + "systems", "unknown-code", IntakeTexts.NoSuchSystem.In(_viewer.Language, visit.Site, unknown.System));
        }

        if (standing is null)
        {
            var row = new VisitRow { VisitId = visit.Id, CustomerId = site.CustomerId, SiteId = site.Id, ReceivedAt = _now, State = VisitState.Closed };
            standing = new Standing(row, [], IsNew: true);
            _standing[visit.Id] = standing;
            _db.Visits.Add(row);
        }
        else if (!standing.IsNew)
        {
            standing.Row.State = VisitState.Reissued;
            standing.Row.ReviewedAt = null;
            standing.Row.ReviewedBy = null;
        }

        Fill(standing.Row, visit, version);
        _taken.Add((standing, visit, canonical, sha256, standing.Versions.GetValueOrDefault(current)));
        standing.Versions[version] = sha256;
        foreach (var photo in visit.Photos)
        {
            _photos.TryAdd(photo.Id, visit.Id);
        }

        return new IntakeOutcome.Stored(visit.Id, version, sha256, AlreadyKnown: false, []);
    }

    /// <summary>Writes all that was taken: versions, readings, photos, audit, outbox, and what is to be assessed.</summary>
    public async Task FlushAsync(CancellationToken cancellationToken)
    {
        foreach (var (_, _, conflict) in _conflicts)
        {
            if (!await _db.Conflicts.AnyAsync(row => row.VisitId == conflict.VisitId && row.Sha256 == conflict.Sha256, cancellationToken))
            {
                _db.Conflicts.Add(conflict);
                _db.Audit(new AuditEntry(AuditActs.Conflict, "Visit", conflict.VisitId.ToString("D"), conflict.CustomerId, _standing[conflict.VisitId].Versions.GetValueOrDefault(conflict.VisitVersion), conflict.Sha256));
            }
        }

        if (_taken.Count == 0)
        {
            await AddPhotosAsync(cancellationToken);
            return;
        }

        // The rows of the visits first: what hangs on them needs their keys.
        await _db.SaveChangesAsync(cancellationToken);
        await RemoveOldAsync(cancellationToken);
        foreach (var (standing, visit, canonical, sha256, before) in _taken)
        {
            var row = standing.Row;
            var version = visit.Version ?? 1;
            _db.VisitVersions.Add(new VisitVersionRow
            {
                CustomerId = row.CustomerId,
                VisitRowId = row.Id,
                Version = version,
                Document = canonical,
                Sha256 = sha256,
                ReceivedAt = _now,
                Source = _source,
                Who = _viewer.Who,
                Reason = visit.Reason,
            });
            _db.Audit(new AuditEntry(
                version == 1 ? AuditActs.Received : AuditActs.Amended, "Visit", visit.Id.ToString("D"), row.CustomerId, before, sha256, visit.Reason,
                (visit.AmendedAt ?? visit.EnteredAt)?.Utc));
            AddOutbox(row, visit, version);
            foreach (var record in visit.Systems)
            {
                Touched.Add(SystemOf(row.SiteId, record.System)!.Id);
            }
        }

        await AddPhotosAsync(cancellationToken);
        await _db.SaveChangesAsync(cancellationToken);
        await ReadingRows.InsertAsync(
            _db,
            _taken.GroupBy(taken => taken.Standing).Select(group => group.Last()).Where(last => last.Standing.Row.VoidedAt is null)
                .SelectMany(last => ReadingRows.Of(last.Standing.Row, last.Visit, code => SystemOf(last.Standing.Row.SiteId, code)!.Id)),
            cancellationToken);
        await MarkDueAsync(_db, Touched, _now, cancellationToken);
    }

    /// <summary>Notes that the stored assessment of systems has not seen all.</summary>
    internal static async Task MarkDueAsync(LogBookDb db, IEnumerable<int> systems, DateTime now, CancellationToken cancellationToken)
    {
        foreach (var ids in systems.Chunk(500))
        {
            await db.Systems.Where(system => ids.Contains(system.Id)).ExecuteUpdateAsync(set => set.SetProperty(system => system.AssessmentDue, now), cancellationToken);
        }
    }

    private IntakeOutcome.Conflict Conflict(Standing standing, Visit visit, string canonical, string sha256)
    {
        _conflicts.Add((standing, visit, new ConflictRow
        {
            CustomerId = standing.Row.CustomerId,
            VisitRowId = standing.Row.Id,
            VisitId = visit.Id,
            VisitVersion = visit.Version ?? 1,
            Document = canonical,
            Sha256 = sha256,
            ReceivedAt = _now,
            Source = _source,
            Who = _viewer.Who,
        }));
        return new IntakeOutcome.Conflict(visit.Id, standing.Row.CurrentVersion, standing.Versions[standing.Row.CurrentVersion], sha256);
    }

    private static IntakeOutcome.Refused Refused(string path, string code, string message) => new([new Issue(path, code, message)]);

    private static void Fill(VisitRow row, Visit visit, int version)
    {
        row.CurrentVersion = version;
        row.Kind = visit.Kind ?? VisitKind.Routine;
        row.Technician = visit.Technician;
        row.ArrivedAt = visit.Arrived.Utc;
        row.LeftAt = visit.Left?.Utc;
    }

    // An amendment takes the place of what was amended, also of the systems that it no longer names.
    private async Task RemoveOldAsync(CancellationToken cancellationToken)
    {
        foreach (var ids in _taken.Where(taken => !taken.Standing.IsNew).Select(taken => taken.Standing.Row.Id).Distinct().Chunk(500))
        {
            Touched.UnionWith(await _db.Readings.Where(reading => ids.Contains(reading.VisitRowId)).Select(reading => reading.SystemId).Distinct().ToListAsync(cancellationToken));
            Touched.UnionWith(await _db.Figures.Where(figure => ids.Contains(figure.VisitRowId)).Select(figure => figure.SystemId).Distinct().ToListAsync(cancellationToken));
            await _db.Readings.Where(reading => ids.Contains(reading.VisitRowId)).ExecuteDeleteAsync(cancellationToken);
        }
    }

    private async Task AddPhotosAsync(CancellationToken cancellationToken)
    {
        // The pictures of a text that is refused are taken in too: it may be the one that stands in the end.
        var wanted = _taken.SelectMany(taken => taken.Visit.Photos.Select(photo => (taken.Standing.Row, photo)))
            .Concat(_conflicts.SelectMany(conflict => conflict.Visit.Photos.Select(photo => (conflict.Standing.Row, photo))))
            .DistinctBy(pair => pair.photo.Id).ToList();
        if (wanted.Count == 0)
        {
            return;
        }

        var there = new HashSet<Guid>();
        foreach (var ids in wanted.Select(pair => pair.photo.Id).Chunk(500))
        {
            there.UnionWith(await _db.Photos.Where(photo => ids.Contains(photo.PhotoId)).Select(photo => photo.PhotoId).ToListAsync(cancellationToken));
        }

        foreach (var (row, photo) in wanted.Where(pair => !there.Contains(pair.photo.Id)))
        {
            _db.Photos.Add(new PhotoRow
            {
                CustomerId = row.CustomerId,
                VisitRowId = row.Id,
                PhotoId = photo.Id,
                Of = photo.Of,
                Sha256 = photo.Sha256,
                TakenAt = photo.TakenAt?.Utc,
            });
        }
    }

    private void AddOutbox(VisitRow row, Visit visit, int version)
    {
        if (_mailDomain is null
            || !_firm.Sites.TryGetValue(visit.Site, out var site)
            || !_firm.Customers.TryGetValue(site.Customer, out var customer))
        {
            return;
        }

        foreach (var contact in customer.Contacts.Where(contact => contact.GetsSummaries == true).DistinctBy(contact => contact.Email, StringComparer.OrdinalIgnoreCase))
        {
            _db.Outbox.Add(new OutboxRow
            {
                CustomerId = row.CustomerId,
                VisitRowId = row.Id,
                VisitVersion = version,
                Kind = OutboxKinds.VisitSummary,
                MessageId = $"{Guid.CreateVersion7():N}@{_mailDomain}",
                Recipient = contact.Email,
                RecipientName = contact.Name,
                Language = contact.Language ?? Domain.Languages.Language.English,
                CreatedAt = _now,
                DueAt = _now,
            });
        }
    }

    private SystemRow? SystemOf(int siteId, string code)
    {
        var key = CodeKeys.Of(code);
        return _systems[siteId].FirstOrDefault(system => system.CodeKey == key);
    }

    private sealed record Standing(VisitRow Row, Dictionary<int, string> Versions, bool IsNew);
}
