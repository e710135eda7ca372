using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Notices;
using LogBook.Application.Reviews;
using LogBook.Application.Summaries;
using LogBook.Domain.Findings;
using LogBook.Domain.Summaries;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;
using MimeKit;

namespace LogBook.Application.Mail;

/// <summary>
/// Sends what the outbox holds. The words are fixed before the first try and the Message-ID with the visit, so that a repeat
/// after a crash between the server's answer and our note of it can be told from a second message.
/// </summary>
public sealed class OutboxWorker(
    LogBookStore store,
    SummaryReader summaries,
    AssessmentKeeper assessments,
    AttentionQuery attention,
    IMailTransport transport,
    IOptions<MailOptions> options,
    TimeProvider clock,
    ILogger<OutboxWorker> log) : IDisposable
{
    private const int MostAtOnce = 50;
    private static readonly TimeSpan GiveUpAfter = TimeSpan.FromDays(3);
    private static readonly Viewer Self = Viewer.System("mail queue");
    private readonly SemaphoreSlim _oneAtATime = new(1, 1);

    /// <summary>Tries everything that is due, once.</summary>
    /// <param name="cancellationToken">Stops between messages.</param>
    /// <returns>How many messages were accepted.</returns>
    public async Task<int> SendDueAsync(CancellationToken cancellationToken = default)
    {
        await _oneAtATime.WaitAsync(cancellationToken);
        try
        {
            await ReplaceOlderAsync(cancellationToken);
            var now = Utc.Now(clock);
            var due = await store.ReadAsync(
                Self,
                db => db.Outbox.Where(row => row.AcceptedAt == null && row.GivenUpAt == null && row.DueAt <= now)
                    .OrderBy(row => row.DueAt).ThenBy(row => row.Id).Select(row => row.Id).Take(MostAtOnce).ToListAsync(cancellationToken),
                cancellationToken);
            var accepted = 0;
            foreach (var id in due)
            {
                accepted += await TryAsync(id, cancellationToken) ? 1 : 0;
            }

            return accepted;
        }
        finally
        {
            _oneAtATime.Release();
        }
    }

    /// <summary>Puts a message that was given up back into the queue.</summary>
    /// <param name="viewer">Who asks; a supervisor or administrator.</param>
    /// <param name="id">Key of the message.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>What became of it.</returns>
    public Task<SaveOutcome> TryAgainAsync(Viewer viewer, int id, CancellationToken cancellationToken = default) => !viewer.MayReview
        ? Task.FromResult<SaveOutcome>(new SaveOutcome.NotAllowed())
        : store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                if (await db.Outbox.AsTracking().FirstOrDefaultAsync(row => row.Id == id && row.AcceptedAt == null, cancellationToken) is not { } row)
                {
                    return new SaveOutcome.NotFound();
                }

                row.GivenUpAt = null;
                row.CreatedAt = row.DueAt = Utc.Now(clock);
                await MarkDueAsync(db, row, cancellationToken);
                db.Audit(new AuditEntry(AuditActs.MailTriedAgain, nameof(OutboxRow), row.MessageId, row.CustomerId));
                return new SaveOutcome.Saved(row.Version + 1);
            },
            cancellationToken);

    /// <inheritdoc />
    public void Dispose() => _oneAtATime.Dispose();

    // The customer gets the newest version only. What was tried before may have arrived all the same, with its own Message-ID.
    private async Task ReplaceOlderAsync(CancellationToken cancellationToken)
    {
        var older = await store.ReadAsync(
            Self,
            db => db.Outbox.Where(row => row.AcceptedAt == null && row.GivenUpAt == null && row.VisitRowId != null)
                .Select(row => new
                {
                    row.Id,
                    row.VisitVersion,
                    Newest = db.Outbox.Where(other => other.VisitRowId == row.VisitRowId && other.Kind == row.Kind).Max(other => other.VisitVersion),
                })
                .Where(row => row.Newest > row.VisitVersion).ToListAsync(cancellationToken),
            cancellationToken);
        if (older.Count == 0)
        {
            return;
        }

        await store.WriteAsync(
            Self,
            async db =>
            {
                foreach (var replaced in older)
                {
                    var row = await db.Outbox.AsTracking().SingleAsync(r => r.Id == replaced.Id, cancellationToken);
                    row.GivenUpAt = Utc.Now(clock);
                    row.LastError = MailNotes.ReplacedBy(replaced.Newest);
                    await MarkDueAsync(db, row, cancellationToken);
                }
            },
            cancellationToken);
    }

    private async Task<bool> TryAsync(int id, CancellationToken cancellationToken)
    {
        try
        {
            return await SendAsync(id, cancellationToken);
        }
        catch (Exception fault) when (!cancellationToken.IsCancellationRequested)
        {
            // Any fault of one message: those behind it must leave all the same. A database out of reach fails again in the note.
            log.LogError(fault, "Message {Id} could not be made or sent", id);
            await NoteAsync(id, new MailReceipt(false, true, MailNotes.FaultCode), cancellationToken);
            return false;
        }
    }

    private async Task<bool> SendAsync(int id, CancellationToken cancellationToken)
    {
        if (await RenderedAsync(id, cancellationToken) is not { } row)
        {
            return false;
        }

        if (row is not { Subject: { } subject, HtmlBody: { } html, TextBody: { } text } || MessageOf(row, subject, html, text) is not { } message)
        {
            await NoteAsync(id, new MailReceipt(false, false, MailNotes.NotAnAddress(row.Recipient)), cancellationToken);
            return false;
        }

        var receipt = await transport.SendAsync(message, cancellationToken);

        // The other side has it: this note must not be lost to a stop of the program.
        await NoteAsync(id, receipt, CancellationToken.None);
        return receipt.Accepted;
    }

    private async Task<OutboxRow?> RenderedAsync(int id, CancellationToken cancellationToken)
    {
        var row = await store.ReadAsync(Self, db => db.Outbox.FirstOrDefaultAsync(r => r.Id == id, cancellationToken), cancellationToken);
        if (row is { VisitRowId: null } && !await StillWantedAsync(row, cancellationToken))
        {
            await NoteAsync(id, new MailReceipt(false, false, MailNotes.WithdrawnCode), cancellationToken);
            return null;
        }

        if (row is null || row.Subject is not null)
        {
            return row;
        }

        // A visit is acknowledged before it is assessed; its summary must not leave without the findings.
        await assessments.AssessDueAsync(Self, null, cancellationToken);
        var visitId = await store.ReadAsync(Self, db => db.Visits.Where(v => v.Id == row.VisitRowId).Select(v => v.VisitId).SingleAsync(cancellationToken), cancellationToken);
        if (await summaries.FindAsync(Self, visitId, row.Language, row.VisitVersion, cancellationToken) is not { } summary)
        {
            await NoteAsync(id, new MailReceipt(false, false, MailNotes.NoVisitCode), cancellationToken);
            return null;
        }

        return await store.WriteAsync(
            Self,
            async db =>
            {
                var kept = await db.Outbox.AsTracking().SingleAsync(r => r.Id == id, cancellationToken);
                kept.Subject = SummaryHeader.Subject(summary);
                kept.HtmlBody = SummaryHtml.Render(summary);
                kept.TextBody = SummaryPlainText.Render(summary);
                return kept;
            },
            cancellationToken);
    }

    // A round-wide cause, a person or an amendment may have been faster than the message, and its reader may have left or have another
    // role since: what goes out is asked of the rights of now, not of those when it was written.
    private async Task<bool> StillWantedAsync(OutboxRow row, CancellationToken cancellationToken)
    {
        var readers = await store.ReadAsync(Self, db => NoticeReader.AllAsync(db, cancellationToken), cancellationToken);
        if (readers.FirstOrDefault(reader => reader.Email == row.Recipient) is not { } reader || !(row.Kind == OutboxKinds.AtOnce ? reader.AtOnce : reader.Digest))
        {
            return false;
        }

        return row.Kind != OutboxKinds.AtOnce
            || (FindingKey.Parse(row.About) is { } key && await attention.FindAsync(reader.Viewer, key, cancellationToken) is { Finding: { State: FindingState.Open, Severity: Severity.Act } });
    }

    private MimeMessage? MessageOf(OutboxRow row, string subject, string html, string text)
    {
        // A list in this field would reach people nobody chose: exactly one address is taken.
        if (!MailboxAddress.TryParse(row.Recipient, out var recipient))
        {
            return null;
        }

        recipient.Name = SummaryHeader.OneLine(row.RecipientName);
        var message = new MimeMessage { MessageId = row.MessageId, Subject = SummaryHeader.OneLine(subject), Date = new DateTimeOffset(row.CreatedAt, TimeSpan.Zero) };
        message.From.Add(new MailboxAddress(options.Value.FromName, options.Value.From));
        message.To.Add(recipient);
        message.Headers.Add("Auto-Submitted", "auto-generated");
        message.Body = new BodyBuilder { TextBody = text, HtmlBody = html }.ToMessageBody();
        return message;
    }

    private Task NoteAsync(int id, MailReceipt receipt, CancellationToken cancellationToken) => store.WriteAsync(
        Self,
        async db =>
        {
            var row = await db.Outbox.AsTracking().SingleAsync(r => r.Id == id, cancellationToken);
            var now = Utc.Now(clock);
            row.Attempts++;
            row.ServerSaid = receipt.ServerSaid;
            if (receipt.Accepted)
            {
                row.AcceptedAt = now;
                row.GivenUpAt = null;
                row.LastError = null;
                if (row.Attempts > 1)
                {
                    await MarkDueAsync(db, row, cancellationToken);
                }

                return;
            }

            row.LastError = receipt.ServerSaid;
            if (!receipt.CanRetry || now - row.CreatedAt > GiveUpAfter)
            {
                row.GivenUpAt = now;
                await MarkDueAsync(db, row, cancellationToken);
                log.LogWarning("Message {MessageId} was given up: {Error}", row.MessageId, receipt.ServerSaid);
            }
            else
            {
                row.DueAt = now + TimeSpan.FromMinutes(Math.Min(60, Math.Pow(2, row.Attempts - 1)));
            }
        },
        cancellationToken);

    // What became of a summary may open or close a finding of the systems that it tells of.
    private async Task MarkDueAsync(LogBookDb db, OutboxRow row, CancellationToken cancellationToken)
    {
        if (row.VisitRowId is null)
        {
            return;
        }

        var now = Utc.Now(clock);
        var site = await db.Visits.Where(visit => visit.Id == row.VisitRowId).Select(visit => visit.SiteId).SingleAsync(cancellationToken);
        await db.Systems.Where(system => system.SiteId == site).ExecuteUpdateAsync(set => set.SetProperty(system => system.AssessmentDue, now), cancellationToken);
    }
}
