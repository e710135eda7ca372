using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LogBook.Testing.Databases;

/// <summary>Counts statements, because counts do not depend on how busy the machine is.</summary>
public sealed class StatementCounter : DbCommandInterceptor
{
    private int _count;

    /// <summary>Statements since the last reset.</summary>
    public int Count => _count;

    /// <summary>Begins anew.</summary>
    public void Reset() => _count = 0;

    /// <inheritdoc />
    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
    {
        Interlocked.Increment(ref _count);
        return new(result);
    }

    /// <inheritdoc />
    public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        Interlocked.Increment(ref _count);
        return new(result);
    }
}
