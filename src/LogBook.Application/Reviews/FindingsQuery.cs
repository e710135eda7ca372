using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>Findings for other programs and for the command.</summary>
public sealed class FindingsQuery(LogBookStore store, SetUpStore setUp, RoundKeeper round)
{
    /// <summary>Findings in every state, by site, system, first day and kind; none for a viewer who is not of the firm.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="site">Only this site, or null.</param>
    /// <param name="asOf">Works them out anew as they stood then, people's answers left out; null for the stored ones.</param>
    /// <param name="language">Language of the texts; the viewer's when null.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<IReadOnlyList<Finding>> ListAsync(
        Viewer viewer, string? site = null, DateTime? asOf = null, Language? language = null, CancellationToken cancellationToken = default)
    {
        // Findings are the firm's own: a customer reads what the visit summary makes of them.
        if (!viewer.IsOfFirm)
        {
            return [];
        }

        var spoken = language ?? viewer.Language;
        var key = site is null ? null : CodeKeys.Of(site);
        var findings = asOf is { } moment
            ? await WorkOutAsync(viewer, key, Utc.Of(moment), spoken, cancellationToken)
            : await StoredAsync(viewer, key, spoken, cancellationToken);
        return
        [
            .. findings.OrderBy(f => f.Site, StringComparer.OrdinalIgnoreCase).ThenBy(f => f.System, StringComparer.OrdinalIgnoreCase)
                .ThenBy(f => f.FirstSeen).ThenBy(f => f.Kind, StringComparer.Ordinal).ThenBy(f => ResultRows.AboutKey(f.About), StringComparer.Ordinal),
        ];
    }

    /// <summary>The last moment that the data tell of (departure, result or amendment), UTC; null without visits.</summary>
    public async Task<DateTime?> LastMomentAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        var documents = await store.ReadAsync(
            viewer,
            async db => await db.Visits.Where(visit => visit.VoidedAt == null)
                .Join(db.VisitVersions, visit => visit.Id, version => version.VisitRowId, (_, version) => version.Document).ToListAsync(cancellationToken),
            cancellationToken);
        return documents.Select(ExchangeReader.Parse<Visit>).SelectMany(Moments).Select(moment => (DateTime?)moment).Max();
    }

    /// <summary>Moments at which something of a visit became known.</summary>
    internal static IEnumerable<DateTime> Moments(Visit visit) =>
    [
        visit.Version > 1 && visit.AmendedAt is { } amended ? amended.Utc : (visit.Left ?? visit.EnteredAt ?? visit.Arrived).Utc,
        .. visit.Systems.SelectMany(record => record.Readings).Select(reading => reading.ResultAt).OfType<Moment>().Select(result => result.Utc),
    ];

    private Task<List<Finding>> StoredAsync(Viewer viewer, string? site, Language language, CancellationToken cancellationToken) => store.ReadAsync(
        viewer,
        async db =>
        {
            var rows = AttentionQuery.Seen(db, viewer);
            if (site is not null)
            {
                rows = rows.Where(row => db.Sites.Any(s => s.Id == row.SiteId && s.CodeKey == site));
            }

            var texts = await rows
                .Select(row => language == Language.Spanish ? row.Spanish : language == Language.Portuguese ? row.Portuguese : row.English)
                .ToListAsync(cancellationToken);
            return texts.ConvertAll(ExchangeReader.Parse<Finding>);
        },
        cancellationToken);

    private async Task<List<Finding>> WorkOutAsync(Viewer viewer, string? site, DateTime asOf, Language language, CancellationToken cancellationToken)
    {
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var sites = await store.ReadAsync(
            viewer, async db => await db.Sites.Where(row => site == null || row.CodeKey == site).Select(row => row.Id).ToListAsync(cancellationToken), cancellationToken);
        var systems = new List<(int Id, SystemHistory History, AssessmentInputs Inputs, SystemAssessment Alone)>();
        foreach (var id in sites)
        {
            if (await store.ReadAsync(viewer, db => SiteRecords.ReadAsync(db, id, cancellationToken), cancellationToken) is { } records)
            {
                var beside = await store.ReadAsync(viewer, db => SystemInputs.ReadAsync(db, id, cancellationToken), cancellationToken);
                systems.AddRange(records.Systems.Select(system =>
                {
                    // People's answers are left out: what they said later is none of what the records told then.
                    var history = SystemHistory.From(firm, records.Site.Code, system.Code, records.Versions, records.NotificationsOf(system.Code));
                    var inputs = beside.For(system.Id, []) with { Closed = [] };
                    return (system.Id, history, inputs, Assessment.Of(history, asOf, inputs));
                }));
            }
        }

        var all = await round.WorkOutAsync(asOf, systems.ToDictionary(system => system.Id, system => system.Alone.Clues), cancellationToken);
        var findings = site is null && viewer.IsOfFirm
            ? all.Findings.Select(finding => finding.In(language)).ToList()
            : [];
        foreach (var (_, history, inputs, alone) in systems)
        {
            var shifts = RoundAssessment.ShiftsOf(all, alone.Clues);
            var assessed = shifts.Count == 0 ? alone : Assessment.Of(history, asOf, inputs with { Shifts = shifts });
            findings.AddRange(assessed.Findings.Select(finding => finding.In(language)));
        }

        return [.. findings.Where(finding => viewer.MayReview || !FindingKey.AboutRecords.Contains(finding.Kind))];
    }
}
