using System.Collections.Concurrent;
using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LogBook.Testing.Databases;

/// <summary>Counts statements, because counts do not depend on how busy the machine is.</summary>
public sealed class StatementCounter : DbCommandInterceptor
{
    private readonly ConcurrentQueue<string> _texts = [];

    /// <summary>Statements since the last reset, as sent.</summary>
    public IReadOnlyCollection<string> Texts => _texts;

    /// <summary>How many.</summary>
    public int Count => _texts.Count;

    /// <summary>Begins anew.</summary>
    public void Reset() => _texts.Clear();

    /// <inheritdoc />
    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
    {
        _texts.Enqueue(command.CommandText);
        return new(result);
    }

    /// <inheritdoc />
    public override ValueTask<InterceptionResult<int>> NonQueryExecutingAsync(
        DbCommand command, CommandEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        _texts.Enqueue(command.CommandText);
        return new(result);
    }
}
