using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace LogBook.Application.Data;

/// <summary>What a refused save means, on either provider.</summary>
internal static class DatabaseErrors
{
    /// <summary>Whether a unique index refused the save.</summary>
    public static bool IsUniqueViolation(DbUpdateException exception) => exception.InnerException switch
    {
        SqliteException { SqliteExtendedErrorCode: 2067 or 1555 } => true,
        PostgresException { SqlState: PostgresErrorCodes.UniqueViolation } => true,
        _ => false,
    };
}
