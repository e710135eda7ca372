using System.Reflection;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.EntityFrameworkCore.Migrations.Internal;

namespace LogBook.Application.Tests.Data;

#pragma warning disable EF1001 // The only place where a migration can be added without an assembly of its own.
internal sealed class OneMigrationMore(
    ICurrentDbContext currentContext, IDbContextOptions options, IMigrationsIdGenerator idGenerator, IDiagnosticsLogger<DbLoggerCategory.Migrations> logger)
    : MigrationsAssembly(currentContext, options, idGenerator, logger)
{
    public override IReadOnlyDictionary<string, TypeInfo> Migrations => new SortedList<string, TypeInfo>(base.Migrations.ToDictionary(), StringComparer.Ordinal)
    {
        ["29990101000000_OneMore"] = typeof(OneMore).GetTypeInfo(),
    };

    [Migration("29990101000000_OneMore")]
    private sealed class OneMore : Migration
    {
        protected override void Up(MigrationBuilder migrationBuilder) => migrationBuilder.Sql("CREATE TABLE OneMore (Id INTEGER PRIMARY KEY)");
    }
}
#pragma warning restore EF1001
