using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LogBook.Testing.Readers;

/// <summary>Counts statements sent to the database.</summary>
public sealed class CommandCounter : DbCommandInterceptor
{
    public List<string> Statements { get; } = [];

    public override ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
    {
        Statements.Add(command.CommandText);
        return base.ReaderExecutingAsync(command, eventData, result, cancellationToken);
    }
}
