using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace LogBook.Application.Data;

/// <summary>Inserts plain rows in numbers: readings of an import, figures of an assessment.</summary>
internal static class ManyRows
{
    /// <summary>Puts rows into the unit of work that nothing else in it refers to; their keys are not read back.</summary>
    /// <remarks>
    /// An import brings tens of thousands. On SQLite one prepared statement does it in a fraction of the time that tracking
    /// each row would take; columns and conversions come from the model, so that both ways write the same. PostgreSQL is sent batches
    /// when changes are saved. The wall is the caller's: rows carry the customer of what was loaded under the viewer.
    /// </remarks>
    public static void Add<TRow>(LogBookDb db, IEnumerable<TRow> rows)
        where TRow : class
    {
        if (!db.Database.IsSqlite())
        {
            db.AddRange(rows);
            return;
        }

        var table = db.Model.FindEntityType(typeof(TRow))!;
        IProperty[] columns = [.. table.GetProperties().Where(property => !property.IsPrimaryKey())];
        using var command = db.Database.GetDbConnection().CreateCommand();
        command.Transaction = db.Database.CurrentTransaction?.GetDbTransaction();
#pragma warning disable CA2100 // Names come from the model.
        command.CommandText =
            $"INSERT INTO \"{table.GetTableName()}\" ({string.Join(", ", columns.Select(c => $"\"{c.GetColumnName()}\""))}) VALUES ({string.Join(", ", columns.Select(c => "$" + c.Name))})";
#pragma warning restore CA2100
        var values = Array.ConvertAll(columns, column =>
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = "$" + column.Name;
            command.Parameters.Add(parameter);
            return (Parameter: (DbParameter)parameter, Get: column.GetGetter(), Convert: column.GetTypeMapping().Converter?.ConvertToProvider);
        });
        foreach (var row in rows)
        {
            foreach (var (parameter, get, convert) in values)
            {
                var value = get.GetClrValue(row);
                parameter.Value = value is null ? DBNull.Value : convert is null ? value : convert(value);
            }

            command.ExecuteNonQuery();
        }
    }
}
