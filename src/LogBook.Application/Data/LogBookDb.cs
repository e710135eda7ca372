using LogBook.Application.Data.Conventions;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Data;

/// <summary>
/// The database. Opened through <see cref="LogBookStore"/>, which says who looks; a context that nobody has looked through
/// yet sees no customer's records and may not change any.
/// </summary>
public sealed class LogBookDb(DbContextOptions<LogBookDb> options) : IdentityDbContext<LogBookUser, IdentityRole<int>, int>(options)
{
    private readonly List<AuditEntry> _audit = [];
    private bool _readOnly;

    public DbSet<FirmRow> Firm => Set<FirmRow>();

    public DbSet<CustomerRow> Customers => Set<CustomerRow>();

    public DbSet<SiteRow> Sites => Set<SiteRow>();

    public DbSet<SystemRow> Systems => Set<SystemRow>();

    public DbSet<SetUpRow> SetUp => Set<SetUpRow>();

    public DbSet<VisitRow> Visits => Set<VisitRow>();

    public DbSet<VisitVersionRow> VisitVersions => Set<VisitVersionRow>();

    public DbSet<ReadingRow> Readings => Set<ReadingRow>();

    public DbSet<PhotoRow> Photos => Set<PhotoRow>();

    public DbSet<FindingRow> Findings => Set<FindingRow>();

    public DbSet<FindingMarkRow> FindingMarks => Set<FindingMarkRow>();

    public DbSet<FigureRow> Figures => Set<FigureRow>();

    public DbSet<ClueRow> Clues => Set<ClueRow>();

    public DbSet<ClockRow> Clocks => Set<ClockRow>();

    public DbSet<OutboxRow> Outbox => Set<OutboxRow>();

    public DbSet<AuditRow> AuditTrail => Set<AuditRow>();

    public DbSet<AuditHeadRow> AuditHead => Set<AuditHeadRow>();

    public DbSet<ConflictRow> Conflicts => Set<ConflictRow>();

    public DbSet<DraftRow> Drafts => Set<DraftRow>();

    public DbSet<TokenRow> Tokens => Set<TokenRow>();

    /// <summary>Read by the filters; a context member, because a filter over a local variable keeps the first viewer for ever.</summary>
    public bool SeesAllCustomers { get; private set; }

    /// <summary>Read by the filters.</summary>
    public int[] SeenCustomers { get; private set; } = [];

    /// <summary>Notes an entry for the audit trail; the store chains and writes it in the same transaction.</summary>
    public void Audit(AuditEntry entry) => _audit.Add(entry);

    /// <summary>Lets a viewer look through this context.</summary>
    internal void LookAs(Viewer viewer, bool readOnly)
    {
        SeesAllCustomers = viewer.CustomerIds is null;
        SeenCustomers = viewer.CustomerIds is null ? [] : [.. viewer.CustomerIds];
        _readOnly = readOnly;
        _audit.Clear();
    }

    internal IReadOnlyList<AuditEntry> TakeAudit()
    {
        AuditEntry[] taken = [.. _audit];
        _audit.Clear();
        return taken;
    }

    /// <inheritdoc />
    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        CheckChanges();
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    /// <inheritdoc />
    public override Task<int> SaveChangesAsync(bool acceptAllChangesOnSuccess, CancellationToken cancellationToken = default)
    {
        CheckChanges();
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    /// <inheritdoc />
    public override void Dispose()
    {
        ForgetViewer();
        base.Dispose();
    }

    /// <inheritdoc />
    public override ValueTask DisposeAsync()
    {
        ForgetViewer();
        return base.DisposeAsync();
    }

    /// <inheritdoc />
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        base.ConfigureConventions(configurationBuilder);
        if (Database.IsSqlite())
        {
            configurationBuilder.Properties<DateTime>().HaveConversion<UnixMillisecondsConverter>();
            configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UnixMillisecondsOffsetConverter>();
        }
        else
        {
            configurationBuilder.Properties<DateTime>().HaveConversion<UtcConverter>().HaveColumnType("timestamp with time zone");
        }

        // Words in the tables, so that a person with a plain SQL tool can read them and a reordered enum harms nothing.
        configurationBuilder.Properties<Enum>().HaveConversion<string>();
    }

    /// <inheritdoc />
    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        builder.ApplyConfigurationsFromAssembly(typeof(LogBookDb).Assembly);
        builder.Entity<CustomerRow>().HasQueryFilter(row => SeesAllCustomers || SeenCustomers.Contains(row.Id));
        foreach (var type in builder.Model.GetEntityTypes().Select(entity => entity.ClrType).ToList())
        {
            if (typeof(ICustomerOwned).IsAssignableFrom(type))
            {
                Invoke(nameof(Wall), type, builder);
            }
            else if (typeof(ICustomerMayOwn).IsAssignableFrom(type))
            {
                Invoke(nameof(WallOrFirm), type, builder);
            }

            if (typeof(IVersioned).IsAssignableFrom(type))
            {
                builder.Entity(type).Property(nameof(IVersioned.Version)).IsConcurrencyToken();
            }
        }
    }

    private void Wall<T>(ModelBuilder builder)
        where T : class => builder.Entity<T>().HasQueryFilter(row => SeesAllCustomers || SeenCustomers.Contains(EF.Property<int>(row, "CustomerId")));

    private void WallOrFirm<T>(ModelBuilder builder)
        where T : class => builder.Entity<T>().HasQueryFilter(row =>
            SeesAllCustomers || (EF.Property<int?>(row, "CustomerId") != null && SeenCustomers.Contains(EF.Property<int?>(row, "CustomerId")!.Value)));

    private void Invoke(string method, Type type, ModelBuilder builder) =>
        typeof(LogBookDb).GetMethod(method, System.Reflection.BindingFlags.Instance | System.Reflection.BindingFlags.NonPublic)!
            .MakeGenericMethod(type).Invoke(this, [builder]);

    // Filters guard reads only: an update of a detached foreign row or an insert under a foreign customer passes them.
    private void CheckChanges()
    {
        ChangeTracker.DetectChanges();
        foreach (var entry in ChangeTracker.Entries())
        {
            if (entry.State is not (EntityState.Added or EntityState.Modified or EntityState.Deleted))
            {
                continue;
            }

            if (_readOnly)
            {
                throw new InvalidOperationException("This context was opened for reading.");
            }

            // What was not loaded here has no original values of its own, so foreign rows cannot be told by them: see VisitIntake,
            // which loads the target under the viewer first.
            if (entry.Entity is AuditRow)
            {
                // Only the store writes them, for whoever acts.
                continue;
            }

            if (entry.Entity is ICustomerOwned or ICustomerMayOwn)
            {
                var property = entry.Property(nameof(ICustomerOwned.CustomerId));
                RequireSeen(entry.Entity, (int?)property.CurrentValue);
                if (entry.State != EntityState.Added)
                {
                    RequireSeen(entry.Entity, (int?)property.OriginalValue);
                }
            }
            else if (entry.Entity is CustomerRow customer && entry.State != EntityState.Added)
            {
                RequireSeen(customer, customer.Id);
            }
            else if (entry.Entity is CustomerRow && !SeesAllCustomers)
            {
                throw new CustomerWallException(nameof(CustomerRow));
            }

            if (entry is { State: EntityState.Modified, Entity: IVersioned versioned })
            {
                versioned.Version = (int)entry.Property(nameof(IVersioned.Version)).OriginalValue! + 1;
            }
        }
    }

    private void RequireSeen(object row, int? customerId)
    {
        if (!SeesAllCustomers && (customerId is not { } id || !SeenCustomers.Contains(id)))
        {
            throw new CustomerWallException(row.GetType().Name);
        }
    }

    // Contexts are pooled: the next one to take this one must not inherit what the last one saw.
    private void ForgetViewer()
    {
        SeesAllCustomers = false;
        SeenCustomers = [];
        _readOnly = false;
        _audit.Clear();
    }
}
