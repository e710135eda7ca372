using System.Globalization;
using LogBook.Application.Clocks;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Mail;
using LogBook.Application.Reviews;
using LogBook.Application.Visits.Review;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace LogBook.Application.Notices;

/// <summary>Queues each morning's message for who asked for it: once a day and person, and none when there is nothing to tell.</summary>
public sealed class DigestWriter(LogBookStore store, SitesQuery sites, ClocksQuery clocks, LogBookOptions options, IOptions<MailOptions> mail, TimeProvider clock, ILogger<DigestWriter> log)
{
    /// <summary>Hour of the day, where most of the firm's sites are, from which the message is written.</summary>
    public const int FromHour = 6;

    /// <summary>Hour until which it is written: later it would be no news of the morning.</summary>
    public const int UntilHour = 12;

    private static readonly Viewer Self = Viewer.System("digest");

    /// <summary>Queues what is due; called as often as one likes.</summary>
    /// <returns>How many messages were queued.</returns>
    public async Task<int> QueueDueAsync(CancellationToken cancellationToken = default)
    {
        var now = Utc.Now(clock);
        var zones = await store.ReadAsync(Self, db => db.Sites.Where(site => site.RetiredAt == null).Select(site => site.TimeZone).ToListAsync(cancellationToken), cancellationToken);
        var local = TimeZoneInfo.ConvertTimeFromUtc(now, ZoneOf(zones));
        if (local.Hour is < FromHour or >= UntilHour)
        {
            return 0;
        }

        var day = DateOnly.FromDateTime(local);
        var about = day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var (readers, done) = await store.ReadAsync(
            Self,
            async db => (
                await NoticeReader.AllAsync(db, cancellationToken),
                await db.Outbox.Where(row => row.Kind == OutboxKinds.Digest && row.About == about).Select(row => row.Recipient).ToListAsync(cancellationToken)),
            cancellationToken);
        var count = 0;
        foreach (var reader in readers.Where(reader => reader.Digest && !done.Contains(reader.Email)))
        {
            try
            {
                var content = await ContentAsync(reader, day, cancellationToken);
                if (!content.IsEmpty)
                {
                    count += await QueueAsync(reader, about, NoticeWords.Digest(content, mail.Value.Address, reader.Language), now, cancellationToken);
                }
            }
            catch (Exception fault) when (fault is not OperationCanceledException)
            {
                // The others get theirs all the same.
                log.LogError(fault, "The morning's message to {Reader} could not be written", reader.UserId);
            }
        }

        return count;
    }

    private async Task<DigestContent> ContentAsync(NoticeReader reader, DateOnly day, CancellationToken cancellationToken)
    {
        var office = await clocks.OfOfficeAsync(reader.Viewer, cancellationToken);
        var due = (await sites.ListAsync(reader.Viewer, reader.OwnSites ? reader.PersonCode ?? "" : null, cancellationToken))
            .Select(site => DigestClock.Of(site, office)).OfType<DigestSite>()
            .OrderByDescending(site => site.DaysOver).ThenBy(site => site.Code, StringComparer.OrdinalIgnoreCase).ToList();
        var yesterday = day.AddDays(-1);
        FindingState[] waiting = [FindingState.Open, FindingState.Acknowledged];
        return await store.ReadAsync(
            reader.Viewer,
            async db =>
            {
                var rows = (await AttentionQuery.Seen(db, reader.Viewer)
                    .Where(finding => waiting.Contains(finding.State))
                    .Select(finding => new
                    {
                        finding.Kind,
                        finding.AboutKey,
                        finding.FirstSeen,
                        finding.Severity,
                        Site = db.Sites.Where(site => site.Id == finding.SiteId).Select(site => new { site.Code, site.Name, site.AssignedTo }).FirstOrDefault(),
                        System = db.Systems.Where(system => system.Id == finding.SystemId).Select(system => new { system.Code, system.Name }).FirstOrDefault(),
                        Json = finding.FirstSeen < yesterday || finding.Severity == Severity.Watch ? null
                            : reader.Language == Language.Spanish ? finding.Spanish : reader.Language == Language.Portuguese ? finding.Portuguese : finding.English,
                    })
                    .ToListAsync(cancellationToken)).Where(row => reader.Follows(row.Site?.AssignedTo)).ToList();
                var fresh = rows.Where(row => row.Json is not null)
                    .OrderBy(row => row.Severity == Severity.Act ? 0 : 1).ThenBy(row => row.Site?.Code, StringComparer.Ordinal).ThenBy(row => row.Kind, StringComparer.Ordinal)
                    .Select(row => new AttentionRow(
                        new FindingKey(row.Site?.Code, row.System?.Code, row.Kind, row.AboutKey, row.FirstSeen), row.Site?.Name, row.System?.Name, row.Site?.AssignedTo, Documents.Finding(row.Json!), day.DayNumber - row.FirstSeen.DayNumber))
                    .ToList();
                int Of(Severity severity) => rows.Count(row => row.Severity == severity);
                var reviews = reader.Viewer.MayReview;
                var since = clock.GetUtcNow().UtcDateTime.AddDays(-ReviewQuery.Days);
                return new DigestContent(
                    day,
                    fresh,
                    new SeverityCounts(Of(Severity.Act), Of(Severity.Plan), Of(Severity.Watch)),
                    due,
                    reviews ? await db.Visits.CountAsync(visit => visit.VoidedAt == null && visit.State != VisitState.Reviewed && visit.ArrivedAt >= since, cancellationToken) : 0,
                    reviews ? await db.Conflicts.CountAsync(conflict => conflict.SettledAt == null, cancellationToken) : 0,
                    reviews ? await db.Outbox.CountAsync(row => row.Kind == OutboxKinds.VisitSummary && row.GivenUpAt != null && row.AcceptedAt == null && !row.LastError!.StartsWith(MailNotes.ReplacedCode), cancellationToken) : 0);
            },
            cancellationToken);
    }

    private Task<int> QueueAsync(NoticeReader reader, string about, NoticeMail words, DateTime now, CancellationToken cancellationToken) => store.WriteAsync(
        Self,
        async db =>
        {
            // Two processes may write at the same hour: who comes second finds the first one's.
            if (await db.Outbox.AnyAsync(row => row.Kind == OutboxKinds.Digest && row.About == about && row.Recipient == reader.Email, cancellationToken))
            {
                return 0;
            }

            db.Outbox.Add(new OutboxRow
            {
                Kind = OutboxKinds.Digest,
                About = about,
                MessageId = $"{Guid.CreateVersion7():N}@{options.MailDomain}",
                Recipient = reader.Email,
                RecipientName = reader.Name,
                Language = reader.Language,
                CreatedAt = now,
                DueAt = now,
                Subject = words.Subject,
                TextBody = words.Text,
                HtmlBody = words.Html,
            });
            return 1;
        },
        cancellationToken);

    private static TimeZoneInfo ZoneOf(IEnumerable<string> zones) =>
        zones.GroupBy(zone => zone).OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).FirstOrDefault()?.Key is { } zone
            ? TimeZoneInfo.FindSystemTimeZoneById(zone)
            : TimeZoneInfo.Utc;
}
