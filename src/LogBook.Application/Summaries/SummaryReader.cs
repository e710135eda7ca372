using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Estimates;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Summaries;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Summaries;

/// <summary>Reads what a summary is made from, as far as the viewer may see it, and words it.</summary>
public sealed class SummaryReader(LogBookStore store, SetUpStore setUp, VisitReader visits)
{
    /// <summary>The summary of a visit.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="visitId">Identity of the visit.</param>
    /// <param name="language">Language of the reader.</param>
    /// <param name="version">Version asked for; the current one when null.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>The summary, or null when the viewer knows no such visit.</returns>
    public async Task<VisitSummary?> FindAsync(Viewer viewer, Guid visitId, Language language, int? version = null, CancellationToken cancellationToken = default)
    {
        if (await visits.FindAsync(viewer, visitId, version, cancellationToken) is not { } stored)
        {
            return null;
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var firmRow = await setUp.FirmRowAsync(viewer, cancellationToken);
        var (findings, figures) = await store.ReadAsync(viewer, db => ResultsAsync(db, stored.Row, language, cancellationToken), cancellationToken);
        return SummaryBuilder.Build(new SummarySource(firmRow?.Name ?? string.Empty, firm, stored.Visit, findings, figures), language);
    }

    private static async Task<(IReadOnlyList<Finding> Findings, IReadOnlyList<SummarySourceFigure> Figures)> ResultsAsync(
        LogBookDb db, VisitRow visit, Language language, CancellationToken cancellationToken)
    {
        var findings = await db.Findings.Where(row => row.SiteId == visit.SiteId)
            .Select(row => language == Language.Spanish ? row.Spanish : language == Language.Portuguese ? row.Portuguese : row.English)
            .ToListAsync(cancellationToken);
        var figures = await (
            from figure in db.Figures
            join system in db.Systems on figure.SystemId equals system.Id
            where figure.VisitRowId == visit.Id
            select new { system.Code, Figure = figure }).ToListAsync(cancellationToken);
        return (
            [.. findings.Select(json => JsonSerializer.Deserialize(json, ExchangeJson.Default.Finding)!)],
            [.. figures.Select(row => new SummarySourceFigure(
                row.Code,
                row.Figure.Code,
                row.Figure.About,
                row.Figure is { Value: { } value, StandardUncertainty: { } u, Unit: { } unit } ? new Estimate(value, unit, u) : null,
                null))]);
    }
}
