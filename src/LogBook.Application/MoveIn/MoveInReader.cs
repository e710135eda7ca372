using System.Globalization;
using System.IO.Compression;
using System.Text;
using ClosedXML.Excel;
using CsvHelper;
using CsvHelper.Configuration;
using LogBook.Domain.Languages;

namespace LogBook.Application.MoveIn;

/// <summary>Reads a workbook or a CSV file as sheets of cells. Nothing is interpreted here, and no formula is worked out.</summary>
public static class MoveInReader
{
    /// <summary>Largest file that is read, bytes.</summary>
    public const int MostBytes = 20 * 1024 * 1024;

    /// <summary>Most rows of a sheet.</summary>
    public const int MostRows = 20_000;

    /// <summary>Most columns of a sheet.</summary>
    public const int MostColumns = 250;

    private const int LooksAtLines = 30;
    private static readonly char[] Delimiters = [';', '\t', ',', '|'];

    // A workbook is a zip file: what it unfolds to is looked at before it is unfolded.
    private const long MostUnfolded = 300L * 1024 * 1024;

    /// <summary>Reads a file.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="bytes">Its content.</param>
    /// <param name="language">Language of the refusal.</param>
    /// <returns>The sheets, or why it cannot be read.</returns>
    public static (IReadOnlyList<MoveInSheet> Sheets, string? Refusal) Read(string name, byte[] bytes, Language language)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        if (bytes.Length is 0 or > MostBytes)
        {
            return ([], MoveInTexts.TooLarge.In(language, MostBytes / 1024 / 1024));
        }

        try
        {
            var isZip = bytes.AsSpan().StartsWith("PK"u8);
            if (!isZip && bytes.AsSpan().Contains((byte)0))
            {
                // No text holds it: an older workbook, a picture, or text in a wide encoding.
                return ([], MoveInTexts.Unreadable.In(language, "NUL"));
            }

            var sheets = isZip ? Workbook(bytes) : Csv(name, bytes);
            return sheets is null || sheets.Any(sheet => sheet.Rows.Count > MostRows || sheet.Rows.Any(row => row.Count > MostColumns))
                ? ([], MoveInTexts.TooMany.In(language, MostRows, MostColumns))
                : (sheets, null);
        }
        catch (Exception unreadable) when (unreadable is not OutOfMemoryException)
        {
            // Whatever a foreign file makes the libraries stumble over: it cannot be read, and nothing was changed.
            return ([], MoveInTexts.Unreadable.In(language, unreadable.GetType().Name));
        }
    }

    // Null where a sheet is too large: told by its last row and column, before cells are made of it.
    private static List<MoveInSheet>? Workbook(byte[] bytes)
    {
        using (var zip = new ZipArchive(new MemoryStream(bytes)))
        {
            if (zip.Entries.Sum(entry => entry.Length) > MostUnfolded)
            {
                throw new InvalidDataException("The workbook unfolds to too much.");
            }
        }

        using var book = new XLWorkbook(new MemoryStream(bytes));
        return book.Worksheets.Any(sheet => sheet.LastRowUsed()?.RowNumber() > MostRows || sheet.LastColumnUsed()?.ColumnNumber() > MostColumns)
            ? null
            : [.. book.Worksheets.OrderBy(sheet => sheet.Position).Select(Sheet)];
    }

    private static MoveInSheet Sheet(IXLWorksheet sheet)
    {
        var last = sheet.LastCellUsed()?.Address;
        if (last is null)
        {
            return new MoveInSheet(sheet.Name, []);
        }

        var rows = new MoveInCell[sheet.LastRowUsed().RowNumber()][];
        var width = sheet.LastColumnUsed().ColumnNumber();
        for (var row = 0; row < rows.Length; row++)
        {
            rows[row] = new MoveInCell[width];
            for (var column = 0; column < width; column++)
            {
                rows[row][column] = Cell(sheet.Cell(row + 1, column + 1));
            }
        }

        return new MoveInSheet(sheet.Name, rows);
    }

    private static MoveInCell Cell(IXLCell cell)
    {
        // A formula counts with the value that was kept with it; it is not worked out again.
        if (cell.HasFormula)
        {
            return cell.CachedValue switch
            {
                double number => Number(cell, number),
                DateTime date => MoveInCell.Of(date),
                { } kept when double.TryParse(kept.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) => Number(cell, number),
                { } kept => new MoveInCell(kept.ToString()!.Trim()),
                _ => MoveInCell.Empty,
            };
        }

        return cell.DataType switch
        {
            XLDataType.Number when cell.TryGetValue(out double number) => Number(cell, number),
            XLDataType.DateTime when cell.TryGetValue(out DateTime date) => MoveInCell.Of(date),
            _ => new MoveInCell(cell.GetString().Trim()),
        };
    }

    // A sheet keeps "85 %" as 0.85 with a format: it is read as it is shown, since its column may tell no unit or another one.
    private static MoveInCell Number(IXLCell cell, double number) =>
        cell.Style.NumberFormat is { } format && (format.NumberFormatId is 9 or 10 || format.Format?.Contains('%', StringComparison.Ordinal) == true)
            ? new MoveInCell(Math.Round(number * 100, 10).ToString("R", CultureInfo.InvariantCulture) + " %")
            : MoveInCell.Of(number);

    private static List<MoveInSheet> Csv(string name, byte[] bytes)
    {
        var text = Decoded(bytes);
        using var reader = new StringReader(text);
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = DelimiterOf(text).ToString(),
            HasHeaderRecord = false,
            BadDataFound = null,
            MissingFieldFound = null,
            IgnoreBlankLines = false,
        };
        using var parser = new CsvParser(reader, configuration);
        var rows = new List<IReadOnlyList<MoveInCell>>();
        while (rows.Count <= MostRows && parser.Read())
        {
            rows.Add([.. parser.Record!.Select(field => new MoveInCell(field.Trim()))]);
        }

        return [new MoveInSheet(Path.GetFileNameWithoutExtension(name), rows)];
    }

    // The sign that stands most often in the line where it stands least: a decimal comma is missing in some line, a delimiter in none.
    private static char DelimiterOf(string text)
    {
        var lines = text.Split('\n', LooksAtLines + 1).Take(LooksAtLines).Where(line => !string.IsNullOrWhiteSpace(line)).Select(Unquoted).ToList();
        return lines.Count == 0 ? ',' : Delimiters.MaxBy(sign => (lines.Min(line => line.Count(letter => letter == sign)) * 1000) + lines.Sum(line => line.Count(letter => letter == sign)));
    }

    private static string Unquoted(string line) => string.Concat(line.Split('"').Where((_, place) => place % 2 == 0));

    // UTF-8 where it is that; otherwise the Western European code page in which older programs write.
    private static string Decoded(byte[] bytes)
    {
        try
        {
            return new UTF8Encoding(encoderShouldEmitUTF8Identifier: true, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }
}
