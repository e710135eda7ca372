using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Shelf;

/// <summary>Make-up watch: conductivity, hardness and chloride of the make-up of every system against its own past, from stored figures. Three statements.</summary>
public sealed class MakeUpQuery(LogBookStore store, TimeProvider clock)
{
    /// <summary>Lines on a page.</summary>
    public const int PageSize = 100;

    // The newest reading and what led to it.
    private const int Newest = 4;
    private const int LookBackDays = 400;

    private static readonly FindingState[] Standing = [FindingState.Open, FindingState.Acknowledged, FindingState.Snoozed];

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>The lines; null where the viewer may not see them.</summary>
    public Task<MakeUpList?> ListAsync(Viewer viewer, string? site = null, int page = 1, CancellationToken cancellationToken = default) => !viewer.IsOfFirm
        ? Task.FromResult<MakeUpList?>(null)
        : store.ReadAsync<MakeUpList?>(
            viewer,
            async db =>
            {
                var since = Utc.Now(clock).AddDays(-LookBackDays);
                var systems = await db.Systems.Where(system => system.RetiredAt == null)
                    .Join(db.Sites.Where(row => row.RetiredAt == null), system => system.SiteId, row => row.Id, (system, row) => new { system.Id, system.Code, system.Name, Site = row.Code, row.CodeKey, SiteName = row.Name, row.TimeZone })
                    .ToDictionaryAsync(system => system.Id, cancellationToken);
                var figures = await db.Systems.Where(system => system.RetiredAt == null)
                    .SelectMany(system => db.Figures.Where(figure => figure.SystemId == system.Id && figure.Code == FigureCodes.MakeUpShift && figure.To >= since && figure.Value != null
                        && db.Figures.Count(newer => newer.SystemId == figure.SystemId && newer.Code == figure.Code && newer.About == figure.About && newer.Value != null && newer.To > figure.To) < Newest))
                    .Join(db.Visits.Where(visit => visit.VoidedAt == null), figure => figure.VisitRowId, visit => visit.Id, (figure, visit) => new { Figure = figure, visit.VisitId })
                    .ToListAsync(cancellationToken);
                var open = (await AttentionQuery.Seen(db, viewer)
                    .Where(finding => finding.Kind == FindingKinds.MakeUpChanged && finding.SystemId != null && Standing.Contains(finding.State))
                    .Select(finding => new { finding.SystemId, finding.AboutKey, finding.FirstSeen })
                    .ToListAsync(cancellationToken)).ToLookup(finding => finding.SystemId!.Value);
                var key = site is null ? null : CodeKeys.Of(site);
                var lines = figures.Where(pair => systems.TryGetValue(pair.Figure.SystemId, out var system) && (key is null || system.CodeKey == key))
                    .GroupBy(pair => (pair.Figure.SystemId, pair.Figure.About))
                    .Select(same =>
                    {
                        var system = systems[same.Key.SystemId];
                        var ordered = same.OrderBy(pair => pair.Figure.To).ToList();
                        var newest = ordered[^1];
                        var zone = TimeZoneInfo.FindSystemTimeZoneById(system.TimeZone);
                        var inputs = JsonSerializer.Deserialize<List<FigureInput>>(newest.Figure.Inputs, Json)!;
                        FigureInput Of(string name) => inputs.First(input => input.Name == name);
                        var now = Of("now");
                        return new MakeUpLine(
                            system.Site,
                            system.SiteName,
                            system.Code,
                            system.Name,
                            same.Key.About,
                            SitesQuery.DayIn(zone, newest.Figure.To),
                            newest.VisitId,
                            new Estimate(now.Value, now.Unit, now.StandardUncertainty ?? 0),
                            Of("usual").Value,
                            Of("spread").Value,
                            [.. ordered.Select(pair => new Estimate(pair.Figure.Value!.Value, "%", pair.Figure.StandardUncertainty ?? 0))],
                            open[same.Key.SystemId].Select(finding => new FindingKey(system.Site, system.Code, FindingKinds.MakeUpChanged, finding.AboutKey, finding.FirstSeen)).FirstOrDefault(),
                            SiteHistoryQuery.FigureOf(newest.Figure, newest.VisitId, zone));
                    })
                    .OrderBy(line => line.Finding is null).ThenByDescending(line => Math.Abs(line.Against[^1].Value))
                    .ThenBy(line => line.Site, StringComparer.OrdinalIgnoreCase).ThenBy(line => line.System, StringComparer.OrdinalIgnoreCase).ThenBy(line => line.Test, StringComparer.Ordinal)
                    .ToList();
                return new MakeUpList(
                    [.. lines.Skip((Math.Max(1, page) - 1) * PageSize).Take(PageSize)],
                    lines.Count,
                    [.. systems.Values.Select(system => (system.Site, system.SiteName)).Distinct().OrderBy(known => known.Site, StringComparer.OrdinalIgnoreCase)]);
            },
            cancellationToken);
}
