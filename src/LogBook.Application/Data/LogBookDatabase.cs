using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Data;

/// <summary>How a context reaches its database: one model, two providers, two sets of migrations.</summary>
public static class LogBookDatabase
{
    /// <summary>Name of the project with the migrations for SQLite.</summary>
    public const string SqliteMigrations = "LogBook.Migrations.Sqlite";

    /// <summary>Name of the project with the migrations for PostgreSQL.</summary>
    public const string PostgreSqlMigrations = "LogBook.Migrations.PostgreSql";

    /// <summary>Sets provider, migrations and connection.</summary>
    public static DbContextOptionsBuilder UseLogBook(this DbContextOptionsBuilder builder, LogBookOptions options) => options.IsPostgreSql
        ? builder.UseNpgsql(options.ConnectionString, npgsql => npgsql.MigrationsAssembly(PostgreSqlMigrations))
        : builder.UseSqlite(options.ConnectionString, sqlite => sqlite.MigrationsAssembly(SqliteMigrations)).AddInterceptors(new SqliteConnectionSettings());
}
