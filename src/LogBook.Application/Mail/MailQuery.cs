using LogBook.Application.Data;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Mail;

/// <summary>Shows the outbox to the firm's people; customers have their own mailbox.</summary>
public sealed class MailQuery(LogBookStore store)
{
    /// <summary>Messages on a page.</summary>
    public const int PageSize = 50;

    /// <summary>A page of the outbox.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="onlyOpen">Only what no mail server has taken yet.</param>
    /// <param name="page">Page, from 1.</param>
    /// <param name="cancellationToken">Stops.</param>
    public Task<MailPageOf?> ListAsync(Viewer viewer, bool onlyOpen, int page, CancellationToken cancellationToken = default) => !viewer.IsOfFirm
        ? Task.FromResult<MailPageOf?>(null)
        : store.ReadAsync<MailPageOf?>(
            viewer,
            async db =>
            {
                var asked = Seen(db, viewer).Where(row => !onlyOpen || row.AcceptedAt == null);
                var wanted = Entries(asked, db);
                var total = await ListCount.OfAsync(asked.OrderByDescending(row => row.Id), cancellationToken);

                // Numbers grow as messages are made, and need no sorting of the whole outbox.
                var rows = await wanted.OrderByDescending(entry => entry.Id)
                    .Skip((Math.Max(page, 1) - 1) * PageSize).Take(PageSize + 1).ToListAsync(cancellationToken);
                return new MailPageOf([.. rows.Take(PageSize).Select(row => EntryOf(row, viewer.Language))], total, rows.Count > PageSize);
            },
            cancellationToken);

    /// <summary>One message; null when the viewer knows none.</summary>
    public Task<MailMessageView?> FindAsync(Viewer viewer, int id, CancellationToken cancellationToken = default) => !viewer.IsOfFirm
        ? Task.FromResult<MailMessageView?>(null)
        : store.ReadAsync<MailMessageView?>(
            viewer,
            async db => await Entries(Seen(db, viewer).Where(row => row.Id == id), db).FirstOrDefaultAsync(cancellationToken) is { } found
                ? new MailMessageView(EntryOf(found, viewer.Language), found.MessageId, found.TextBody, found.HtmlBody, MailNotes.In(found.ServerSaid, viewer.Language))
                : null,
            cancellationToken);

    // A notice may tell of a second look at somebody's readings: each sees their own, reviewers all.
    private static IQueryable<OutboxRow> Seen(LogBookDb db, Viewer viewer) => viewer.MayReview
        ? db.Outbox
        : db.Outbox.Where(row => row.Kind == OutboxKinds.VisitSummary || db.Users.Any(user => user.Id == viewer.UserId && user.Email == row.Recipient));

    private static IQueryable<Joined> Entries(IQueryable<OutboxRow> outbox, LogBookDb db) =>
        from row in outbox
        join oneVisit in db.Visits on row.VisitRowId equals oneVisit.Id into visits
        from visit in visits.DefaultIfEmpty()
        join oneSite in db.Sites on visit.SiteId equals oneSite.Id into sites
        from site in sites.DefaultIfEmpty()
        select new Joined
        {
            Id = row.Id,
            VisitId = visit == null ? null : visit.VisitId,
            VisitVersion = row.VisitVersion,
            SiteCode = site == null ? null : site.Code,
            SiteName = site == null ? null : site.Name,
            TimeZone = site == null ? "UTC" : site.TimeZone,
            Recipient = row.Recipient,
            RecipientName = row.RecipientName,
            Language = row.Language,
            CreatedAt = row.CreatedAt,
            DueAt = row.DueAt,
            Attempts = row.Attempts,
            AcceptedAt = row.AcceptedAt,
            GivenUpAt = row.GivenUpAt,
            LastError = row.LastError,
            Subject = row.Subject,
            MessageId = row.MessageId,
            TextBody = row.TextBody,
            HtmlBody = row.HtmlBody,
            ServerSaid = row.ServerSaid,
        };

    private static MailEntry EntryOf(Joined row, Domain.Languages.Language language) => new(
        row.Id, row.VisitId, row.VisitVersion, row.SiteCode, row.SiteName, row.TimeZone, row.Recipient, row.RecipientName, row.Language,
        row.CreatedAt, row.DueAt, row.Attempts, row.AcceptedAt, row.GivenUpAt, MailNotes.In(row.LastError, language), row.Subject);

    private sealed class Joined
    {
        public int Id { get; init; }

        public Guid? VisitId { get; init; }

        public int VisitVersion { get; init; }

        public string? SiteCode { get; init; }

        public string? SiteName { get; init; }

        public string TimeZone { get; init; } = "";

        public string Recipient { get; init; } = "";

        public string RecipientName { get; init; } = "";

        public Domain.Languages.Language Language { get; init; }

        public DateTime CreatedAt { get; init; }

        public DateTime DueAt { get; init; }

        public int Attempts { get; init; }

        public DateTime? AcceptedAt { get; init; }

        public DateTime? GivenUpAt { get; init; }

        public string? LastError { get; init; }

        public string? Subject { get; init; }

        public string MessageId { get; init; } = "";

        public string? TextBody { get; init; }

        public string? HtmlBody { get; init; }

        public string? ServerSaid { get; init; }
    }
}
