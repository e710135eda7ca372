using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.Findings;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>What people answer to findings; kept apart from them and laid over each time they are rebuilt.</summary>
public sealed class FindingCare(LogBookStore store, SetUpStore setUp, AssessmentKeeper assessments, TimeProvider clock)
{
    /// <summary>Takes a finding on, for the viewer or for another person of the firm.</summary>
    /// <param name="viewer">Who answers.</param>
    /// <param name="findingId">Number of the finding's row.</param>
    /// <param name="because">Note, or null.</param>
    /// <param name="owner">Code of who looks after it; the viewer when null.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> AcknowledgeAsync(Viewer viewer, int findingId, string? because, string? owner = null, CancellationToken cancellationToken = default)
    {
        var own = viewer.PersonCode ?? viewer.Who;
        if (string.IsNullOrWhiteSpace(owner) || owner.Equals(own, StringComparison.OrdinalIgnoreCase))
        {
            return await AnswerAsync(viewer, findingId, FindingState.Acknowledged, null, because, own, cancellationToken);
        }

        var person = (await OwnersAsync(viewer, cancellationToken)).FirstOrDefault(known => known.Code.Equals(owner.Trim(), StringComparison.OrdinalIgnoreCase));
        return person is null
            ? new SaveOutcome.Invalid([new Issue("owner", "unknown-owner", SetUpTexts.NoSuchOwner.In(viewer.Language, owner))])
            : await AnswerAsync(viewer, findingId, FindingState.Acknowledged, null, because, person.Code, cancellationToken);
    }

    /// <summary>Who may look after a finding: the people of the firm who are in use, by name. Empty for whoever may not answer.</summary>
    public async Task<IReadOnlyList<Person>> OwnersAsync(Viewer viewer, CancellationToken cancellationToken = default) => !viewer.MayReview
        ? []
        : [
            .. (await setUp.FirmAsync(viewer, cancellationToken: cancellationToken)).People.Values
                .Where(person => person.Role is PersonRole.Technician or PersonRole.Supervisor or PersonRole.Administrator)
                .OrderBy(person => person.Name, StringComparer.OrdinalIgnoreCase).ThenBy(person => person.Code, StringComparer.Ordinal),
        ];

    /// <summary>Puts a finding to sleep until a day.</summary>
    public Task<SaveOutcome> SnoozeAsync(Viewer viewer, int findingId, DateOnly until, string because, CancellationToken cancellationToken = default) =>
        string.IsNullOrWhiteSpace(because) ? ReasonNeeded(viewer) : AnswerAsync(viewer, findingId, FindingState.Snoozed, until, because, null, cancellationToken);

    /// <summary>Closes a finding. Should its evidence come back, that is a new finding which names this one.</summary>
    public Task<SaveOutcome> CloseAsync(Viewer viewer, int findingId, string because, CancellationToken cancellationToken = default) =>
        string.IsNullOrWhiteSpace(because) ? ReasonNeeded(viewer) : AnswerAsync(viewer, findingId, FindingState.Closed, null, because, null, cancellationToken);

    /// <summary>Takes an answer back.</summary>
    public Task<SaveOutcome> ReopenAsync(Viewer viewer, int findingId, string? because, CancellationToken cancellationToken = default) =>
        AnswerAsync(viewer, findingId, FindingState.Open, null, because, null, cancellationToken);

    private static Task<SaveOutcome> ReasonNeeded(Viewer viewer) =>
        Task.FromResult<SaveOutcome>(new SaveOutcome.Invalid([new Issue("because", "reason-needed", SetUpTexts.ReasonNeeded.In(viewer.Language))]));

    private async Task<SaveOutcome> AnswerAsync(
        Viewer viewer, int findingId, FindingState state, DateOnly? until, string? because, string? owner, CancellationToken cancellationToken)
    {
        if (!viewer.MayReview)
        {
            return new SaveOutcome.NotAllowed();
        }

        var (outcome, system) = await store.WriteAsync<(SaveOutcome, int?)>(
            viewer,
            async db =>
            {
                if (await db.Findings.AsNoTracking().SingleOrDefaultAsync(row => row.Id == findingId, cancellationToken) is not { } finding)
                {
                    return (new SaveOutcome.NotFound(), null);
                }

                var mark = await db.FindingMarks.AsTracking().SingleOrDefaultAsync(
                    row => row.SystemId == finding.SystemId && row.Kind == finding.Kind && row.AboutKey == finding.AboutKey && row.FirstSeen == finding.FirstSeen,
                    cancellationToken);
                if (mark is null)
                {
                    mark = new FindingMarkRow
                    {
                        CustomerId = finding.CustomerId, SiteId = finding.SiteId, SystemId = finding.SystemId,
                        Kind = finding.Kind, AboutKey = finding.AboutKey, FirstSeen = finding.FirstSeen,
                    };
                    db.FindingMarks.Add(mark);
                }

                db.Audit(new AuditEntry(
                    AuditActs.Answered, "Finding", $"{finding.Kind} {finding.AboutKey} {finding.FirstSeen:yyyy-MM-dd}".Replace("  ", " ", StringComparison.Ordinal),
                    finding.CustomerId, finding.State.ToString(), state.ToString(), because));
                mark.State = state;
                mark.Until = until;
                mark.Because = because;
                mark.Owner = owner;
                mark.Severity = finding.Severity;
                mark.Who = viewer.Who;
                mark.At = Utc.Now(clock);
                await db.SaveChangesAsync(cancellationToken);
                return (new SaveOutcome.Saved(mark.Version), finding.SystemId);
            },
            cancellationToken);
        if (system is { } id)
        {
            await assessments.AssessAsync(viewer, id, null, cancellationToken);
        }
        else if (outcome is SaveOutcome.Saved)
        {
            await assessments.AssessRoundAsync(null, cancellationToken);
        }

        return outcome;
    }
}
