using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Records;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Records;

/// <summary>Probe record, meter record and pump record of one system: from its visits by the domain, with the stored figures beside them.</summary>
public sealed class RecordsQuery(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    private static readonly string[] ProbeFigures = [FigureCodes.ProbeError, FigureCodes.ProbeDrift];

    private static readonly string[] MeterFigures = [FigureCodes.MakeUp, FigureCodes.Bleed, FigureCodes.CyclesByVolume];

    private static readonly string[] PumpFigures = [FigureCodes.PumpOutput];

    /// <summary>The records; null where there is no such system or the viewer may not see it.</summary>
    public async Task<SystemRecords?> OfAsync(Viewer viewer, string site, string system, RecordsOf wanted, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var (siteKey, systemKey) = (CodeKeys.Of(site), CodeKeys.Of(system));
        var codes = wanted switch { RecordsOf.Probes => ProbeFigures, RecordsOf.Meters => MeterFigures, _ => PumpFigures };
        var read = await store.ReadAsync(
            viewer,
            async db =>
            {
                var records = await SiteRecords.ReadAsync(db, await db.Sites.Where(row => row.CodeKey == siteKey).Select(row => row.Id).SingleOrDefaultAsync(cancellationToken), cancellationToken);
                if (records?.Systems.FirstOrDefault(row => row.CodeKey == systemKey) is not { } found)
                {
                    return null;
                }

                var figures = await db.Figures.Where(figure => figure.SystemId == found.Id && codes.Contains(figure.Code))
                    .Join(db.Visits.Where(visit => visit.VoidedAt == null), figure => figure.VisitRowId, visit => visit.Id, (figure, visit) => new { Figure = figure, visit.VisitId })
                    .OrderBy(pair => pair.Figure.To).ThenBy(pair => pair.Figure.Id)
                    .ToListAsync(cancellationToken);
                return new Read(records, found, [.. figures.Select(pair => (pair.Figure, pair.VisitId))]);
            },
            cancellationToken);
        if (read is not var (records, row, stored))
        {
            return null;
        }

        var now = Utc.Now(clock);
        var history = SystemHistory.From(firm, records.Site.Code, row.Code, records.Versions, records.NotificationsOf(row.Code));
        VisitFacts? latest = null;
        foreach (var visit in history.AsKnownAt(now).Visits)
        {
            latest = new VisitFacts(history, visit, latest);
        }

        var probes = wanted == RecordsOf.Probes ? ProbeRecord.Of(latest) : [];
        return new SystemRecords(
            new SystemHeading(records.Site.Code, records.Site.Name, row.Code, row.Name, records.Site.TimeZone),
            history.Visits.Count > 0 ? history.DayOf(history.Visits[0].At) : history.DayOf(now),
            history.DayOf(now).AddDays(1),
            probes,
            wanted == RecordsOf.Probes ? OtherProbeReading.Of(latest) : [],
            wanted == RecordsOf.Probes ? DisplayFed.Of(latest) : [],
            StandardCheck.Of(firm, probes.SelectMany(probe => probe.Points).Select(point => point.Facts.Instrument).OfType<string>()),
            wanted == RecordsOf.Meters ? MeterRecord.Of(latest) : [],
            wanted == RecordsOf.Pumps ? PumpRecord.Of(latest) : [],
            [.. stored.Select(pair => SiteHistoryQuery.FigureOf(pair.Figure, pair.Visit, history.Zone))]);
    }

    private sealed record Read(SiteRecords Records, SystemRow Row, IReadOnlyList<(FigureRow Figure, Guid Visit)> Figures);
}
