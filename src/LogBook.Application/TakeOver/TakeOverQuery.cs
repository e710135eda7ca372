using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Planning;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.TakeOver;

/// <summary>What a site's new technician is told. The number of statements does not depend on what is recorded.</summary>
public sealed class TakeOverQuery(LogBookStore store, SiteCardQuery cards, SetUpStore setUp, TimeProvider clock)
{
    /// <summary>Lines of the story that are told; the rest is in the site history.</summary>
    public const int MostLines = 40;

    /// <summary>Notes that are told.</summary>
    public const int MostNotes = 12;

    /// <summary>Pictures that are shown.</summary>
    public const int MostPhotos = 8;

    private const int MostSettings = 3;

    private static readonly HistoryMarkKind[] Told = [HistoryMarkKind.Settings, HistoryMarkKind.Cleaning, HistoryMarkKind.Calibration, HistoryMarkKind.Event];

    /// <summary>The pack; null where there is no such site or the viewer is not of the firm.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="cancellationToken">Stops the reading.</param>
    public async Task<TakeOverPack?> OfAsync(Viewer viewer, string siteCode, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm || await cards.OfAsync(viewer, siteCode, cancellationToken) is not { } card)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var zone = TimeZoneInfo.FindSystemTimeZoneById(card.Site.TimeZone);
        var now = clock.GetUtcNow().UtcDateTime;
        var today = SitesQuery.DayIn(zone, now);
        var (since, from) = (now.AddYears(-1), today.AddYears(-1));
        var key = CodeKeys.Of(card.Site.Code);
        var (documents, findings, photos, calendar) = await store.ReadAsync(
            viewer,
            async db =>
            {
                var visits = db.Visits.Where(visit => visit.VoidedAt == null && visit.ArrivedAt >= since && db.Sites.Any(site => site.Id == visit.SiteId && site.CodeKey == key));
                var texts = await visits
                    .Join(
                        db.VisitVersions,
                        visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                        version => new { version.VisitRowId, version.Version },
                        (visit, version) => version.Document)
                    .ToListAsync(cancellationToken);
                var known = await AttentionQuery.Seen(db, viewer)
                    .Where(finding => finding.Severity != Severity.Watch && finding.FirstSeen >= from && db.Sites.Any(site => site.Id == finding.SiteId && site.CodeKey == key))
                    .Select(finding => new
                    {
                        finding.Kind,
                        finding.FirstSeen,
                        finding.FirstVisit,
                        finding.Severity,
                        finding.ClosedOn,
                        System = db.Systems.Where(system => system.Id == finding.SystemId).Select(system => system.Code).FirstOrDefault(),
                    })
                    .ToListAsync(cancellationToken);
                var pictures = await db.Photos.Where(photo => photo.StoredAt != null)
                    .Join(visits, photo => photo.VisitRowId, visit => visit.Id, (photo, visit) => new { photo.PhotoId, photo.Of, visit.ArrivedAt, photo.Id })
                    .OrderByDescending(pair => pair.ArrivedAt).ThenBy(pair => pair.Id).Take(MostPhotos)
                    .Select(pair => new { pair.PhotoId, pair.Of })
                    .ToListAsync(cancellationToken);
                return (texts, known, pictures, (await PlanStore.WithCalendarAsync(db, today, today, cancellationToken)).Calendar);
            },
            cancellationToken);

        var visits = documents.ConvertAll(Documents.Visit);
        var story = card.Systems.SelectMany(system => LinesOf(SystemHistory.From(firm, card.Site.Code, system.Code, visits)))
            .Concat(findings.Select(finding => new TakeOverLine(
                finding.FirstSeen,
                finding.System,
                finding.ClosedOn is { } closed ? new Said(TakeOverTexts.FindingClosed, FindingTexts.NameOf(finding.Kind), closed) : new Said(TakeOverTexts.FindingOpen, FindingTexts.NameOf(finding.Kind)),
                finding.FirstVisit,
                finding.Severity)))
            .OrderByDescending(line => line.Day).ThenBy(line => line.System, StringComparer.OrdinalIgnoreCase)
            .ToList();
        return new TakeOverPack(
            card,
            card.Site.AssignedTo is { } code ? firm.People.GetValueOrDefault(code) : null,
            firm.Document.Products.ToDictionary(product => product.Code, product => product.Name, StringComparer.OrdinalIgnoreCase),
            from,
            [.. story.Take(MostLines)],
            Math.Max(0, story.Count - MostLines),
            [.. NotesOf(visits, zone, firm).Take(MostNotes)],
            [.. photos.Select(photo => (photo.PhotoId, photo.Of))])
        {
            Now = now,
            ClosedToday = calendar.Closed(card.Site.Code, today),
            Patch = viewer.MayKeepSetUp ? PatchStore.OfferOf(await setUp.FirmAsync(viewer, cancellationToken: cancellationToken), card.Site.AssignedTo) : null,
        };
    }

    private static IEnumerable<TakeOverLine> LinesOf(SystemHistory history)
    {
        var left = new Dictionary<string, SettingValue>(StringComparer.Ordinal);
        return history.Visits
            .SelectMany(visit => SettingsOf(history, visit, left).Concat(HistoryMarks.Events(history, visit)).Concat(HistoryMarks.Probes(history, visit)).ToList())
            .Where(mark => Told.Contains(mark.Kind))
            .Select(mark => new TakeOverLine(DateOnly.FromDateTime(mark.At), history.System.Code, mark.Words, mark.Visit));
    }

    // A controller that was set anew would fill the page with one visit: its settings are told as one line that leads there.
    private static IReadOnlyList<HistoryMark> SettingsOf(SystemHistory history, SystemVisit visit, Dictionary<string, SettingValue> left)
    {
        var marks = HistoryMarks.Settings(history, visit, left).ToList();
        return marks.Count <= MostSettings ? marks : [marks[0] with { Words = new Said(TakeOverTexts.ManySettings, marks.Count) }];
    }

    // What is written again at each visit is told once, with its newest day.
    private static IEnumerable<TakeOverNote> NotesOf(IEnumerable<Visit> visits, TimeZoneInfo zone, FirmSetUp firm)
    {
        TakeOverNote Note(Visit visit, string? about, string text) =>
            new(SitesQuery.DayIn(zone, visit.Arrived.Utc), firm.People.GetValueOrDefault(visit.Technician)?.Name ?? visit.Technician, about, text.Trim(), visit.Id);
        return visits.OrderByDescending(visit => visit.Arrived.Utc)
            .SelectMany(visit => visit.Systems
                .SelectMany(system => system.Observations.Select(observation => Note(visit, $"{system.System} · {observation.About}", observation.Text)))
                .Prepend(Note(visit, null, visit.Notes ?? "")))
            .Where(note => note.Text.Length > 0)
            .DistinctBy(note => (note.About, note.Text));
    }
}
