using System.Data.Common;
using LogBook.Application.Data;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using Microsoft.EntityFrameworkCore.Storage;

namespace LogBook.Application.Visits;

/// <summary>Makes the narrow rows of a visit's readings from its document.</summary>
internal static class ReadingRows
{
    /// <summary>Rows of every reading, in the order of the document.</summary>
    public static IEnumerable<ReadingRow> Of(VisitRow row, Visit visit, Func<string, int> systemId) =>
        visit.Systems.SelectMany(record => record.Readings.Select((reading, place) => new ReadingRow
        {
            CustomerId = row.CustomerId,
            VisitRowId = row.Id,
            SystemId = systemId(record.System),
            Test = reading.Test,
            SampleAt = reading.At,
            Source = reading.Source,
            Phase = reading.Phase,
            ArrivedAt = row.ArrivedAt,
            Value = reading.NotQuantifiable == true ? null : reading.Value ?? (reading.Drops * reading.PerDrop),
            Unit = reading.Unit,
            Basis = reading.Basis,
            Qualifier = reading.Qualifier,
            NotTaken = reading.NotTaken,
            Instrument = reading.Instrument,
            Lot = reading.Lot,
            Place = place,
        }));

    /// <summary>Inserts rows whose visits were loaded under the viewer.</summary>
    /// <remarks>
    /// An import brings tens of thousands. On SQLite one prepared statement does it in a fraction of the time that tracking
    /// each row would take; columns and conversions come from the model, so that both ways write the same. PostgreSQL is sent batches.
    /// </remarks>
    public static async Task InsertAsync(LogBookDb db, IEnumerable<ReadingRow> rows, CancellationToken cancellationToken)
    {
        if (!db.Database.IsSqlite())
        {
            db.Readings.AddRange(rows);
            await db.SaveChangesAsync(cancellationToken);
            return;
        }

        var table = db.Model.FindEntityType(typeof(ReadingRow))!;
        IProperty[] columns = [.. table.GetProperties().Where(property => !property.IsPrimaryKey())];
        await using var command = db.Database.GetDbConnection().CreateCommand();
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

            await command.ExecuteNonQueryAsync(cancellationToken);
        }
    }
}
