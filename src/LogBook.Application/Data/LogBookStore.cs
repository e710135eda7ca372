using LogBook.Application.Audit;
using LogBook.Application.Data.Conventions;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace LogBook.Application.Data;

/// <summary>
/// The one way to the database: says who looks, reads without tracking, and writes one unit of work at a time.
/// A unit of work is retried as a whole with a fresh context; it must do nothing that cannot be done twice.
/// </summary>
/// <remarks>
/// SQLite lets one writer in. Waiting in the provider costs sleeps of 150 ms, so writers of one process queue at a gate; a second
/// process (the command beside the server) still meets the lock, for which BEGIN IMMEDIATE and the retry are.
/// </remarks>
public sealed class LogBookStore(IDbContextFactory<LogBookDb> contexts, TimeProvider clock, LogBookOptions options) : IDisposable
{
    private const int MostTries = 5;
    private readonly SemaphoreSlim _gate = new(1, 1);
    private readonly AsyncLocal<bool> _isWriting = new();

    /// <summary>Reads. What comes back is not tracked and can not be saved.</summary>
    public async Task<T> ReadAsync<T>(Viewer viewer, Func<LogBookDb, Task<T>> read, CancellationToken cancellationToken = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        db.LookAs(viewer, readOnly: true);
        db.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
        return await read(db);
    }

    /// <summary>Writes one unit of work in one transaction, with its audit entries; changes are saved at its end.</summary>
    public Task WriteAsync(Viewer viewer, Func<LogBookDb, Task> write, CancellationToken cancellationToken = default) =>
        WriteAsync(
            viewer,
            async db =>
            {
                await write(db);
                return true;
            },
            cancellationToken);

    /// <summary>Writes one unit of work in one transaction, with its audit entries; changes are saved at its end.</summary>
    /// <returns>What the unit of work returned, once it is committed.</returns>
    public async Task<T> WriteAsync<T>(Viewer viewer, Func<LogBookDb, Task<T>> write, CancellationToken cancellationToken = default)
    {
        if (_isWriting.Value)
        {
            throw new InvalidOperationException("A unit of work is already being written here; a second one would wait for the first for ever.");
        }

        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return await WriteOnceAsync(viewer, write, cancellationToken);
            }
            catch (DbUpdateException exception) when (attempt < MostTries && DatabaseErrors.IsUniqueViolation(exception))
            {
                // Two found nothing under a key and both added it, as PostgreSQL lets them run beside each other. The other one has committed, or this would still wait: done again at once, it finds what was added.
            }
            catch (Exception exception) when (attempt < MostTries && IsPassing(exception))
            {
                await Task.Delay(TimeSpan.FromMilliseconds(10 * (1 << attempt)), clock, cancellationToken);
            }
        }
    }

    /// <inheritdoc />
    public void Dispose() => _gate.Dispose();

    private async Task<T> WriteOnceAsync<T>(Viewer viewer, Func<LogBookDb, Task<T>> write, CancellationToken cancellationToken)
    {
        if (options.IsSqlite)
        {
            await _gate.WaitAsync(cancellationToken);
        }

        _isWriting.Value = true;
        try
        {
            await using var db = await contexts.CreateDbContextAsync(cancellationToken);
            db.LookAs(viewer, readOnly: false);

            // On SQLite this is BEGIN IMMEDIATE: reading first and writing later would fail under a second writer.
            await using var transaction = await db.Database.BeginTransactionAsync(cancellationToken);
            var result = await write(db);
            await db.SaveChangesAsync(cancellationToken);
            await AuditChain.AppendAsync(db, viewer, Utc.Now(clock), db.TakeAudit(), cancellationToken);
            await transaction.CommitAsync(cancellationToken);
            return result;
        }
        finally
        {
            _isWriting.Value = false;
            if (options.IsSqlite)
            {
                _gate.Release();
            }
        }
    }

    // Busy or locked on SQLite, serialization failure or deadlock on PostgreSQL: the same work may succeed a moment later.
    private static bool IsPassing(Exception exception) => exception switch
    {
        SqliteException sqlite => sqlite.SqliteErrorCode is 5 or 6,
        PostgresException postgres => postgres.SqlState is PostgresErrorCodes.SerializationFailure or PostgresErrorCodes.DeadlockDetected,

        // Somebody was faster: done again, the unit of work sees their version and says so.
        DbUpdateConcurrencyException => true,
        DbUpdateException { InnerException: { } inner } => IsPassing(inner),
        _ => false,
    };
}
