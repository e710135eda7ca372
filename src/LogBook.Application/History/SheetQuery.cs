using LogBook.Application.Data;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.History;

/// <summary>The sheet of the last twelve visits with readings. Two statements.</summary>
public sealed class SheetQuery(LogBookStore store)
{
    /// <summary>Visits across.</summary>
    public const int Across = 12;

    // Visits to other systems of the site and deliveries lie between; so many are looked through.
    private const int LookThrough = 48;

    /// <summary>The sheet; null where there is no such system or the viewer may not see it.</summary>
    public async Task<SheetView?> OfAsync(Viewer viewer, string siteCode, string systemCode, CancellationToken cancellationToken = default) => await store.ReadAsync(
        viewer,
        async db =>
        {
            var siteKey = CodeKeys.Of(siteCode);
            var systemKey = CodeKeys.Of(systemCode);
            var found = await db.Sites.Where(site => site.CodeKey == siteKey)
                .Join(db.Systems.Where(system => system.CodeKey == systemKey), site => site.Id, system => system.SiteId, (site, system) => new { Site = site, System = system })
                .FirstOrDefaultAsync(cancellationToken);
            if (found is null)
            {
                return null;
            }

            var documents = await db.Visits
                .Where(visit => visit.SiteId == found.Site.Id && visit.VoidedAt == null)
                .OrderByDescending(visit => visit.ArrivedAt).Take(LookThrough)
                .Join(
                    db.VisitVersions,
                    visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                    version => new { version.VisitRowId, version.Version },
                    (visit, version) => version.Document)
                .ToListAsync(cancellationToken);
            var site = Documents.Site(found.Site.Document);
            var system = Documents.System(found.System.Document);
            var visits = documents.Select(Documents.Visit)
                .Select(visit => (visit, record: visit.Systems.FirstOrDefault(s => s.System.Equals(system.Code, StringComparison.OrdinalIgnoreCase))))
                .Where(pair => pair.record?.Readings.Count > 0)
                .Select(pair => new SystemVisit(pair.visit, pair.record!))
                .OrderByDescending(visit => visit.At).Take(Across);
            return Of(new SystemHistory(FirmSetUp.Empty, site, system, visits), viewer.Language);
        },
        cancellationToken);

    /// <summary>The sheet of the visits of a history.</summary>
    public static SheetView Of(SystemHistory history, Language language)
    {
        var order = TestCatalogue.All.Select((test, place) => (test.Code, place)).ToDictionary(pair => pair.Code, pair => pair.place, StringComparer.OrdinalIgnoreCase);
        var programme = history.Visits.Count == 0 ? null : history.ProgrammeOn(history.DayOf(history.Visits[^1].At));
        var lines = history.Visits
            .SelectMany(visit => visit.Record.Readings)
            .GroupBy(reading => (At: reading.At.ToLowerInvariant(), Test: reading.Test.ToLowerInvariant(), Source: reading.Source ?? ReadingSource.Kit, reading.Unit))
            .OrderBy(group => group.Key.At == SamplePoints.Tower ? 0 : group.Key.At == SamplePoints.MakeUp ? 1 : 2)
            .ThenBy(group => group.Key.At, StringComparer.Ordinal)
            .ThenBy(group => order.GetValueOrDefault(group.Key.Test, int.MaxValue))
            .ThenBy(group => group.Key.Source)
            .Select(group =>
            {
                var first = group.First();
                var range = RangeOf(programme, first);
                return new SheetLine(first.At, first.Test, group.Key.Source, group.Key.Unit, range?.Unit == group.Key.Unit ? range : null, [.. history.Visits.Select(visit => CellOf(history, visit, first, language))]);
            })
            .ToList();
        return new SheetView(
            new SystemHeading(history.Site.Code, history.Site.Name, history.System.Code, history.System.Name, history.Site.TimeZone),
            [.. history.Visits.Select(visit => new SheetVisit(visit.Visit.Id, HistoryBuilder.Wall(history, visit.At), visit.Visit.Technician, visit.Visit.Kind ?? VisitKind.Routine))],
            lines);
    }

    private static SheetCell CellOf(SystemHistory history, SystemVisit visit, Reading like, Language language)
    {
        // Read twice: what was found first stands on the sheet; the rest is on the visit's own page.
        var reading = visit.Record.Readings.FirstOrDefault(r =>
            Same(r.At, like.At) && Same(r.Test, like.Test) && (r.Source ?? ReadingSource.Kit) == (like.Source ?? ReadingSource.Kit) && r.Unit == like.Unit);
        if (reading is null)
        {
            return new SheetCell(null, RangeStanding.NoRange, null);
        }

        var value = HistoryBuilder.ValueOf(reading);
        var range = RangeOf(history.ProgrammeOn(history.DayOf(visit.At)), reading);
        var text = reading.NotTaken is not null ? null
            : value is { } number ? $"{reading.Qualifier}{(reading.Qualifier is null ? "" : " ")}{Shown.Entered(number, language)}"
            : HistoryTexts.NotQuantifiable.In(language);
        return new SheetCell(text, RangeJudgement.Of(reading, range), reading.NotTaken);
    }

    private static TestRange? RangeOf(Programme? programme, Reading reading) => RangeJudgement.RangeOf(programme, reading.At, reading.Test);

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
