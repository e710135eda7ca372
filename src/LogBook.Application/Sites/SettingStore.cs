using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Domain.Assessments;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Sites;

/// <summary>Thresholds and default uncertainties that an installation has set, for the firm and for single systems.</summary>
/// <remarks>
/// Kept among the set-up records, with their versions and in the audit trail. A change counts as a change of the set-up: cached set-ups
/// are read again, and the systems it concerns are due. Their stored results carry the mark of the settings they were made with.
/// </remarks>
public sealed class SettingStore(LogBookStore store, SetUpStore setUp, TimeProvider clock)
{
    private const string Entity = "Setting";

    /// <summary>All settings as they stand for the firm, or for one system. Empty for whoever may not set them, or an unknown system.</summary>
    public async Task<IReadOnlyList<SettingEntry>> ListAsync(Viewer viewer, string? site = null, string? system = null, CancellationToken cancellationToken = default)
    {
        if (!MaySet(viewer) || (system is not null && await PlaceAsync(viewer, site, system, cancellationToken) is null))
        {
            return [];
        }

        var rows = await store.ReadAsync(viewer, db => RowsAsync(db, cancellationToken), cancellationToken);
        return [.. EngineSettingCatalogue.All.Where(setting => system is null || !setting.IsOfFirm).Select(setting => Entry(setting, rows, site, system))];
    }

    /// <summary>
    /// What is set in the place of defaults, for the firm and for the systems that the viewer sees: a form that runs without the server
    /// asks by it as well. None for whoever is not of the firm.
    /// </summary>
    public async Task<IReadOnlyList<EngineSettingChange>> InUseAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        if (!viewer.IsOfFirm)
        {
            return [];
        }

        var rows = await store.ReadAsync(viewer, db => RowsAsync(db, cancellationToken), cancellationToken);
        var firm = await setUp.FirmAsync(viewer, cancellationToken: cancellationToken);
        return
        [
            .. ChangesOf(rows.Values.Where(row => row.RetiredAt is null).Select(row => row.Document))
                .Where(change => change.System is null || firm.System(change.Site!, change.System) is not null)
                .OrderBy(change => OwnSetting.KeyOf(change.Code, change.Site, change.System), StringComparer.Ordinal),
        ];
    }

    /// <summary>One setting, or null.</summary>
    public async Task<SettingEntry?> FindAsync(Viewer viewer, string code, string? site = null, string? system = null, CancellationToken cancellationToken = default) =>
        (await ListAsync(viewer, site, system, cancellationToken)).FirstOrDefault(entry => entry.Setting.Code.Equals(code, StringComparison.OrdinalIgnoreCase));

    /// <summary>Systems that have values of their own, with how many.</summary>
    public async Task<IReadOnlyList<(string Site, string System, int Count)>> SystemsAsync(Viewer viewer, CancellationToken cancellationToken = default)
    {
        if (!MaySet(viewer))
        {
            return [];
        }

        var rows = await store.ReadAsync(viewer, db => RowsAsync(db, cancellationToken), cancellationToken);
        return
        [
            .. rows.Values.Where(row => row.RetiredAt is null).Select(row => OwnSetting.Read(row.Document)).Where(own => own.System is not null)
                .GroupBy(own => (own.Site!, own.System!)).Select(group => (group.Key.Item1, group.Key.Item2, group.Count())).OrderBy(group => group.Item1, StringComparer.Ordinal).ThenBy(group => group.Item2, StringComparer.Ordinal),
        ];
    }

    /// <summary>Changes of one setting, latest first.</summary>
    public async Task<IReadOnlyList<SettingStep>> HistoryAsync(Viewer viewer, string code, string? site = null, string? system = null, CancellationToken cancellationToken = default)
    {
        if (!MaySet(viewer))
        {
            return [];
        }

        var key = CodeKeys.Of(OwnSetting.KeyOf(code, site, system));
        var rows = await store.ReadAsync(viewer, async db => await db.AuditTrail.Where(row => row.Entity == Entity).OrderByDescending(row => row.Id).ToListAsync(cancellationToken), cancellationToken);
        return [.. rows.Where(row => CodeKeys.Of(row.Key) == key).Select(row => new SettingStep(row.At, row.Who, row.New is null ? null : OwnSetting.Read(row.New).Value, row.Why))];
    }

    /// <summary>Puts an own value in the place of the default.</summary>
    /// <param name="viewer">Who sets it; an administrator.</param>
    /// <param name="wanted">Setting, value and reason.</param>
    /// <param name="expectedVersion">Version that was read.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> SaveAsync(Viewer viewer, OwnSetting wanted, int expectedVersion, CancellationToken cancellationToken = default)
    {
        if (!MaySet(viewer))
        {
            return new SaveOutcome.NotAllowed();
        }

        var place = wanted.System is null ? (null, null) : await PlaceAsync(viewer, wanted.Site, wanted.System, cancellationToken);
        if (wanted.System is not null && place is null)
        {
            return new SaveOutcome.NotFound();
        }

        var own = wanted with
        {
            Code = EngineSettingCatalogue.Find(wanted.Code)?.Code ?? wanted.Code, Site = place?.Site, System = place?.System, Why = wanted.Why.Trim(),
        };
        return await WriteAsync(
            viewer,
            own.Code,
            own.Site,
            own.System,
            own.Why,
            expectedVersion,
            (rows, key) => EngineSettings.Check(
                [.. rows.Where(row => row.Key != key && row.Value.RetiredAt is null).Select(row => OwnSetting.Read(row.Value.Document).Change).Where(IsKnown), own.Change], viewer.Language),
            row => row.RetiredAt is null && OwnSetting.Read(row.Document) is var stands && stands.Value == own.Value && stands.Why == own.Why,
            row =>
            {
                var before = row.RetiredAt is null && row.Document.Length > 0 ? row.Document : null;
                (row.Document, row.RetiredAt, row.RetiredWhy) = (own.Write(), null, null);
                return new AuditEntry(before is null ? AuditActs.Added : AuditActs.Changed, Entity, row.Code, Old: before, New: row.Document, Why: own.Why);
            },
            cancellationToken);
    }

    /// <summary>Goes back to the default, or for a system to what holds for the firm.</summary>
    public async Task<SaveOutcome> ResetAsync(
        Viewer viewer, string code, string? site, string? system, string why, int expectedVersion, CancellationToken cancellationToken = default)
    {
        if (!MaySet(viewer))
        {
            return new SaveOutcome.NotAllowed();
        }

        if (expectedVersion == 0)
        {
            return new SaveOutcome.NotFound();
        }

        return await WriteAsync(
            viewer,
            code,
            site,
            system,
            why.Trim(),
            expectedVersion,
            (rows, key) => EngineSettings.Check([.. rows.Where(row => row.Key != key && row.Value.RetiredAt is null).Select(row => OwnSetting.Read(row.Value.Document).Change).Where(IsKnown)], viewer.Language),
            row => row.RetiredAt is not null,
            row =>
            {
                (row.RetiredAt, row.RetiredWhy) = (Utc.Now(clock), why.Trim());
                return new AuditEntry(AuditActs.Reset, Entity, row.Code, Old: row.Document, Why: why.Trim());
            },
            cancellationToken);
    }

    /// <summary>The changes among the rows of the set-up, for the engine.</summary>
    internal static IEnumerable<EngineSettingChange> ChangesOf(IEnumerable<string> documents) => documents.Select(document => OwnSetting.Read(document).Change);

    private static bool MaySet(Viewer viewer) => viewer.Role == PersonRole.Administrator;

    private static bool IsKnown(EngineSettingChange change) => EngineSettingCatalogue.Find(change.Code) is not null;

    private static async Task<Dictionary<string, SetUpRow>> RowsAsync(LogBookDb db, CancellationToken cancellationToken) =>
        await db.SetUp.Where(row => row.Kind == SetUpKind.Setting).ToDictionaryAsync(row => row.CodeKey, cancellationToken);

    private static SettingEntry Entry(EngineSetting setting, Dictionary<string, SetUpRow> rows, string? site, string? system)
    {
        SetUpRow? Row(string? ofSite, string? ofSystem) => rows.GetValueOrDefault(CodeKeys.Of(OwnSetting.KeyOf(setting.Code, ofSite, ofSystem)));
        static OwnSetting? Standing(SetUpRow? row) => row is { RetiredAt: null } ? OwnSetting.Read(row.Document) : null;
        var ofFirm = system is null ? null : Standing(Row(null, null));
        var row = Row(site, system);
        return new SettingEntry(setting, ofFirm?.Value ?? setting.Default, ofFirm is not null, Standing(row), row?.Version ?? 0);
    }

    // The codes as the set-up writes them.
    private async Task<(string? Site, string? System)?> PlaceAsync(Viewer viewer, string? site, string system, CancellationToken cancellationToken)
    {
        var firm = await setUp.FirmAsync(viewer, withRetired: true, cancellationToken);
        return site is not null && firm.System(site, system) is { } found ? (firm.Sites[site].Code, found.Code) : null;
    }

    private async Task<SaveOutcome> WriteAsync(
        Viewer viewer,
        string code,
        string? site,
        string? system,
        string why,
        int expectedVersion,
        Func<Dictionary<string, SetUpRow>, string, IReadOnlyList<Issue>> check,
        Func<SetUpRow, bool> isDone,
        Func<SetUpRow, AuditEntry> change,
        CancellationToken cancellationToken)
    {
        var name = OwnSetting.KeyOf(code, site, system);
        var key = CodeKeys.Of(name);
        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var rows = await RowsAsync(db, cancellationToken);
                IReadOnlyList<Issue> issues =
                [
                    .. why.Length == 0 ? [new Issue("why", "reason-needed", SetUpTexts.ReasonNeeded.In(viewer.Language))] : Array.Empty<Issue>(), .. check(rows, key),
                ];
                if (issues.Count > 0)
                {
                    return new SaveOutcome.Invalid(issues);
                }

                var row = await db.SetUp.AsTracking().SingleOrDefaultAsync(setting => setting.Kind == SetUpKind.Setting && setting.CodeKey == key, cancellationToken);
                if ((row?.Version ?? 0) != expectedVersion)
                {
                    return new SaveOutcome.ChangedMeanwhile(row?.RetiredAt is null ? row?.Document ?? "" : "", row?.Version ?? 0);
                }

                if (row is not null && isDone(row))
                {
                    return new SaveOutcome.Saved(row.Version);
                }

                if (row is null)
                {
                    row = new SetUpRow { Kind = SetUpKind.Setting, Code = name, CodeKey = key, Name = EngineSettingCatalogue.Find(code)!.Name.En };
                    db.SetUp.Add(row);
                }

                db.Audit(change(row));
                var now = Utc.Now(clock);
                await SetUpWriter.StampAsync(db, now, cancellationToken);
                await MarkDueAsync(db, site, system, now, cancellationToken);
                return new SaveOutcome.Saved(row.Version);
            },
            cancellationToken);
    }

    private static async Task MarkDueAsync(LogBookDb db, string? site, string? system, DateTime now, CancellationToken cancellationToken)
    {
        var concerned = db.Systems.AsQueryable();
        if (site is not null && system is not null)
        {
            var (siteKey, systemKey) = (CodeKeys.Of(site), CodeKeys.Of(system));
            concerned = concerned.Where(row => row.CodeKey == systemKey && db.Sites.Any(owner => owner.Id == row.SiteId && owner.CodeKey == siteKey));
        }

        await concerned.ExecuteUpdateAsync(set => set.SetProperty(row => row.AssessmentDue, now), cancellationToken);
    }
}
