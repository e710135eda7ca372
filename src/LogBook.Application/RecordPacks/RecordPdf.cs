using System.Globalization;
using LogBook.Domain.Languages;
using LogBook.Papers;

namespace LogBook.Application.RecordPacks;

/// <summary>A record pack on paper.</summary>
internal static class RecordPdf
{
    public static byte[] Make(RecordPack pack, IReadOnlyList<RecordTable> tables, Language language)
    {
        var words = new RecordWords(pack, language);
        using var paper = new Paper(new PaperFrame
        {
            Title = $"{words[RecordTexts.Title]} {pack.Site.Code}",
            HeaderLeft = $"{words[RecordTexts.Title]} · {pack.Site.Code} {pack.Site.Name}",
            HeaderRight = words[RecordTexts.FromTo, words.Day(pack.From), words.Day(pack.To)],
            FooterLeft = $"{pack.FirmName} · {words[RecordTexts.MadeAt]} {words.Moment(pack.MadeAt)}",
            PageOf = words[RecordTexts.PageOf, "{0}", "{1}"],
            Language = language switch { Language.Spanish => "es", Language.Portuguese => "pt", _ => "en" },
            Author = pack.FirmName,
            MadeAt = pack.MadeAt,
            Landscape = true,
        });
        Front(paper, words, tables);
        foreach (var table in tables.Where(table => table.IsOnPaper))
        {
            paper.PageBreak().Heading(words[table.Title], 1);
            if (table.Intro is { } intro)
            {
                paper.Small(words[intro]);
            }

            var shown = table.Columns.Select((column, place) => (column, place)).Where(pair => pair.column.Weight > 0).ToList();
            paper.Table([.. shown.Select(pair => new PaperColumn(words[pair.column.Title], pair.column.Weight, pair.column.IsFigure ? PaperAlign.Right : PaperAlign.Left))], Rows(table, [.. shown.Select(pair => pair.place)], words), words[RecordTexts.Nothing]);
        }

        return paper.ToBytes();
    }

    private static void Front(Paper paper, RecordWords words, IReadOnlyList<RecordTable> tables)
    {
        var pack = words.Pack;
        paper.Heading($"{words[RecordTexts.Title]}: {pack.Site.Code} {pack.Site.Name}", 1);
        paper.KeyValues(
        [
            (words[RecordTexts.Firm], pack.FirmName),
            (words[Domain.Summaries.SummaryTexts.Customer], pack.CustomerName),
            (words[RecordTexts.Address], pack.Site.Address ?? "–"),
            (words[RecordTexts.Period], words[RecordTexts.FromTo, words.Day(pack.From), words.Day(pack.To)]),
            (words[RecordTexts.JudgedOn], words.Day(pack.JudgedOn)),
            (words[RecordTexts.MadeAt], $"{words.Moment(pack.MadeAt)} ({pack.Site.TimeZone})"),
            (words[RecordTexts.MadeBy], pack.MadeBy),
            (words[RecordTexts.Photos], PhotoTable.CountsOf(words)),
            (words[RecordTexts.Keep], KeepWords(words)),
            .. pack.Hold is { IsHeld: true } hold ? [(words[RecordTexts.Hold], (string?)words[RecordTexts.HoldSince, words.Day(words.DayOf(hold.At)), hold.Who, hold.Why])] : Array.Empty<(string, string?)>(),
        ]);
        paper.Note(words[RecordTexts.WhatItIs]);
        paper.Small(words[RecordTexts.NotInIt]);
        paper.Heading(words[RecordTexts.Index]);
        paper.Table(
            [new(words[RecordTexts.Part], 3), new(words[RecordTexts.Entries], 1, PaperAlign.Right)],
            tables.Where(table => table.IsOnPaper).Select(table => PaperRow.Of(words[table.Title], table.Rows.Count.ToString(CultureInfo.InvariantCulture))));
    }

    private static string KeepWords(RecordWords words) => words.Pack.Keeping is { } keeping ? KeepTexts.WordsOf(keeping, words.Language) : "–";

    private static IEnumerable<PaperRow> Rows(RecordTable table, int[] places, RecordWords words)
    {
        string? group = null;
        foreach (var row in table.Rows)
        {
            if (row.Group is { } own && own != group)
            {
                yield return PaperRow.Group(own);
            }

            group = row.Group;
            yield return PaperRow.Of([.. places.Select(place => new PaperCell(CellText(row.Cells[place], words)))]);
        }
    }

    private static string CellText(object? cell, RecordWords words) => cell switch
    {
        null => "",
        double number => Shown.Entered(number, words.Language),
        int number => number.ToString(CultureInfo.InvariantCulture),
        DateOnly day => words.Day(day),
        DateTime wall => words.Day(DateOnly.FromDateTime(wall)) + " " + wall.ToString("HH:mm", CultureInfo.InvariantCulture),
        _ => cell.ToString()!,
    };
}
