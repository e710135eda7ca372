using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Mail;
using LogBook.Application.Reviews;
using LogBook.Application.Visits;
using LogBook.Domain.Findings;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;

namespace LogBook.Application.Notices;

/// <summary>Queues a message for each finding that cannot wait, in the transaction that stores the finding.</summary>
/// <remarks>
/// It leaves a little later: within that time the round-wide assessment may find another cause and take the finding back, and then nothing
/// is sent. What the records of long ago show when they are imported or judged by new rules is no news; it stands in the list. A visit that
/// stayed on a tablet without signal is news on the day it arrives, however long ago it was made.
/// </remarks>
public sealed class AtOnceNotices(LogBookOptions options, IOptions<MailOptions> mail, TimeProvider clock)
{
    private const int NewsDays = 7;

    /// <summary>How long a message waits before it leaves.</summary>
    public static TimeSpan Wait { get; } = TimeSpan.FromMinutes(2);

    /// <summary>Queues what has become urgent.</summary>
    /// <param name="db">The unit of work that stores the findings.</param>
    /// <param name="before">Findings as they stood.</param>
    /// <param name="after">Findings as they are stored now, of the same systems.</param>
    /// <param name="today">Day at the site.</param>
    /// <param name="cancellationToken">Stops.</param>
    internal async Task QueueAsync(LogBookDb db, IReadOnlyList<FindingRow> before, IReadOnlyList<FindingRow> after, DateOnly today, CancellationToken cancellationToken)
    {
        var urgent = before.Where(row => row.Severity == Severity.Act).Select(Key).ToHashSet();
        var milder = before.Where(row => row.Severity != Severity.Act).Select(Key).ToHashSet();
        var open = after.Where(row => row is { Severity: Severity.Act, State: FindingState.Open } && !urgent.Contains(Key(row))).ToList();
        var isNews = open.ToLookup(row => milder.Contains(Key(row)) || row.FirstSeen >= today.AddDays(-NewsDays));
        List<FindingRow> news = [.. isNews[true], .. await JustArrivedAsync(db, [.. isNews[false]], cancellationToken)];
        if (news.Count == 0)
        {
            return;
        }

        var readers = (await NoticeReader.AllAsync(db, cancellationToken)).Where(reader => reader.AtOnce).ToList();
        if (readers.Count == 0)
        {
            return;
        }

        var siteIds = news.Select(row => row.SiteId).OfType<int>().Distinct().ToList();
        var systemIds = news.Select(row => row.SystemId).OfType<int>().Distinct().ToList();
        var sites = await db.Sites.Where(site => siteIds.Contains(site.Id)).Select(site => new { site.Id, site.Code, site.Name, site.AssignedTo }).ToDictionaryAsync(site => site.Id, cancellationToken);
        var systems = await db.Systems.Where(system => systemIds.Contains(system.Id)).ToDictionaryAsync(system => system.Id, system => system.Code, cancellationToken);
        var abouts = new List<(FindingRow Row, FindingKey Key, string? SiteName, string? AssignedTo)>();
        foreach (var row in news)
        {
            var site = row.SiteId is { } id ? sites.GetValueOrDefault(id) : null;
            abouts.Add((row, new FindingKey(site?.Code, row.SystemId is { } system ? systems.GetValueOrDefault(system) : null, row.Kind, row.AboutKey, row.FirstSeen), site?.Name, site?.AssignedTo));
        }

        var queries = abouts.ConvertAll(one => one.Key.Query());
        var told = (await db.Outbox.AsTracking().Where(row => row.Kind == OutboxKinds.AtOnce && queries.Contains(row.About!)).ToListAsync(cancellationToken))
            .ToDictionary(row => (row.Recipient, row.About!));
        var now = Utc.Now(clock);
        foreach (var (row, key, siteName, assignedTo) in abouts)
        {
            foreach (var reader in readers.Where(reader => reader.Follows(assignedTo) && FindingKey.MaySee(reader.Viewer, row.Kind)))
            {
                var standing = told.GetValueOrDefault((reader.Email, key.Query()));
                if (standing is not null && !MailNotes.IsWithdrawn(standing.LastError))
                {
                    continue;
                }

                var words = NoticeWords.AtOnce(Documents.Finding(row, reader.Language), key, siteName, mail.Value.Address, reader.Language);
                if (standing is not null)
                {
                    // It was taken back before it left, and stands again: nobody has heard of it yet.
                    (standing.GivenUpAt, standing.LastError, standing.CreatedAt, standing.DueAt) = (null, null, now, now + Wait);
                    (standing.Subject, standing.TextBody, standing.HtmlBody) = (words.Subject, words.Text, words.Html);
                    db.Update(standing);
                    continue;
                }

                db.Outbox.Add(new OutboxRow
                {
                    CustomerId = row.CustomerId,
                    Kind = OutboxKinds.AtOnce,
                    About = key.Query(),
                    MessageId = $"{Guid.CreateVersion7():N}@{options.MailDomain}",
                    Recipient = reader.Email,
                    RecipientName = reader.Name,
                    Language = reader.Language,
                    CreatedAt = now,
                    DueAt = now + Wait,
                    Subject = words.Subject,
                    TextBody = words.Text,
                    HtmlBody = words.Html,
                });
            }
        }
    }

    // Findings of long ago whose visit a person handed in only now.
    private async Task<IEnumerable<FindingRow>> JustArrivedAsync(LogBookDb db, IReadOnlyList<FindingRow> old, CancellationToken cancellationToken)
    {
        var visits = old.Select(row => row.FirstVisit).OfType<Guid>().Distinct().ToList();
        if (visits.Count == 0)
        {
            return [];
        }

        var since = Utc.Now(clock).AddDays(-NewsDays);
        var arrived = await db.Visits.Where(visit => visits.Contains(visit.VisitId))
            .Where(visit => db.VisitVersions.Any(version => version.VisitRowId == visit.Id && version.ReceivedAt >= since && (version.Source == IntakeSource.Tablet || version.Source == IntakeSource.Page)))
            .Select(visit => visit.VisitId).ToListAsync(cancellationToken);
        return old.Where(row => row.FirstVisit is { } visit && arrived.Contains(visit));
    }

    private static (int?, string, string, DateOnly) Key(FindingRow row) => (row.SystemId, row.Kind, row.AboutKey, row.FirstSeen);
}
