using LogBook.Application.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace LogBook.Migrations.Sqlite;

/// <summary>For <c>dotnet ef migrations add … --project src/LogBook.Migrations.Sqlite</c>; no database is opened.</summary>
public sealed class DesignTimeFactory : IDesignTimeDbContextFactory<LogBookDb>
{
    /// <inheritdoc />
    public LogBookDb CreateDbContext(string[] args)
    {
        var builder = new DbContextOptionsBuilder<LogBookDb>();
        builder.UseLogBook(new LogBookOptions { Database = "design-time.db" });
        return new LogBookDb(builder.Options);
    }
}
