using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;

namespace LogBook.Application.Imports;

/// <summary>Brings a document of the exchange format in: all or nothing, or with <c>partial</c> the good visits.</summary>
public sealed class ExchangeImport(LogBookStore store, SetUpStore setUp, AssessmentKeeper assessments, TimeProvider clock, LogBookOptions options)
{
    /// <summary>Code of the issue of a visit that is stored with other content.</summary>
    public const string Conflict = "conflict";

    /// <summary>Imports a document.</summary>
    /// <param name="viewer">Who imports.</param>
    /// <param name="json">The document, UTF-8.</param>
    /// <param name="partial">Writes the good visits and lists the refused ones.</param>
    /// <param name="update">Lets set-up under an existing code change.</param>
    /// <param name="withSummaries">Puts visit summaries into the outbox; a replay of the past does not.</param>
    /// <param name="cancellationToken">Stops; nothing is written then.</param>
    public async Task<ImportOutcome> ImportAsync(
        Viewer viewer, Stream json, bool partial = false, bool update = false, bool withSummaries = false, CancellationToken cancellationToken = default)
    {
        using var bytes = new MemoryStream();
        await json.CopyToAsync(bytes, cancellationToken);
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        var read = ExchangeReader.ReadAndCheck(bytes.GetBuffer().AsSpan(0, (int)bytes.Length), firm, viewer.Language, update);
        if ((partial ? read.Good : read.Document) is not { } document)
        {
            return new ImportOutcome(false, 0, 0, 0, read.Issues);
        }

        if (SetUpRecord.AllOf(document).Any() ? !viewer.MayKeepSetUp : !viewer.MayEnterVisits)
        {
            return new ImportOutcome(false, 0, 0, 0, [new Issue("", "not-allowed", ImportTexts.NotAllowed.In(viewer.Language))]);
        }

        var places = Places(document, read);
        try
        {
            var outcome = await store.WriteAsync(
                viewer,
                db => WriteAsync(db, viewer, document, places, read.Issues, partial, withSummaries ? options.MailDomain : null, cancellationToken),
                cancellationToken);
            await assessments.AssessDueAsync(viewer, null, cancellationToken);
            return outcome;
        }
        catch (RefusedException refused)
        {
            return new ImportOutcome(false, 0, 0, 0, refused.Issues);
        }
    }

    private async Task<ImportOutcome> WriteAsync(
        LogBookDb db, Viewer viewer, ExchangeDocument document, IReadOnlyDictionary<Visit, string> places, IReadOnlyList<Issue> refusedBefore, bool partial, string? mailDomain, CancellationToken cancellationToken)
    {
        var now = Utc.Now(clock);
        db.ChangeTracker.AutoDetectChangesEnabled = false;
        var writer = await SetUpWriter.LoadAsync(db, now, cancellationToken);
        foreach (var record in SetUpRecord.AllOf(document))
        {
            await writer.PutAsync(record, cancellationToken);
        }

        if (writer.Changes > 0)
        {
            await SetUpWriter.StampAsync(db, now, cancellationToken);
            await db.SaveChangesAsync(cancellationToken);
        }

        var firm = await SetUpStore.LoadForAsync(db, cancellationToken);
        var visits = await VisitWriter.LoadAsync(db, viewer, firm, document.Visits, now, IntakeSource.Import, mailDomain, cancellationToken);
        var issues = new List<Issue>(refusedBefore);
        var (added, known) = (0, 0);

        // In the order in which they became known: a first version before its amendment, whatever the order of the document.
        foreach (var visit in document.Visits.OrderBy(v => FindingsQuery.Moments(v).First()).ThenBy(v => v.Id).ThenBy(v => v.Version ?? 1))
        {
            var path = places[visit];
            switch (visits.Take(visit, path + "."))
            {
                case IntakeOutcome.Stored { AlreadyKnown: true }:
                    known++;
                    break;
                case IntakeOutcome.Stored:
                    added++;
                    break;
                case IntakeOutcome.Refused refused:
                    issues.AddRange(refused.Issues);
                    break;
                case IntakeOutcome.Conflict:
                    issues.Add(new Issue(path, Conflict, IntakeTexts.OtherContent.In(viewer.Language)));
                    break;
                default:
                    issues.Add(new Issue(path + ".site", "unknown-code", IntakeTexts.NoSuchSystem.In(viewer.Language, visit.Site, "-")));
                    break;
            }
        }

        if (issues.Count > 0 && !partial)
        {
            throw new RefusedException(issues);
        }

        await visits.FlushAsync(cancellationToken);
        db.Audit(new AuditEntry(AuditActs.Imported, "Document", $"{writer.Changes} set-up, {added} visits", Why: partial ? "partial" : null));
        return new ImportOutcome(writer.Changes + added > 0, writer.Changes, added, known, issues);
    }

    // Paths count in the document as it was sent, also where refused visits were left out.
    private static Dictionary<Visit, string> Places(ExchangeDocument document, ExchangeReadResult read)
    {
        var places = new Dictionary<Visit, string>(ReferenceEqualityComparer.Instance);
        var refused = read.RefusedVisits.ToHashSet();
        var place = 0;
        foreach (var visit in document.Visits)
        {
            while (refused.Contains(place))
            {
                place++;
            }

            places[visit] = $"visits[{place++}]";
        }

        return places;
    }

    private sealed class RefusedException(IReadOnlyList<Issue> issues) : Exception
    {
        public IReadOnlyList<Issue> Issues => issues;
    }
}
