using LogBook.Application.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace LogBook.Migrations.PostgreSql;

/// <summary>For <c>dotnet ef migrations add … --project src/LogBook.Migrations.PostgreSql</c>; no database is opened.</summary>
public sealed class DesignTimeFactory : IDesignTimeDbContextFactory<LogBookDb>
{
    /// <inheritdoc />
    public LogBookDb CreateDbContext(string[] args)
    {
        var builder = new DbContextOptionsBuilder<LogBookDb>();
        builder.UseLogBook(new LogBookOptions { Database = "Host=localhost;Database=design-time" });
        return new LogBookDb(builder.Options);
    }
}
