using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Rounds.Planning;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Planning;

/// <summary>Leave of people, days on which the firm or a site is closed, and sites that go to a colleague for some days.</summary>
/// <remarks>
/// Kept among the set-up records for their version and audit, but no set-up: a change makes nothing due and is not part of an export. Everybody
/// of the firm sees them and enters the own leave; who reviews enters all. Days that are over stay as they were.
/// </remarks>
public sealed class DaysOffStore(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    /// <summary>Longest note.</summary>
    public const int LongestNote = 200;

    private const string Entity = "DaysOff";
    private const int DaysOfAWeek = 7;

    /// <summary>All that are on record from a day on, by their first day; empty for whoever is not of the firm.</summary>
    public async Task<IReadOnlyList<KeptDaysOff>> ListAsync(Viewer viewer, DateOnly notOverBefore, CancellationToken cancellationToken = default) => !viewer.IsOfFirm
        ? []
        :
        [
            .. (await store.ReadAsync(viewer, async db => await db.SetUp.Where(row => row.Kind == SetUpKind.DaysOff && row.RetiredAt == null).Select(row => new { row.Document, row.Version }).ToListAsync(cancellationToken), cancellationToken))
                .Select(row => new KeptDaysOff(KeptDaysOff.Read(row.Document), row.Version)).Where(kept => kept.Off.To >= notOverBefore)
                .OrderBy(kept => kept.Off.From).ThenBy(kept => kept.Off.Kind).ThenBy(kept => kept.Off.Of, StringComparer.OrdinalIgnoreCase),
        ];

    /// <summary>Whether somebody may enter, change or take back days.</summary>
    public static bool MaySet(Viewer viewer, DaysOffKind kind, string? of) =>
        viewer.MayReview || (viewer.IsOfFirm && kind == DaysOffKind.Person && viewer.PersonCode is { } own && of is not null && CodeKeys.Of(own) == CodeKeys.Of(of));

    /// <summary>Enters days, or changes those that begin on the same day.</summary>
    /// <param name="viewer">Who does it.</param>
    /// <param name="wanted">The days.</param>
    /// <param name="expectedVersion">Version that was read; 0 for new ones.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> SaveAsync(Viewer viewer, DaysOff wanted, int expectedVersion, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        if (!MaySet(viewer, wanted.Kind, wanted.Of))
        {
            return new SaveOutcome.NotAllowed();
        }

        var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
        var off = Clean(wanted, firm);
        var issues = Check(viewer, off, firm);
        if (issues.Count > 0)
        {
            return new SaveOutcome.Invalid(issues);
        }

        var key = CodeKeys.Of(off.Key);
        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(known => known.Kind == SetUpKind.DaysOff && known.CodeKey == key, cancellationToken);
                if (row is { RetiredAt: null } ? row.Version != expectedVersion : expectedVersion != 0)
                {
                    return new SaveOutcome.ChangedMeanwhile(row is { RetiredAt: null } ? row.Document : "", row?.Version ?? 0);
                }

                var before = row is { RetiredAt: null } ? row.Document : null;
                var document = KeptDaysOff.Write(off);
                if (before == document)
                {
                    return new SaveOutcome.Saved(row!.Version);
                }

                if (row is null)
                {
                    row = new SetUpRow { Kind = SetUpKind.DaysOff, Code = off.Key, CodeKey = key, Name = off.Of ?? "" };
                    db.SetUp.Add(row);
                }

                (row.Document, row.RetiredAt, row.RetiredWhy) = (document, null, null);
                db.Audit(new AuditEntry(before is null ? AuditActs.Added : AuditActs.Changed, Entity, off.Key, Old: before, New: document));
                await db.SaveChangesAsync(cancellationToken);
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    /// <summary>Takes days back.</summary>
    /// <param name="viewer">Who does it.</param>
    /// <param name="off">The days as they were read.</param>
    /// <param name="expectedVersion">Version that was read.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> TakeBackAsync(Viewer viewer, DaysOff off, int expectedVersion, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(off);
        if (!MaySet(viewer, off.Kind, off.Of))
        {
            return new SaveOutcome.NotAllowed();
        }

        if (IsOver(off))
        {
            return new SaveOutcome.Invalid([new Issue("to", "days-over", PlanTexts.DaysAreOver.In(viewer.Language))]);
        }

        var key = CodeKeys.Of(off.Key);
        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(known => known.Kind == SetUpKind.DaysOff && known.CodeKey == key && known.RetiredAt == null, cancellationToken);
                if (row is null)
                {
                    return new SaveOutcome.NotFound();
                }

                if (row.Version != expectedVersion)
                {
                    return new SaveOutcome.ChangedMeanwhile(row.Document, row.Version);
                }

                row.RetiredAt = Utc.Now(clock);
                db.Audit(new AuditEntry(AuditActs.Retired, Entity, row.Code, Old: row.Document));
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    // Codes as the set-up writes them.
    private static DaysOff Clean(DaysOff wanted, FirmSetUp firm) => wanted with
    {
        Of = wanted.Kind switch
        {
            DaysOffKind.Person or DaysOffKind.Lent => firm.People.GetValueOrDefault(wanted.Of ?? "")?.Code ?? wanted.Of,
            DaysOffKind.Site => firm.Sites.GetValueOrDefault(wanted.Of ?? "")?.Code ?? wanted.Of,
            _ => null,
        },
        StandIn = wanted.Kind is not (DaysOffKind.Person or DaysOffKind.Lent) || string.IsNullOrWhiteSpace(wanted.StandIn) ? null : firm.People.GetValueOrDefault(wanted.StandIn)?.Code ?? wanted.StandIn,
        Sites = wanted.Kind == DaysOffKind.Lent ? [.. wanted.Sites.Select(site => firm.Sites.GetValueOrDefault(site)?.Code ?? site).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase)] : [],
        Weekdays = wanted.Kind is DaysOffKind.Firm or DaysOffKind.Site && wanted.Weekdays.Distinct().Count() < DaysOfAWeek ? [.. wanted.Weekdays.Distinct().Order()] : [],
        Note = string.IsNullOrWhiteSpace(wanted.Note) ? null : wanted.Note.Trim(),
    };

    // Somewhere it is still yesterday; a day before that is over everywhere.
    private bool IsOver(DaysOff off) => off.To < DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime).AddDays(-1);

    private List<Issue> Check(Viewer viewer, DaysOff off, FirmSetUp firm)
    {
        var issues = new List<Issue>();
        void Add(string path, string code, string message) => issues.Add(new Issue(path, code, message));
        if (off.Kind is DaysOffKind.Person or DaysOffKind.Lent && !PlanStore.Goes(firm.People.GetValueOrDefault(off.Of ?? "")))
        {
            Add("of", "person-unknown", PlanTexts.PersonUnknown.In(viewer.Language, off.Of ?? "–"));
        }

        if (off.Kind == DaysOffKind.Site && !firm.Sites.ContainsKey(off.Of ?? ""))
        {
            Add("of", "site-unknown", PlanTexts.SiteUnknown.In(viewer.Language, off.Of ?? "–"));
        }

        if (off.To < off.From)
        {
            Add("to", "wrong-order", PlanTexts.LastBeforeFirst.In(viewer.Language));
        }
        else if (off.To.DayNumber - off.From.DayNumber >= off.Longest)
        {
            Add("to", "too-long", PlanTexts.TooLong.In(viewer.Language, off.Longest));
        }
        else if (IsOver(off))
        {
            Add("to", "days-over", PlanTexts.DaysAreOver.In(viewer.Language));
        }

        if (off.StandIn is { } standIn && (!PlanStore.Goes(firm.People.GetValueOrDefault(standIn)) || CodeKeys.Of(standIn) == CodeKeys.Of(off.Of ?? "")))
        {
            Add("standIn", "person-unknown", PlanTexts.NobodyStandsIn.In(viewer.Language, standIn));
        }

        if (off.Kind == DaysOffKind.Lent && off.StandIn is null)
        {
            Add("standIn", "person-unknown", PlanTexts.NobodyStandsIn.In(viewer.Language, "–"));
        }

        foreach (var site in off.Sites.Where(site => !firm.Sites.ContainsKey(site)))
        {
            Add("sites", "site-unknown", PlanTexts.SiteUnknown.In(viewer.Language, site));
        }

        if (off.Reason is { } reason && !DaysOff.ReasonsOf(off.Kind).Contains(reason))
        {
            Add("reason", "not-of-kind", PlanTexts.OtherReason.In(viewer.Language));
        }

        if (off.Note is { Length: > LongestNote })
        {
            Add("note", "too-long", PlanTexts.NoteTooLong.In(viewer.Language, LongestNote));
        }

        return issues;
    }
}
