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
    /// <summary>Takes findings on, for the viewer or for another person of the firm.</summary>
    /// <param name="viewer">Who answers.</param>
    /// <param name="keys">Which findings; those that are no longer there are passed over.</param>
    /// <param name="because">Note, or null.</param>
    /// <param name="owner">Code of who looks after them; the viewer when null.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> AcknowledgeAsync(Viewer viewer, IReadOnlyList<FindingKey> keys, string? because, string? owner = null, CancellationToken cancellationToken = default)
    {
        var own = viewer.PersonCode ?? viewer.Who;
        if (string.IsNullOrWhiteSpace(owner) || owner.Equals(own, StringComparison.OrdinalIgnoreCase))
        {
            return await AnswerAsync(viewer, keys, FindingState.Acknowledged, null, because, own, cancellationToken);
        }

        var person = (await OwnersAsync(viewer, cancellationToken)).FirstOrDefault(known => known.Code.Equals(owner.Trim(), StringComparison.OrdinalIgnoreCase));
        return person is null
            ? new SaveOutcome.Invalid([new Issue("owner", "unknown-owner", SetUpTexts.NoSuchOwner.In(viewer.Language, owner))])
            : await AnswerAsync(viewer, keys, FindingState.Acknowledged, null, because, person.Code, cancellationToken);
    }

    /// <summary>Who may look after a finding: the people of the firm who are in use, by name. Empty for whoever may not answer.</summary>
    public async Task<IReadOnlyList<Person>> OwnersAsync(Viewer viewer, CancellationToken cancellationToken = default) => !viewer.MayReview
        ? []
        : [
            .. (await setUp.FirmAsync(viewer, cancellationToken: cancellationToken)).People.Values
                .Where(person => person.Role is PersonRole.Technician or PersonRole.Supervisor or PersonRole.Administrator)
                .OrderBy(person => person.Name, StringComparer.OrdinalIgnoreCase).ThenBy(person => person.Code, StringComparer.Ordinal),
        ];

    /// <summary>Puts findings to sleep until a day.</summary>
    public Task<SaveOutcome> SnoozeAsync(Viewer viewer, IReadOnlyList<FindingKey> keys, DateOnly until, string because, CancellationToken cancellationToken = default) =>
        string.IsNullOrWhiteSpace(because) ? ReasonNeeded(viewer) : AnswerAsync(viewer, keys, FindingState.Snoozed, until, because, null, cancellationToken);

    /// <summary>Closes findings. Should the evidence of one come back, that is a new finding which names the closed one.</summary>
    public Task<SaveOutcome> CloseAsync(Viewer viewer, IReadOnlyList<FindingKey> keys, string because, CancellationToken cancellationToken = default) =>
        string.IsNullOrWhiteSpace(because) ? ReasonNeeded(viewer) : AnswerAsync(viewer, keys, FindingState.Closed, null, because, null, cancellationToken);

    /// <summary>Takes answers back.</summary>
    public Task<SaveOutcome> ReopenAsync(Viewer viewer, IReadOnlyList<FindingKey> keys, string? because, CancellationToken cancellationToken = default) =>
        AnswerAsync(viewer, keys, FindingState.Open, null, because, null, cancellationToken);

    private static Task<SaveOutcome> ReasonNeeded(Viewer viewer) =>
        Task.FromResult<SaveOutcome>(new SaveOutcome.Invalid([new Issue("because", "reason-needed", SetUpTexts.ReasonNeeded.In(viewer.Language))]));

    private async Task<SaveOutcome> AnswerAsync(
        Viewer viewer, IReadOnlyList<FindingKey> keys, FindingState state, DateOnly? until, string? because, string? owner, CancellationToken cancellationToken)
    {
        if (!viewer.MayReview)
        {
            return new SaveOutcome.NotAllowed();
        }

        var systems = new HashSet<int>();
        var ofFirm = false;
        var outcome = await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                systems.Clear();
                ofFirm = false;
                var findings = await FoundAsync(db, keys, cancellationToken);
                foreach (var finding in findings)
                {
                    await AnswerAsync(db, viewer, finding, state, until, because, owner, cancellationToken);
                    ofFirm |= finding.SystemId is null;
                    if (finding.SystemId is { } system)
                    {
                        systems.Add(system);
                    }
                }

                await db.SaveChangesAsync(cancellationToken);
                return findings.Count == 0 ? new SaveOutcome.NotFound() : new SaveOutcome.Saved(findings.Count);
            },
            cancellationToken);
        if (systems.Count > 0)
        {
            await assessments.AssessSystemsAsync(viewer, systems, cancellationToken);
        }
        else if (ofFirm)
        {
            await assessments.AssessRoundAsync(null, cancellationToken);
        }

        return outcome;
    }

    // By what they are, not by number: numbers change each time findings are worked out anew.
    private static async Task<List<FindingRow>> FoundAsync(LogBookDb db, IReadOnlyList<FindingKey> keys, CancellationToken cancellationToken)
    {
        var kinds = keys.Select(key => key.Kind).Distinct().ToList();
        var days = keys.Select(key => key.FirstSeen).Distinct().ToList();
        var candidates = await db.Findings.AsNoTracking().Where(row => kinds.Contains(row.Kind) && days.Contains(row.FirstSeen))
            .Select(row => new
            {
                Finding = row,
                Site = db.Sites.Where(site => site.Id == row.SiteId).Select(site => site.CodeKey).FirstOrDefault(),
                System = db.Systems.Where(system => system.Id == row.SystemId).Select(system => system.CodeKey).FirstOrDefault(),
            })
            .ToListAsync(cancellationToken);
        var wanted = keys.Select(key => (KeyOf(key.Site), KeyOf(key.System), key.Kind, key.About, key.FirstSeen)).ToHashSet();
        return [.. candidates.Where(row => wanted.Contains((row.Site, row.System, row.Finding.Kind, row.Finding.AboutKey, row.Finding.FirstSeen))).Select(row => row.Finding)];
    }

    private static string? KeyOf(string? code) => code is null ? null : CodeKeys.Of(code);

    private async Task AnswerAsync(
        LogBookDb db, Viewer viewer, FindingRow finding, FindingState state, DateOnly? until, string? because, string? owner, CancellationToken cancellationToken)
    {
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
    }
}
