using LogBook.Application.Data;
using LogBook.Domain.History;

namespace LogBook.Application.Sites;

/// <summary>The firm's set-up: customers, sites, systems, people, products, instruments, lots, rules and tests.</summary>
public sealed class SetUpStore
{
    /// <summary>The set-up as far as the viewer sees it, without retired records unless asked for.</summary>
    public Task<FirmSetUp> FirmAsync(Viewer viewer, bool withRetired = false, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>The firm's own row, or null before the first run.</summary>
    public Task<FirmRow?> FirmRowAsync(Viewer viewer, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Saves a record of the exchange format.</summary>
    /// <param name="viewer">Who saves.</param>
    /// <param name="record">A customer, site, system, person, product, instrument, lot, rule or test.</param>
    /// <param name="expectedVersion">Version that was read; 0 for a new record.</param>
    /// <param name="cancellationToken">Stops.</param>
    public Task<SaveOutcome> SaveAsync<T>(Viewer viewer, T record, int expectedVersion, CancellationToken cancellationToken = default)
        where T : class => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Takes a record out of use.</summary>
    public Task<SaveOutcome> RetireAsync(Viewer viewer, SetUpKind kind, string code, string why, string? site = null, DateOnly? from = null, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Takes a retired record into use again.</summary>
    public Task<SaveOutcome> RestoreAsync(Viewer viewer, SetUpKind kind, string code, string why, string? site = null, DateOnly? from = null, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Records of a kind, by code, retired ones too.</summary>
    public Task<IReadOnlyList<SetUpEntry>> ListAsync(Viewer viewer, SetUpKind kind, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>One record, or null.</summary>
    public Task<SetUpEntry?> FindAsync(Viewer viewer, SetUpKind kind, string code, string? site = null, DateOnly? from = null, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
