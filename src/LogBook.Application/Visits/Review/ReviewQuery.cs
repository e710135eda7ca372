using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Domain.Findings;
using LogBook.Domain.Reviews;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;

#pragma warning disable CA1304, CA1311, CA1862 // These run in the database, as upper(), the same on both providers.

namespace LogBook.Application.Visits.Review;

/// <summary>Visits to review, for supervisors. Six statements, however many there are.</summary>
public sealed class ReviewQuery(LogBookStore store, TimeProvider clock)
{
    /// <summary>Visits on a page.</summary>
    public const int PageSize = 50;

    /// <summary>Days for which a visit is asked to be reviewed; older ones are listed when they are asked for.</summary>
    public const int Days = 60;

    /// <summary>Days over which the draw is told.</summary>
    public const int SampleDays = 365;

    /// <summary>The list; null for whoever does not review.</summary>
    public async Task<ReviewList?> ListAsync(Viewer viewer, ReviewFilter filter, CancellationToken cancellationToken = default) => !viewer.MayReview
        ? null
        : await store.ReadAsync(
            viewer,
            async db =>
            {
                var now = clock.GetUtcNow().UtcDateTime;
                var start = now.AddDays(-Days);
                var share = await db.Firm.Select(firm => firm.AuditShare).SingleOrDefaultAsync(cancellationToken) ?? AuditSample.UsualShare;
                var sites = await db.Sites.Select(site => new { site.Id, site.Code, site.Name, site.TimeZone }).ToDictionaryAsync(site => site.Id, cancellationToken);

                // What the draw needs of each visit is small; which visits are drawn only the domain can say.
                var year = now.AddDays(-SampleDays);
                var brief = await db.Visits.Where(visit => visit.VoidedAt == null && (visit.ArrivedAt >= year || (filter.WithOlder && visit.State != VisitState.Reviewed)))
                    .Select(visit => new { visit.Id, visit.VisitId, visit.Technician, visit.ArrivedAt, visit.State, visit.ReviewFault })
                    .ToListAsync(cancellationToken);
                var older = await db.Visits.CountAsync(visit => visit.VoidedAt == null && visit.State != VisitState.Reviewed && visit.ArrivedAt < start, cancellationToken);
                var technician = string.IsNullOrEmpty(filter.Technician) ? null : CodeKeys.Of(filter.Technician);
                var waiting = brief.Where(visit => visit.State != VisitState.Reviewed && (filter.WithOlder || visit.ArrivedAt >= start)
                        && (technician is null || CodeKeys.Of(visit.Technician) == technician) && (!filter.OnlyDrawn || AuditSample.IsDrawn(visit.VisitId, share)))
                    .OrderBy(visit => visit.ArrivedAt).ThenBy(visit => visit.Id)
                    .ToList();
                var ids = waiting.Skip((Math.Max(1, filter.Page) - 1) * PageSize).Take(PageSize).Select(visit => visit.Id).ToList();
                var rows = await db.Visits.Where(visit => ids.Contains(visit.Id))
                    .Join(
                        db.VisitVersions,
                        visit => new { VisitRowId = visit.Id, Version = visit.CurrentVersion },
                        version => new { version.VisitRowId, version.Version },
                        (visit, version) => new { Visit = visit, version.Document })
                    .OrderBy(pair => pair.Visit.ArrivedAt).ThenBy(pair => pair.Visit.Id)
                    .ToListAsync(cancellationToken);
                var visitIds = rows.ConvertAll(pair => (Guid?)pair.Visit.VisitId);
                var findings = (await db.Findings.Where(finding => visitIds.Contains(finding.FirstVisit) && (finding.State == FindingState.Open || finding.State == FindingState.Acknowledged))
                    .Select(finding => new { finding.FirstVisit, finding.Kind, finding.Severity }).ToListAsync(cancellationToken)).ToLookup(finding => finding.FirstVisit);
                return new ReviewList(
                    [
                        .. rows.Select(pair =>
                        {
                            var site = sites[pair.Visit.SiteId];
                            var document = Documents.Visit(pair.Document);
                            var own = findings[pair.Visit.VisitId].ToList();
                            int Of(Severity severity) => own.Count(finding => finding.Severity == severity);
                            return new ReviewRow(
                                VisitRowView.Of(pair.Visit, site.Code, site.Name, TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone)),
                                AuditSample.IsDrawn(pair.Visit.VisitId, share),
                                new SeverityCounts(Of(Severity.Act), Of(Severity.Plan), Of(Severity.Watch)),
                                own.Exists(finding => finding.Kind == FindingKinds.SecondLook),
                                document.Systems.SelectMany(system => system.Actions).Count(action => action.State is null or ActionState.Open),
                                document.Notes,
                                document.Signatures.Count == 0);
                        }),
                    ],
                    waiting.Count,
                    older,
                    share,
                    [
                        .. brief.Where(visit => visit.ArrivedAt >= year).GroupBy(visit => CodeKeys.Of(visit.Technician)).OrderBy(group => group.Key, StringComparer.Ordinal)
                            .Select(group =>
                            {
                                var drawn = group.Where(visit => AuditSample.IsDrawn(visit.VisitId, share)).ToList();
                                var looked = drawn.Count(visit => visit.State == VisitState.Reviewed || visit.ReviewFault);
                                var faulty = drawn.Count(visit => visit.ReviewFault);
                                return new ReviewSampleRow(group.First().Technician, group.Count(), drawn.Count, looked, faulty, looked == 0 ? null : AuditSample.HighestShare(looked, faulty));
                            }),
                    ]);
            },
            cancellationToken);
}
