using ClosedXML.Excel;
using LogBook.Application.Workbooks;
using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>A record pack as a workbook: one sheet for each part, values only.</summary>
internal static class RecordWorkbook
{
    public static byte[] Make(RecordPack pack, IReadOnlyList<RecordTable> tables, Language language)
    {
        var words = new RecordWords(pack, language);
        using var book = new XLWorkbook();
        book.Properties.Author = SheetText.Clean(pack.FirmName);
        book.Properties.Title = SheetText.Clean($"{words[RecordTexts.Title]} {pack.Site.Code}");
        book.Properties.Created = pack.MadeAt;
        book.Properties.Modified = pack.MadeAt;
        Front(book.AddWorksheet(SheetText.Name(words[RecordTexts.Index])), words, tables);
        foreach (var table in tables)
        {
            var sheet = book.AddWorksheet(SheetText.Name(words[table.Title]));
            SheetTable.Write(sheet, 1, [.. table.Columns.Select(column => words[column.Title])], table.Rows.Select(row => row.Cells));
        }

        using var buffer = new MemoryStream();
        book.SaveAs(buffer);
        return buffer.ToArray();
    }

    private static void Front(IXLWorksheet sheet, RecordWords words, IReadOnlyList<RecordTable> tables)
    {
        var pack = words.Pack;
        (Text Name, object? Value)[] facts =
        [
            (RecordTexts.Title, $"{pack.Site.Code} {pack.Site.Name}"), (RecordTexts.Firm, pack.FirmName), (Domain.Summaries.SummaryTexts.Customer, pack.CustomerName), (RecordTexts.Address, pack.Site.Address ?? ""),
            (RecordTexts.Period, words[RecordTexts.FromTo, words.Day(pack.From), words.Day(pack.To)]), (RecordTexts.JudgedOn, pack.JudgedOn), (RecordTexts.MadeAt, words.Wall(pack.MadeAt)), (RecordTexts.MadeBy, pack.MadeBy),
            (RecordTexts.Photos, PhotoTable.CountsOf(words)),
        ];
        var line = 1;
        foreach (var (name, value) in facts)
        {
            SheetTable.Put(sheet.Cell(line, 1), words[name]);
            SheetTable.Put(sheet.Cell(line++, 2), value);
        }

        SheetTable.Put(sheet.Cell(++line, 1), words[RecordTexts.WhatItIs]);
        SheetTable.Put(sheet.Cell(++line, 1), words[RecordTexts.NotInIt]);
        SheetTable.Write(sheet, line + 2, [words[RecordTexts.Part], words[RecordTexts.Entries]], tables.Select(table => (IReadOnlyList<object?>)[words[table.Title], table.Rows.Count]), freeze: false);
        sheet.Column(1).Width = 28;
        sheet.Column(2).Width = 60;
    }
}
