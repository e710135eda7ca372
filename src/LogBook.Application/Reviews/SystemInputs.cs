using LogBook.Application.Data;
using LogBook.Application.Mail;
using LogBook.Domain.Assessments;
using LogBook.Domain.Rounds;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Reviews;

/// <summary>What the assessments of a site's systems take in beside the records: people's answers, kept shifts, delivery of summaries.</summary>
internal sealed record SystemInputs(ILookup<int, FindingMarkRow> Marks, IReadOnlyDictionary<int, string> Seen, IReadOnlyList<SummaryDelivery> Deliveries)
{
    public static async Task<SystemInputs> ReadAsync(LogBookDb db, int siteId, CancellationToken cancellationToken)
    {
        var marks = await db.FindingMarks.AsNoTracking().Where(mark => mark.SiteId == siteId && mark.SystemId != null).OrderBy(mark => mark.Id).ToListAsync(cancellationToken);
        var seen = await db.Clues.AsNoTracking().Join(db.Systems.Where(system => system.SiteId == siteId), clue => clue.SystemId, system => system.Id, (clue, _) => new { clue.SystemId, clue.Seen })
            .ToDictionaryAsync(clue => clue.SystemId, clue => clue.Seen, cancellationToken);
        var mails = await db.Outbox.AsNoTracking().Where(mail => mail.Kind == OutboxKinds.VisitSummary)
            .Join(db.Visits.Where(visit => visit.SiteId == siteId && visit.VoidedAt == null), mail => mail.VisitRowId, visit => visit.Id, (mail, visit) => new
            {
                mail.Id, visit.VisitId, mail.VisitVersion, mail.CreatedAt, mail.AcceptedAt, mail.GivenUpAt, mail.LastError,
            })
            .OrderBy(mail => mail.Id).ToListAsync(cancellationToken);
        return new SystemInputs(
            marks.ToLookup(mark => mark.SystemId!.Value),
            seen,
            [.. mails.Where(mail => !MailNotes.IsReplaced(mail.LastError)).Select(mail => new SummaryDelivery(mail.VisitId, mail.VisitVersion, mail.CreatedAt, mail.AcceptedAt, mail.GivenUpAt))]);
    }

    /// <summary>Inputs of one system.</summary>
    /// <param name="systemId">The system.</param>
    /// <param name="shifts">Shifts that concern it; those its last assessment has seen when null.</param>
    public AssessmentInputs For(int systemId, IReadOnlyList<RoundShift>? shifts) => new()
    {
        Shifts = shifts ?? KeptClues.Shifts(Seen.GetValueOrDefault(systemId)),
        Closed = ResultRows.Closed(Marks[systemId]),
        Deliveries = Deliveries,
    };
}
