using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Application.Sites;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Planning;

/// <summary>Who goes where on a day: the one record of assignments, a document for each day with its version and its audit entries.</summary>
/// <remarks>
/// Kept among the set-up records, but no set-up: a change makes nothing due and is not part of an export. A supervisor plans and hands over;
/// a technician changes the order of the own stops. The version that was read says whether somebody else was faster.
/// </remarks>
public sealed class PlanStore(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    private const string Entity = "DayPlan";

    /// <summary>Plans of days, by day; days without a plan are not in it. Empty for whoever is not of the firm.</summary>
    public async Task<IReadOnlyDictionary<DateOnly, KeptDay>> DaysAsync(Viewer viewer, DateOnly from, DateOnly to, CancellationToken cancellationToken = default) =>
        viewer.IsOfFirm ? await store.ReadAsync(viewer, db => DaysAsync(db, from, to, cancellationToken), cancellationToken) : new Dictionary<DateOnly, KeptDay>();

    /// <summary>Puts a site on somebody's day, or moves it there from whoever had it.</summary>
    public Task<SaveOutcome> AssignAsync(Viewer viewer, DateOnly day, string site, string person, int expectedVersion, CancellationToken cancellationToken = default) =>
        AssignAsync(viewer, day, [new PlannedStop(site, person)], expectedVersion, cancellationToken);

    /// <summary>The same for several sites at once, in their order.</summary>
    public Task<SaveOutcome> AssignAsync(Viewer viewer, DateOnly day, IReadOnlyList<PlannedStop> stops, int expectedVersion, CancellationToken cancellationToken = default) =>
        ChangeAsync(
            viewer,
            day,
            expectedVersion,
            viewer.MayReview,
            async () =>
            {
                var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
                return
                [
                    .. stops.Where(stop => !firm.Sites.ContainsKey(stop.Site)).Select(stop => new Issue("site", "site-unknown", PlanTexts.SiteUnknown.In(viewer.Language, stop.Site))),
                    .. stops.Where(stop => !Goes(firm.People.GetValueOrDefault(stop.Person))).Select(stop => stop.Person).Distinct(StringComparer.OrdinalIgnoreCase)
                        .Select(person => new Issue("person", "person-unknown", PlanTexts.PersonUnknown.In(viewer.Language, person))),
                ];
            },
            plan => stops.Aggregate(plan, (planned, stop) => planned.Assign(stop.Site, stop.Person)),
            null,
            cancellationToken);

    /// <summary>Takes a site off a day.</summary>
    public Task<SaveOutcome> TakeOffAsync(Viewer viewer, DateOnly day, string site, int expectedVersion, CancellationToken cancellationToken = default) =>
        ChangeAsync(viewer, day, expectedVersion, viewer.MayReview, NoIssues, plan => plan.TakeOff(site), null, cancellationToken);

    /// <summary>Moves a stop within its person's day: below 0 for earlier. A technician moves only the own ones.</summary>
    public Task<SaveOutcome> MoveAsync(Viewer viewer, DateOnly day, string site, int steps, int expectedVersion, CancellationToken cancellationToken = default) =>
        ChangeAsync(
            viewer,
            day,
            expectedVersion,
            viewer.IsOfFirm,
            NoIssues,
            plan => viewer.MayReview || IsOwn(viewer, plan.At(site)) ? plan.Move(site, steps) : null,
            null,
            cancellationToken);

    /// <summary>Moves a stop that nobody planned on the viewer's own round of a day: below 0 for earlier. Nobody else's round changes.</summary>
    /// <param name="viewer">Whose round it is.</param>
    /// <param name="day">The day.</param>
    /// <param name="shown">Codes of the sites it is shown with, in their order of now.</param>
    /// <param name="site">Code of the site.</param>
    /// <param name="steps">How many places.</param>
    /// <param name="expectedVersion">Version of the day's plan that was read; 0 where there was none.</param>
    /// <param name="cancellationToken">Stops.</param>
    public Task<SaveOutcome> ArrangeAsync(Viewer viewer, DateOnly day, IReadOnlyList<string> shown, string site, int steps, int expectedVersion, CancellationToken cancellationToken = default) =>
        ChangeAsync(
            viewer,
            day,
            expectedVersion,
            viewer.IsOfFirm && viewer.PersonCode is not null,
            async () =>
            {
                var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
                return [.. shown.Where(code => !firm.Sites.ContainsKey(code)).Select(code => new Issue("site", "site-unknown", PlanTexts.SiteUnknown.In(viewer.Language, code)))];
            },
            plan => plan.Arrange(viewer.PersonCode!, shown, site, steps),
            null,
            cancellationToken);

    /// <summary>Hands all stops of a day to somebody else. A technician hands over only the own ones, and may take them back.</summary>
    public Task<SaveOutcome> HandOverAsync(Viewer viewer, DateOnly day, string from, string to, string? why, int expectedVersion, CancellationToken cancellationToken = default) =>
        ChangeAsync(
            viewer,
            day,
            expectedVersion,
            viewer.MayReview || IsSelf(viewer, from),
            async () => Goes((await setUp.FirmAsync(viewer, cancellationToken: cancellationToken)).People.GetValueOrDefault(to))
                ? []
                : [new Issue("person", "person-unknown", PlanTexts.PersonUnknown.In(viewer.Language, to))],
            plan => plan.HandOver(from, to, byThemselves: IsSelf(viewer, from)),
            why,
            cancellationToken);

    /// <summary>Takes the own day back that one has handed over, as long as nobody who took it has begun a visit of it.</summary>
    public Task<SaveOutcome> TakeBackAsync(Viewer viewer, DateOnly day, int expectedVersion, CancellationToken cancellationToken = default) =>
        ChangeAsync(
            viewer,
            day,
            expectedVersion,
            viewer.IsOfFirm && viewer.PersonCode is not null,
            async () => [.. (await BegunStops.OfAsync(store, viewer, day, cancellationToken)).Select(stop => new Issue("site", "visit-begun", PlanTexts.HasBegun.In(viewer.Language, stop.Person, stop.Site)))],
            plan => plan.HandedBy(viewer.PersonCode!).Count == 0 ? null : plan.TakeBack(viewer.PersonCode!),
            null,
            cancellationToken);

    /// <summary>Changes of a day's plan, latest first.</summary>
    public async Task<IReadOnlyList<PlanStepEntry>> StepsAsync(Viewer viewer, DateOnly day, CancellationToken cancellationToken = default) => !viewer.IsOfFirm
        ? []
        : await store.ReadAsync(
            viewer,
            async db => await db.AuditTrail.Where(row => row.Entity == Entity && row.Key == KeptPlan.CodeOf(day)).OrderByDescending(row => row.Id)
                .Select(row => new PlanStepEntry(row.At, row.Who, row.Why)).ToListAsync(cancellationToken),
            cancellationToken);

    internal static async Task<IReadOnlyDictionary<DateOnly, KeptDay>> DaysAsync(LogBookDb db, DateOnly from, DateOnly to, CancellationToken cancellationToken) =>
        (await WithCalendarAsync(db, from, to, cancellationToken)).Days;

    /// <summary>Plans of days and who is off on which days, in one statement.</summary>
    internal static async Task<(IReadOnlyDictionary<DateOnly, KeptDay> Days, RoundCalendar Calendar)> WithCalendarAsync(LogBookDb db, DateOnly from, DateOnly to, CancellationToken cancellationToken)
    {
        var codes = Enumerable.Range(0, Math.Max(0, to.DayNumber - from.DayNumber + 1)).Select(days => KeptPlan.CodeOf(from.AddDays(days))).ToList();
        var rows = await db.SetUp.Where(row => (row.Kind == SetUpKind.DayPlan && codes.Contains(row.CodeKey)) || (row.Kind == SetUpKind.DaysOff && row.RetiredAt == null))
            .Select(row => new { row.Kind, row.Document, row.Version }).ToListAsync(cancellationToken);
        return (
            rows.Where(row => row.Kind == SetUpKind.DayPlan).Select(row => new KeptDay(KeptPlan.Read(row.Document), row.Version)).ToDictionary(kept => kept.Plan.Day),
            new RoundCalendar(rows.Where(row => row.Kind == SetUpKind.DaysOff).Select(row => KeptDaysOff.Read(row.Document)).ToList()));
    }

    /// <summary>Whether a person may be sent to a site.</summary>
    internal static bool Goes(Person? person) => person?.Role is PersonRole.Technician or PersonRole.Supervisor or PersonRole.Administrator;

    private static bool IsOwn(Viewer viewer, PlannedStop? stop) => stop is not null && IsSelf(viewer, stop.Person);

    private static bool IsSelf(Viewer viewer, string person) => viewer.IsOfFirm && viewer.PersonCode is { } own && CodeKeys.Of(own) == CodeKeys.Of(person);

    private static Task<IReadOnlyList<Issue>> NoIssues() => Task.FromResult<IReadOnlyList<Issue>>([]);

    private async Task<SaveOutcome> ChangeAsync(
        Viewer viewer,
        DateOnly day,
        int expectedVersion,
        bool isAllowed,
        Func<Task<IReadOnlyList<Issue>>> check,
        Func<DayPlan, DayPlan?> change,
        string? why,
        CancellationToken cancellationToken)
    {
        if (!isAllowed)
        {
            return new SaveOutcome.NotAllowed();
        }

        // Somewhere it is still yesterday; a day before that is over everywhere.
        IReadOnlyList<Issue> issues =
        [
            .. day < DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime).AddDays(-1) ? [new Issue("day", "day-over", PlanTexts.DayIsOver.In(viewer.Language))] : Array.Empty<Issue>(), .. await check(),
        ];
        if (issues.Count > 0)
        {
            return new SaveOutcome.Invalid(issues);
        }

        var code = KeptPlan.CodeOf(day);
        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(plan => plan.Kind == SetUpKind.DayPlan && plan.CodeKey == code, cancellationToken);
                if ((row?.Version ?? 0) != expectedVersion)
                {
                    return new SaveOutcome.ChangedMeanwhile(row?.Document ?? "", row?.Version ?? 0);
                }

                var before = row is null ? new DayPlan(day) : KeptPlan.Read(row.Document);
                if (change(before) is not { } after)
                {
                    return new SaveOutcome.NotAllowed();
                }

                if (ReferenceEquals(before, after))
                {
                    return new SaveOutcome.Saved(row?.Version ?? 0);
                }

                var old = row?.Document;
                if (row is null)
                {
                    row = new SetUpRow { Kind = SetUpKind.DayPlan, Code = code, CodeKey = code };
                    db.SetUp.Add(row);
                }

                row.Document = KeptPlan.Write(after);
                db.Audit(new AuditEntry(old is null ? AuditActs.Added : AuditActs.Changed, Entity, code, Old: old, New: row.Document, Why: string.IsNullOrWhiteSpace(why) ? null : why.Trim()));
                return new SaveOutcome.Saved(old is null ? row.Version : row.Version + 1);
            },
            cancellationToken);
    }
}
