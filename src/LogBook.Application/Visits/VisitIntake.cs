using System.Diagnostics;
using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;

namespace LogBook.Application.Visits;

/// <summary>The one way in for visits.</summary>
/// <remarks>
/// One transaction holds the visit, its readings, the audit entry and what is to be mailed; the answer is given after it. The
/// assessment follows outside: should it fail, the visit is safe and its system stays marked as due.
/// </remarks>
public sealed partial class VisitIntake(
    LogBookStore store, SetUpStore setUp, AssessmentKeeper assessments, TimeProvider clock, LogBookOptions options, ILogger<VisitIntake> logger)
{
    /// <summary>Name under which the parts of an intake can be listened to: "check" and "assess"; what is left is the saving.</summary>
    public const string Source = "LogBook.Intake";

    private static readonly ActivitySource Parts = new(Source);

    // The usual value of a test is the median of its last six; a test may be missing on some visits.
    private const int VisitsCompared = 12;

    /// <summary>Checks and stores a visit document: <c>{"format": …, "visits": [one]}</c> or the bare visit.</summary>
    public async Task<IntakeOutcome> ReceiveAsync(Viewer viewer, string visitJson, IntakeSource source, CancellationToken cancellationToken = default)
    {
        if (!viewer.MayEnterVisits)
        {
            return new IntakeOutcome.NotFound();
        }

        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        using var checking = Parts.StartActivity("check");
        var read = ExchangeReader.ReadAndCheck(Wrapped(visitJson), firm, viewer.Language);
        if (read.Document is not { } document)
        {
            return await ReceiptAsync(viewer, visitJson, cancellationToken) ?? new IntakeOutcome.Refused(read.Issues);
        }

        if (document.Visits is not [var visit] || SetUpRecord.AllOf(document).Any())
        {
            return new IntakeOutcome.Refused([new Issue("visits", "one-visit", IntakeTexts.OneVisit.In(viewer.Language))]);
        }

        var issues = VisitChecks.Check(visit, new VisitContext(firm, await BeforeAsync(viewer, visit, cancellationToken), viewer.Language))
            .Select(issue => issue with { Path = "visits[0]." + issue.Path }).ToList();
        if (issues.Exists(issue => issue.Blocks))
        {
            return await ReceiptAsync(viewer, visitJson, cancellationToken) ?? new IntakeOutcome.Refused([.. issues.Where(issue => issue.Blocks)]);
        }

        checking?.Stop();
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                var (outcome, touched) = await store.WriteAsync(
                    viewer,
                    async db =>
                    {
                        var writer = await VisitWriter.LoadAsync(
                            db, viewer, firm, document.Visits, Utc.Now(clock), source, source is IntakeSource.Import or IntakeSource.Demo ? null : options.MailDomain, cancellationToken);
                        var taken = writer.Take(visit, "visits[0].");
                        await writer.FlushAsync(cancellationToken);
                        return (taken, writer.Touched);
                    },
                    cancellationToken);
                await AssessAsync(viewer, touched, cancellationToken);
                return outcome is IntakeOutcome.Stored stored ? stored with { Warnings = [.. stored.Warnings, .. issues] } : outcome;
            }
            catch (DbUpdateException exception) when (DatabaseErrors.IsUniqueViolation(exception))
            {
                // Sent twice at the same moment, the second one sees the first when it looks again. What it still does not see
                // belongs to another customer, and that is told like any other absence.
                if (attempt > 1)
                {
                    return new IntakeOutcome.NotFound();
                }
            }
        }
    }

    /// <summary>Checks and stores a visit.</summary>
    public Task<IntakeOutcome> ReceiveAsync(Viewer viewer, Visit visit, IntakeSource source, CancellationToken cancellationToken = default) =>
        ReceiveAsync(viewer, VisitDocument.Canonical(visit), source, cancellationToken);

    /// <summary>The receipt of a visit that stands here word for word; null when it does not.</summary>
    /// <remarks>
    /// Whoever sends again because the answer was lost is told the same as before, though the set-up may have changed since and the
    /// document would be refused by now. Asked only where a document would be refused: the others find their like when they are written.
    /// </remarks>
    private async Task<IntakeOutcome?> ReceiptAsync(Viewer viewer, string visitJson, CancellationToken cancellationToken)
    {
        if (ExchangeReader.Read(Wrapped(visitJson), viewer.Language).Document is not { Visits: [var written] } document || SetUpRecord.AllOf(document).Any())
        {
            return null;
        }

        var visit = VisitDocument.WithIds(written);
        var (version, sha256) = (visit.Version ?? 1, VisitDocument.Sha256(visit));
        return await store.ReadAsync(
            viewer,
            db => db.Visits.Where(row => row.VisitId == visit.Id).AnyAsync(
                row => db.VisitVersions.Any(known => known.VisitRowId == row.Id && known.Version == version && known.Sha256 == sha256), cancellationToken),
            cancellationToken)
            ? new IntakeOutcome.Stored(visit.Id, version, sha256, AlreadyKnown: true, [])
            : null;
    }

    /// <summary>The site's visits before this one, oldest first: what a doubted value is compared with.</summary>
    private Task<IReadOnlyList<Visit>> BeforeAsync(Viewer viewer, Visit visit, CancellationToken cancellationToken) => store.ReadAsync<IReadOnlyList<Visit>>(
        viewer,
        async db =>
        {
            var arrived = visit.Arrived.Utc;
            var documents = await (
                from row in db.Visits
                join site in db.Sites on row.SiteId equals site.Id
                join version in db.VisitVersions on new { VisitRowId = row.Id, Version = row.CurrentVersion } equals new { version.VisitRowId, version.Version }
                where site.CodeKey == CodeKeys.Of(visit.Site) && row.VoidedAt == null && row.ArrivedAt < arrived && row.VisitId != visit.Id
                orderby row.ArrivedAt descending
                select version.Document).Take(VisitsCompared).ToListAsync(cancellationToken);
            documents.Reverse();
            return [.. documents.Select(ExchangeReader.Parse<Visit>)];
        },
        cancellationToken);

    // A bare visit is put into a document only when it is well-formed by itself; otherwise the reader says what is wrong with it.
    private static string Wrapped(string json)
    {
        try
        {
            using var parsed = JsonDocument.Parse(json);
            return parsed.RootElement.ValueKind == JsonValueKind.Object && !parsed.RootElement.TryGetProperty("format", out _)
                ? $$"""{"format":"{{ExchangeReader.Format}}","version":{{ExchangeReader.Version}},"visits":[{{parsed.RootElement.GetRawText()}}]}"""
                : json;
        }
        catch (JsonException)
        {
            return json;
        }
    }

    private async Task AssessAsync(Viewer viewer, IEnumerable<int> systems, CancellationToken cancellationToken)
    {
        using var assessing = Parts.StartActivity("assess");
        foreach (var system in systems)
        {
            try
            {
                await assessments.AssessAsync(viewer, system, null, cancellationToken);
            }
            catch (Exception exception) when (exception is not OperationCanceledException)
            {
                // Any fault of a rule: the visit is stored and acknowledged all the same, and the system stays due.
                NotAssessed(logger, exception, system);
            }
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "System {SystemId} could not be assessed and stays due.")]
    private static partial void NotAssessed(ILogger logger, Exception exception, int systemId);
}
