using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Shelf;

/// <summary>The shelf: every drum of every site from the stored figures. The same few statements for any number of sites.</summary>
public sealed class ShelfQuery(LogBookStore store, SetUpStore setUp, SitesQuery dues, TimeProvider clock)
{
    /// <summary>Drums on a page.</summary>
    public const int PageSize = 100;

    // Longer than a season's stop: what was read before that says nothing of today.
    private const int LookBackDays = 400;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>The drums; null where the viewer may not see them.</summary>
    public async Task<ShelfList?> ListAsync(Viewer viewer, ShelfFilter filter, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return null;
        }

        var now = Utc.Now(clock);
        var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
        var sites = (await dues.ListAsync(viewer, cancellationToken: cancellationToken)).Where(site => firm.Sites.ContainsKey(site.Code)).ToList();
        var since = now.AddDays(-LookBackDays);
        var figures = await store.ReadAsync(
            viewer,
            async db =>
            {
                // The systems first: joined to them, the database walks through the figures of all tests and years.
                var systems = await db.Systems.Where(system => system.RetiredAt == null)
                    .Join(db.Sites.Where(site => site.RetiredAt == null), system => system.SiteId, site => site.Id, (system, site) => new { system.Id, system.Code, Site = site.Code })
                    .ToDictionaryAsync(system => system.Id, cancellationToken);
                var ids = systems.Keys.ToList();
                var newest = await db.Figures
                    .Where(figure => ids.Contains(figure.SystemId) && figure.Code == FigureCodes.DaysToEmpty && figure.To >= since
                        && !db.Figures.Any(newer => newer.SystemId == figure.SystemId && newer.Code == figure.Code && newer.About == figure.About && newer.To > figure.To))
                    .Join(db.Visits.Where(visit => visit.VoidedAt == null), figure => figure.VisitRowId, visit => visit.Id, (figure, visit) => new { Figure = figure, visit.VisitId })
                    .ToListAsync(cancellationToken);
                return newest.ConvertAll(pair => new DrumFigure(systems[pair.Figure.SystemId].Site, systems[pair.Figure.SystemId].Code, pair.Figure, pair.VisitId));
            },
            cancellationToken);
        var known = figures.GroupBy(figure => (CodeKeys.Of(figure.Site), CodeKeys.Of(figure.System), CodeKeys.Of(figure.Figure.About))).ToDictionary(same => same.Key, same => same.Last());
        var all = sites.SelectMany(site => firm.SystemsOf(site.Code).SelectMany(system => LinesOf(firm, site, system, known, now))).ToList();
        var matching = all.Where(line => Matches(line, filter)).OrderBy(line => line.Standing).ThenBy(line => line.RunsOut?.First ?? DateOnly.MaxValue)
            .ThenBy(line => line.Site, StringComparer.OrdinalIgnoreCase).ThenBy(line => line.System, StringComparer.OrdinalIgnoreCase).ThenBy(line => line.Drum, StringComparer.OrdinalIgnoreCase).ToList();
        return new ShelfList(
            now,
            [.. matching.Skip((Math.Max(1, filter.Page) - 1) * PageSize).Take(PageSize)],
            matching.Count,
            [.. matching.Where(line => line.SuggestedL > 0).OrderBy(line => line.Site, StringComparer.OrdinalIgnoreCase).ThenBy(line => line.System, StringComparer.OrdinalIgnoreCase).ThenBy(line => line.Drum, StringComparer.OrdinalIgnoreCase)],
            [.. sites.OrderBy(site => site.Code, StringComparer.OrdinalIgnoreCase).Select(site => (site.Code, site.Name))],
            [.. sites.Select(site => site.AssignedTo).OfType<string>().Distinct().Order(StringComparer.Ordinal)],
            [.. all.Select(line => (line.Product, line.ProductName)).Distinct().OrderBy(product => product.ProductName, StringComparer.OrdinalIgnoreCase)]);
    }

    private static IEnumerable<ShelfLine> LinesOf(FirmSetUp firm, SiteDueRow site, WaterSystem system, Dictionary<(string Site, string System, string Drum), DrumFigure> known, DateTime now)
    {
        var zoneName = firm.Sites[site.Code].TimeZone;
        var zone = TimeZoneInfo.FindSystemTimeZoneById(zoneName);
        var today = SitesQuery.DayIn(zone, now);

        // A drum runs out whether or not an interval was agreed: without one, four weeks are taken and said to be so.
        var every = (int)Math.Ceiling(site.EveryDays ?? PackList.UsualDays);
        var due = site.DueOn ?? site.LastVisit?.AddDays(every) ?? today;
        var next = due > today ? due : today.AddDays(1);
        var second = next.AddDays(every);
        var isAgreed = site.EveryDays is not null && site.DueOn is not null;

        // A renewed drum keeps its code with another first day.
        foreach (var drum in system.Drums.Where(drum => (drum.From ?? DateOnly.MinValue) <= today).GroupBy(drum => drum.Code, StringComparer.OrdinalIgnoreCase).Select(versions => versions.MaxBy(drum => drum.From ?? DateOnly.MinValue)!))
        {
            var read = known.GetValueOrDefault((CodeKeys.Of(site.Code), CodeKeys.Of(system.Code), CodeKeys.Of(drum.Code)));
            var outlook = read is null ? null : OutlookOf(read.Figure, system.Operation, zone);
            var until = StartOf(zone, Later(second, next.AddDays((int)Math.Ceiling(drum.DeliveryDays ?? 0))));
            yield return new ShelfLine(
                site.Code,
                site.Name,
                zoneName,
                site.AssignedTo,
                system.Code,
                system.Name,
                drum.Code,
                drum.CapacityL,
                drum.DeliveryDays,
                drum.Product,
                firm.Products.GetValueOrDefault(drum.Product)?.Name ?? drum.Product,
                outlook,
                read?.Visit,
                isAgreed ? next : null,
                isAgreed ? second : null,
                outlook?.StandingBefore(StartOf(zone, next), StartOf(zone, second)) ?? StockStanding.Unknown,
                outlook?.NeededUntil(until)) { Explained = read is null || outlook is null ? [] : Explained(read, outlook, zone, until) };
        }
    }

    // The stored figure says how the use a day came about; the rest depends on the visits ahead.
    private static IReadOnlyList<HistoryFigure> Explained(DrumFigure read, StockOutlook outlook, TimeZoneInfo zone, DateTime until)
    {
        var runOut = SiteHistoryQuery.FigureOf(read.Figure, read.Visit, zone);
        return outlook.ShortUntil(until) is not { } missing
            ? [runOut]
            :
            [
                runOut with { Inputs = [.. runOut.Inputs, .. outlook.RangeInputs()] },
                new HistoryFigure(
                    FigureCodes.ProductMissing, runOut.About, read.Visit, runOut.To, TimeZoneInfo.ConvertTimeFromUtc(until, zone), missing, [], outlook.NeededInputs(until)),
            ];
    }

    // The figure keeps what went in: the usable volume and the use a day, each with its uncertainty.
    private static StockOutlook? OutlookOf(FigureRow figure, Operation? operation, TimeZoneInfo zone)
    {
        var inputs = JsonSerializer.Deserialize<List<FigureInput>>(figure.Inputs, Json)!;
        Estimate? Of(string name) => inputs.Find(input => input.Name == name) is { } input ? new Estimate(input.Value, input.Unit, input.StandardUncertainty ?? 0) : null;
        return Of("usable") is { } usable
            ? new StockOutlook(figure.To, usable, Of("use-per-day"), figure.Value is { } days ? new Estimate(days, figure.Unit ?? "d", figure.StandardUncertainty ?? 0) : null) { Operation = operation, Zone = zone }
            : null;
    }

    // What is ordered at the next visit comes after its days of delivery: until then the drum must last, even beyond the visit after next.
    private static DateOnly Later(DateOnly afterNext, DateOnly delivered) => afterNext > delivered ? afterNext : delivered;

    private static DateTime StartOf(TimeZoneInfo zone, DateOnly day)
    {
        var midnight = day.ToDateTime(TimeOnly.MinValue);
        return TimeZoneInfo.ConvertTimeToUtc(zone.IsInvalidTime(midnight) ? midnight.AddHours(1) : midnight, zone);
    }

    private static bool Matches(ShelfLine line, ShelfFilter filter) =>
        (filter.Site is null || Same(line.Site, filter.Site))
        && (filter.Person is null || Same(line.AssignedTo, filter.Person))
        && (filter.Product is null || Same(line.Product, filter.Product))
        && (filter.Standing is null || line.Standing == filter.Standing);

    private static bool Same(string? a, string? b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private sealed record DrumFigure(string Site, string System, FigureRow Figure, Guid Visit);
}
