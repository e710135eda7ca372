using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Domain.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Sites;

/// <summary>Puts set-up records into their rows within one unit of work; used for one record and for a whole import.</summary>
internal sealed class SetUpWriter
{
    private readonly LogBookDb _db;
    private readonly DateTime _now;
    private readonly Dictionary<(SetUpKind Kind, string Site, string Code, DateOnly From), IRetirable> _rows = [];

    private SetUpWriter(LogBookDb db, DateTime now)
    {
        _db = db;
        _now = now;
    }

    /// <summary>How many records were added or changed.</summary>
    public int Changes { get; private set; }

    /// <summary>Loads what is there, under the viewer.</summary>
    public static async Task<SetUpWriter> LoadAsync(LogBookDb db, DateTime now, CancellationToken cancellationToken)
    {
        var writer = new SetUpWriter(db, now);
        foreach (var row in await db.Customers.AsTracking().ToListAsync(cancellationToken))
        {
            writer._rows[(SetUpKind.Customer, "", row.CodeKey, DateOnly.MinValue)] = row;
        }

        var sites = await db.Sites.AsTracking().ToDictionaryAsync(row => row.Id, cancellationToken);
        foreach (var row in sites.Values)
        {
            writer._rows[(SetUpKind.Site, "", row.CodeKey, DateOnly.MinValue)] = row;
        }

        foreach (var row in await db.Systems.AsTracking().ToListAsync(cancellationToken))
        {
            writer._rows[(SetUpKind.System, sites[row.SiteId].CodeKey, row.CodeKey, DateOnly.MinValue)] = row;
        }

        foreach (var row in await db.SetUp.AsTracking().Where(row => row.Kind != SetUpKind.DayPlan && row.Kind != SetUpKind.DaysOff).ToListAsync(cancellationToken))
        {
            writer._rows[(row.Kind, "", row.CodeKey, row.From)] = row;
        }

        return writer;
    }

    /// <summary>The row of a record, or null.</summary>
    public IRetirable? Find((SetUpKind Kind, string Site, string Code, DateOnly From) key) => _rows.GetValueOrDefault(key);

    /// <summary>Adds or changes a record. Owners come first and are saved at once, because what they own needs their keys.</summary>
    public async Task PutAsync(SetUpRecord record, CancellationToken cancellationToken)
    {
        var document = record.Canonical();
        var row = Find(record.Key);
        var before = row?.Document;
        if (before == document)
        {
            return;
        }

        row ??= await AddAsync(record, cancellationToken);
        Fill(row, record);
        row.Document = document;
        if (before is null && row is CustomerRow or SiteRow)
        {
            await _db.SaveChangesAsync(cancellationToken);
        }

        Changes++;
        _db.Audit(new AuditEntry(before is null ? AuditActs.Added : AuditActs.Changed, record.Kind.ToString(), NameOf(record), CustomerOf(row), before, document));
        MarkDue(record.Kind, row);
    }

    /// <summary>Takes a record out of use or back into it.</summary>
    public void Retire(SetUpKind kind, IRetirable row, string key, string why, bool retire)
    {
        row.RetiredAt = retire ? _now : null;
        row.RetiredWhy = retire ? why : null;
        Changes++;
        _db.Audit(new AuditEntry(retire ? AuditActs.Retired : AuditActs.Restored, kind.ToString(), key, CustomerOf(row), Why: why));
    }

    /// <summary>Counts the change, so that cached set-ups are read again.</summary>
    public static async Task StampAsync(LogBookDb db, DateTime now, CancellationToken cancellationToken)
    {
        await db.SaveChangesAsync(cancellationToken);
        if (await db.Firm.ExecuteUpdateAsync(set => set.SetProperty(f => f.SetUpStamp, f => f.SetUpStamp + 1), cancellationToken) == 0)
        {
            db.Firm.Add(new FirmRow { Id = 1, CreatedAt = now, SetUpStamp = 1 });
        }
    }

    private async Task<IRetirable> AddAsync(SetUpRecord record, CancellationToken cancellationToken)
    {
        IRetirable row = record.Kind switch
        {
            SetUpKind.Customer => new CustomerRow(),
            SetUpKind.Site => new SiteRow { CustomerId = CustomerRowOf((Site)record.Record).Id },
            SetUpKind.System => new SystemRow { SiteId = SiteRowOf(record).Id, CustomerId = SiteRowOf(record).CustomerId },
            _ => new SetUpRow { Kind = record.Kind, From = record.From ?? DateOnly.MinValue },
        };
        await _db.AddAsync(row, cancellationToken);
        _rows[record.Key] = row;
        return row;
    }

    // A code is kept as it was first written.
    private static void Fill(IRetirable row, SetUpRecord record)
    {
        switch (row)
        {
            case CustomerRow customer:
                customer.Code = customer.Code.Length > 0 ? customer.Code : record.Code;
                customer.CodeKey = record.Key.Code;
                customer.Name = record.Name;
                break;
            case SiteRow site:
                var written = (Site)record.Record;
                site.Code = site.Code.Length > 0 ? site.Code : record.Code;
                site.CodeKey = record.Key.Code;
                site.Name = record.Name;
                site.TimeZone = written.TimeZone;
                site.VisitEveryDays = written.VisitEveryDays;
                site.AssignedTo = written.AssignedTo is { } person ? CodeKeys.Of(person) : null;
                break;
            case SystemRow system:
                system.Code = system.Code.Length > 0 ? system.Code : record.Code;
                system.CodeKey = record.Key.Code;
                system.Name = record.Name;
                system.Kind = ((WaterSystem)record.Record).Kind;
                break;
            case SetUpRow other:
                other.Code = other.Code.Length > 0 ? other.Code : record.Code;
                other.CodeKey = record.Key.Code;
                other.Name = record.Name;
                break;
            default:
                throw new InvalidOperationException("No set-up row.");
        }
    }

    private CustomerRow CustomerRowOf(Site site) =>
        (CustomerRow)(Find(SetUpRecord.KeyOf(SetUpKind.Customer, site.Customer, null, null)) ?? throw new CustomerWallException(nameof(SiteRow)));

    private SiteRow SiteRowOf(SetUpRecord system) =>
        (SiteRow)(Find(SetUpRecord.KeyOf(SetUpKind.Site, system.Site!, null, null)) ?? throw new CustomerWallException(nameof(SystemRow)));

    // People are in no system's history; contacts neither. All else may change what a rule says.
    private void MarkDue(SetUpKind kind, IRetirable row)
    {
        foreach (var system in _rows.Values.OfType<SystemRow>())
        {
            var concerned = kind switch
            {
                SetUpKind.System => ReferenceEquals(system, row),
                SetUpKind.Site => system.SiteId == ((SiteRow)row).Id,
                SetUpKind.Person or SetUpKind.Customer => false,
                _ => true,
            };
            if (concerned)
            {
                system.AssessmentDue = _now;
            }
        }
    }

    private static string NameOf(SetUpRecord record) =>
        record.Site is { } site ? $"{site}/{record.Code}" : record.From is { } from ? $"{record.Code} {from:yyyy-MM-dd}" : record.Code;

    private static int? CustomerOf(IRetirable row) => row switch
    {
        CustomerRow customer => customer.Id,
        SiteRow site => site.CustomerId,
        SystemRow system => system.CustomerId,
        _ => null,
    };
}
