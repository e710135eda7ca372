using LogBook.Application.Data;
using LogBook.Domain.Visits;

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
    public static Task InsertAsync(LogBookDb db, IEnumerable<ReadingRow> rows, CancellationToken cancellationToken)
    {
        ManyRows.Add(db, rows);
        return db.SaveChangesAsync(cancellationToken);
    }
}
