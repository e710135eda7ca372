namespace LogBook.Application.RecordPacks;

/// <summary>All parts of a record pack in their order. Pure: the same pack and language give the same tables.</summary>
public static class RecordTables
{
    /// <summary>The parts.</summary>
    public static IReadOnlyList<RecordTable> Of(RecordPack pack, Domain.Languages.Language language)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var words = new RecordWords(pack, language);
        return
        [
            ClockTables.Summary(words),
            ClockTables.Gaps(words),
            NoticeTable.Of(words),
            PlanTable.Of(words),
            VisitTables.Visits(words),
            VisitTables.Results(words),
            VisitTables.Counters(words),
            VisitTables.Everything(words),
            ActionTable.Of(words),
            StockTables.Deliveries(words),
            PeopleTables.Certificates(words),
            PeopleTables.Instruments(words),
            AmendmentTable.Of(words),
            PhotoTable.Of(words),
            ClockTables.Spells(words),
        ];
    }
}
