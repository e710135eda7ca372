using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Application.RecordPacks;

/// <summary>Product that came to the site or was added by hand.</summary>
internal static class StockTables
{
    public static RecordTable Deliveries(RecordWords words) => new(
        RecordTexts.Deliveries,
        [
            new(RecordTexts.Day, 1.2), new(RecordTexts.System, 0.8), new(RecordTexts.Drum, 1), new(RecordTexts.Product, 2), new(RecordTexts.Registration, 1.2), new(RecordTexts.Number, 0, IsFigure: true),
            new(RecordTexts.Unit, 0), new(RecordTexts.Amount, 1.1, IsFigure: true), new(RecordTexts.How, 2), new(RecordTexts.Lot, 1), new(RecordTexts.By, 1.4), new(RecordTexts.Visit, 0),
        ],
        [.. words.Records().SelectMany(pair => Entries(words, pair.Visit, pair.Record))]);

    private static IEnumerable<RecordRow> Entries(RecordWords words, PackVisit entry, Domain.Visits.VisitedSystem record)
    {
        var visit = entry.Visit;
        RecordRow Row(string drum, string? product, double? amount, string unit, Text how, string? lot, string? reason) => new(
        [
            words.DayOf(visit), record.System, drum, product is null ? "" : words.Product(product), product is not null && words.Pack.Firm.Products.TryGetValue(product, out var known) ? known.Registration ?? "" : "",
            amount, amount is null ? "" : Shown.Unit(unit, words.Language), amount is { } number ? Shown.Entered(number, unit, words.Language) : "",
            string.IsNullOrWhiteSpace(reason) ? words[how] : $"{words[how]} ({reason})", lot ?? "", words.People(visit), visit.Id.ToString(),
        ]);
        var system = words.HistoryOf(record.System)?.System;
        foreach (var drum in record.Drums)
        {
            var product = drum.ProductFound ?? (system is null ? null : PartsOnDay.DrumOn(system, drum.Drum, words.DayOf(visit))?.Product);
            if (drum.AddedL is > 0)
            {
                yield return Row(drum.Drum, product, drum.AddedL, "L", RecordTexts.Added, drum.Lot, null);
            }

            if (drum.Swapped == true)
            {
                yield return Row(drum.Drum, product, null, "L", RecordTexts.Swapped, drum.Lot, null);
            }

            if (drum.RemovedL is > 0)
            {
                yield return Row(drum.Drum, product, drum.RemovedL, "L", RecordTexts.Removed, drum.Lot, null);
            }
        }

        foreach (var addition in record.Additions)
        {
            yield return Row(addition.To ?? "", addition.Product, addition.Amount, addition.Unit, RecordTexts.ByHand, null, addition.Reason);
        }
    }
}
