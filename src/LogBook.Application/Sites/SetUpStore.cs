using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Sites;

/// <summary>The firm's set-up: customers, sites, systems, people, products, instruments, lots, rules and tests.</summary>
public sealed class SetUpStore(LogBookStore store, TimeProvider clock)
{
    private volatile Cached? _cached;

    /// <summary>The set-up as far as the viewer sees it, without retired records unless asked for.</summary>
    public async Task<FirmSetUp> FirmAsync(Viewer viewer, bool withRetired = false, CancellationToken cancellationToken = default)
    {
        // The whole set-up is read and kept once; what a viewer sees of it is cut out afterwards, by the same customers as the filter.
        var cached = await store.ReadAsync(viewer with { CustomerIds = null }, db => LoadAsync(db, cancellationToken), cancellationToken);
        return viewer.CustomerIds is null && viewer.IsOfFirm
            ? withRetired ? cached.All : cached.InUse
            : Cut(cached, withRetired ? cached.All : cached.InUse, viewer);
    }

    /// <summary>The firm's own row, or null before the first run.</summary>
    public Task<FirmRow?> FirmRowAsync(Viewer viewer, CancellationToken cancellationToken = default) =>
        store.ReadAsync(viewer, db => db.Firm.SingleOrDefaultAsync(cancellationToken), cancellationToken);

    /// <summary>Names the firm and ends the first run, or renames it.</summary>
    public Task<SaveOutcome> SaveFirmAsync(Viewer viewer, string name, bool isDemo, DateTime? demoClockFrom = null, CancellationToken cancellationToken = default) =>
        viewer.Role != PersonRole.Administrator
            ? Task.FromResult<SaveOutcome>(new SaveOutcome.NotAllowed())
            : store.WriteAsync<SaveOutcome>(
                viewer,
                async db =>
                {
                    var row = await db.Firm.AsTracking().SingleOrDefaultAsync(cancellationToken);
                    if (row is null)
                    {
                        row = new FirmRow { Id = 1, CreatedAt = Utc.Now(clock) };
                        db.Firm.Add(row);
                    }

                    db.Audit(new AuditEntry(LogBook.Application.Audit.AuditActs.Changed, "Firm", "1", null, row.Name, name));
                    row.Name = name;
                    row.IsDemo = isDemo;
                    row.DemoClockFrom = demoClockFrom;
                    row.FirstRunDone = true;
                    return new SaveOutcome.Saved(1);
                },
                cancellationToken);

    /// <summary>Saves a record of the exchange format.</summary>
    /// <param name="viewer">Who saves.</param>
    /// <param name="record">A customer, site, system, person, product, instrument, lot, rule or test.</param>
    /// <param name="expectedVersion">Version that was read; 0 for a new record.</param>
    /// <param name="cancellationToken">Stops.</param>
    public async Task<SaveOutcome> SaveAsync<T>(Viewer viewer, T record, int expectedVersion, CancellationToken cancellationToken = default)
        where T : class
    {
        if (!viewer.MayKeepSetUp)
        {
            return new SaveOutcome.NotAllowed();
        }

        var known = await FirmAsync(viewer, withRetired: true, cancellationToken);
        var written = SetUpRecord.Of(record);
        var issues = Check(viewer, written, known);
        if (issues.Count > 0)
        {
            return new SaveOutcome.Invalid(issues);
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var now = Utc.Now(clock);
                var writer = await SetUpWriter.LoadAsync(db, now, cancellationToken);
                var row = writer.Find(written.Key);
                if (row is null && expectedVersion > 0)
                {
                    return new SaveOutcome.NotFound();
                }

                if (row is not null && expectedVersion == 0)
                {
                    return new SaveOutcome.Invalid([new Issue("code", "code-taken", SetUpTexts.CodeTaken.In(viewer.Language, written.Code))]);
                }

                if (row is IVersioned { Version: var version } && version != expectedVersion)
                {
                    return new SaveOutcome.ChangedMeanwhile(row.Document, version);
                }

                await writer.PutAsync(written, cancellationToken);
                await SetUpWriter.StampAsync(db, now, cancellationToken);
                return new SaveOutcome.Saved(((IVersioned)writer.Find(written.Key)!).Version);
            },
            cancellationToken);
    }

    /// <summary>Takes a record out of use.</summary>
    public Task<SaveOutcome> RetireAsync(Viewer viewer, SetUpKind kind, string code, string why, string? site = null, DateOnly? from = null, CancellationToken cancellationToken = default) =>
        SetRetiredAsync(viewer, SetUpRecord.KeyOf(kind, code, site, from), why, retire: true, cancellationToken);

    /// <summary>Takes a retired record into use again.</summary>
    public Task<SaveOutcome> RestoreAsync(Viewer viewer, SetUpKind kind, string code, string why, string? site = null, DateOnly? from = null, CancellationToken cancellationToken = default) =>
        SetRetiredAsync(viewer, SetUpRecord.KeyOf(kind, code, site, from), why, retire: false, cancellationToken);

    /// <summary>Records of a kind, by code, retired ones too.</summary>
    public Task<IReadOnlyList<SetUpEntry>> ListAsync(Viewer viewer, SetUpKind kind, CancellationToken cancellationToken = default) =>
        store.ReadAsync(viewer, db => ListAsync(db, viewer, kind, cancellationToken), cancellationToken);

    /// <summary>One record, or null.</summary>
    public async Task<SetUpEntry?> FindAsync(Viewer viewer, SetUpKind kind, string code, string? site = null, DateOnly? from = null, CancellationToken cancellationToken = default)
    {
        var key = SetUpRecord.KeyOf(kind, code, site, from);
        var all = await ListAsync(viewer, kind, cancellationToken);
        return all.FirstOrDefault(entry => SetUpRecord.KeyOf(kind, entry.Code, entry.Site, entry.From) == key);
    }

    private static async Task<IReadOnlyList<SetUpEntry>> ListAsync(LogBookDb db, Viewer viewer, SetUpKind kind, CancellationToken cancellationToken)
    {
        switch (kind)
        {
            case SetUpKind.Customer:
                return await db.Customers.OrderBy(r => r.CodeKey)
                    .Select(r => new SetUpEntry(kind, r.Code, null, null, r.Name, r.Document, r.Version, r.RetiredAt, r.RetiredWhy)).ToListAsync(cancellationToken);
            case SetUpKind.Site:
                return await db.Sites.OrderBy(r => r.CodeKey)
                    .Select(r => new SetUpEntry(kind, r.Code, null, null, r.Name, r.Document, r.Version, r.RetiredAt, r.RetiredWhy)).ToListAsync(cancellationToken);
            case SetUpKind.System:
                return await db.Systems.Join(db.Sites, r => r.SiteId, s => s.Id, (r, s) => new { r, s }).OrderBy(p => p.s.CodeKey).ThenBy(p => p.r.CodeKey)
                    .Select(p => new SetUpEntry(kind, p.r.Code, p.s.Code, null, p.r.Name, p.r.Document, p.r.Version, p.r.RetiredAt, p.r.RetiredWhy)).ToListAsync(cancellationToken);
            default:
                // The firm's own records; a customer sees what FirmAsync cuts out for them, not the records themselves.
                if (!viewer.IsOfFirm)
                {
                    return [];
                }

                var rows = await db.SetUp.Where(r => r.Kind == kind).OrderBy(r => r.CodeKey).ThenBy(r => r.From).ToListAsync(cancellationToken);
                return [.. rows.Select(r => new SetUpEntry(kind, r.Code, null, kind == SetUpKind.Rule ? r.From : null, r.Name, r.Document, r.Version, r.RetiredAt, r.RetiredWhy))];
        }
    }

    private async Task<SaveOutcome> SetRetiredAsync(
        Viewer viewer, (SetUpKind Kind, string Site, string Code, DateOnly From) key, string why, bool retire, CancellationToken cancellationToken)
    {
        if (!viewer.MayKeepSetUp)
        {
            return new SaveOutcome.NotAllowed();
        }

        if (string.IsNullOrWhiteSpace(why))
        {
            return new SaveOutcome.Invalid([new Issue("why", "reason-needed", SetUpTexts.ReasonNeeded.In(viewer.Language))]);
        }

        return await store.WriteAsync<SaveOutcome>(
            viewer,
            async db =>
            {
                var now = Utc.Now(clock);
                var writer = await SetUpWriter.LoadAsync(db, now, cancellationToken);
                if (writer.Find(key) is not { } row)
                {
                    return new SaveOutcome.NotFound();
                }

                if (row.RetiredAt is not null != retire)
                {
                    writer.Retire(key.Kind, row, key.Site.Length > 0 ? $"{key.Site}/{row.Code}" : row.Code, why, retire);
                    await SetUpWriter.StampAsync(db, now, cancellationToken);
                }

                return new SaveOutcome.Saved(((IVersioned)row).Version);
            },
            cancellationToken);
    }

    private static List<Issue> Check(Viewer viewer, SetUpRecord written, FirmSetUp known)
    {
        var json = ExchangeWriter.Write(written.AsDocument());
        List<Issue> issues =
        [
            .. ExchangeReader.ReadAndCheck(json, known, viewer.Language, mayUpdate: true).Issues
                .Select(issue => issue with { Path = AfterFirstStep(issue.Path) }),
        ];
        if (written.Record is Site site && known.Sites.TryGetValue(site.Code, out var before) && !before.Customer.Equals(site.Customer, StringComparison.OrdinalIgnoreCase))
        {
            issues.Add(new Issue("customer", "customer-stays", SetUpTexts.CustomerStays.In(viewer.Language)));
        }

        return issues;
    }

    // "sites[0].timeZone" is "timeZone" to whoever edits one site.
    private static string AfterFirstStep(string path) => path.IndexOf('.', StringComparison.Ordinal) is >= 0 and var dot ? path[(dot + 1)..] : path;

    /// <summary>The whole set-up as it stands within a unit of work; not kept, because it may yet be undone.</summary>
    internal static async Task<FirmSetUp> LoadForAsync(LogBookDb db, CancellationToken cancellationToken) => (await ReadAsync(db, -1, cancellationToken)).All;

    private async Task<Cached> LoadAsync(LogBookDb db, CancellationToken cancellationToken)
    {
        var stamp = await db.Firm.Select(f => (long?)f.SetUpStamp).SingleOrDefaultAsync(cancellationToken) ?? 0;
        if (_cached is { } cached && cached.Stamp == stamp)
        {
            return cached;
        }

        return _cached = await ReadAsync(db, stamp, cancellationToken);
    }

    private static async Task<Cached> ReadAsync(LogBookDb db, long stamp, CancellationToken cancellationToken)
    {
        var customers = await db.Customers.Select(r => new { r.Id, r.CodeKey, r.Document, r.RetiredAt }).ToListAsync(cancellationToken);
        var sites = await db.Sites.Select(r => new { r.Document, r.RetiredAt }).ToListAsync(cancellationToken);
        var systems = await db.Systems.Select(r => new { r.Document, r.RetiredAt }).ToListAsync(cancellationToken);
        var others = await db.SetUp.Where(r => r.Kind != SetUpKind.DayPlan).Select(r => new { r.Kind, r.Document, r.RetiredAt }).ToListAsync(cancellationToken);
        var engine = EngineSettings.Of(SettingStore.ChangesOf(others.Where(r => r.Kind == SetUpKind.Setting && r.RetiredAt is null).Select(r => r.Document)));
        FirmSetUp Make(bool withRetired)
        {
            IReadOnlyList<T> Of<T>(SetUpKind kind)
                where T : class => [.. others.Where(r => r.Kind == kind && (withRetired || r.RetiredAt is null)).Select(r => ExchangeReader.Parse<T>(r.Document))];
            return new FirmSetUp(ExchangeWriter.Canonical(new ExchangeDocument
            {
                Format = ExchangeReader.Format,
                Version = ExchangeReader.Version,
                Tests = Of<TestDefinition>(SetUpKind.Test),
                Customers = [.. customers.Where(r => withRetired || r.RetiredAt is null).Select(r => ExchangeReader.Parse<Customer>(r.Document))],
                People = Of<Person>(SetUpKind.Person),
                Products = Of<Product>(SetUpKind.Product),
                Instruments = Of<Instrument>(SetUpKind.Instrument),
                Lots = Of<ReagentLot>(SetUpKind.Lot),
                Rules = Of<Rule>(SetUpKind.Rule),
                Sites = [.. sites.Where(r => withRetired || r.RetiredAt is null).Select(r => ExchangeReader.Parse<Site>(r.Document))],
                Systems = [.. systems.Where(r => withRetired || r.RetiredAt is null).Select(r => ExchangeReader.Parse<WaterSystem>(r.Document))],
            })) { Engine = engine };
        }

        return new Cached(stamp, Make(withRetired: true), Make(withRetired: false), customers.ToDictionary(r => r.CodeKey, r => r.Id));
    }

    // Customers and their staff see their own plant and what it is judged by; of people only whom they met.
    private static FirmSetUp Cut(Cached cached, FirmSetUp all, Viewer viewer)
    {
        bool Seen(string customer) => cached.CustomerIds.TryGetValue(CodeKeys.Of(customer), out var id) && viewer.Sees(id);
        var document = all.Document;
        var sites = document.Sites.Where(site => Seen(site.Customer)).ToList();
        var codes = sites.Select(site => site.Code).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return new FirmSetUp(document with
        {
            Customers = [.. document.Customers.Where(customer => Seen(customer.Code))],
            Sites = sites,
            Systems = [.. document.Systems.Where(system => codes.Contains(system.Site))],
            People = viewer.IsOfFirm ? document.People : [.. document.People.Select(person => new Person { Code = person.Code, Name = person.Name, Role = person.Role })],
        }) { Engine = all.Engine };
    }

    private sealed record Cached(long Stamp, FirmSetUp All, FirmSetUp InUse, IReadOnlyDictionary<string, int> CustomerIds);
}
