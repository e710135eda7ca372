using ClosedXML.Excel;

namespace LogBook.Application.Workbooks;

/// <summary>Writes rows of values to a sheet. Text stays text, whatever it looks like.</summary>
/// <remarks>
/// Never through <c>Value</c>, which guesses: "007" became a number and "1,5" a date. Widths come from the length of the texts,
/// because measuring letters needs a drawing library that servers do not have.
/// </remarks>
public static class SheetTable
{
    private const double Widest = 60;
    private const double Narrowest = 8;
    private const int LooksAt = 200;

    /// <summary>Writes a head and rows from a line on.</summary>
    public static void Write(IXLWorksheet sheet, int line, IReadOnlyList<string> head, IEnumerable<IReadOnlyList<object?>> rows, bool freeze = true)
    {
        var widths = new double[head.Count];
        for (var column = 0; column < head.Count; column++)
        {
            Put(sheet.Cell(line, column + 1), head[column]);
            widths[column] = head[column].Length + 2;
        }

        var heading = sheet.Range(line, 1, line, head.Count);
        heading.Style.Font.Bold = true;
        heading.Style.Fill.BackgroundColor = XLColor.FromArgb(0xEC, 0xEE, 0xF0);
        var at = line;
        foreach (var row in rows)
        {
            at++;
            for (var column = 0; column < row.Count; column++)
            {
                Put(sheet.Cell(at, column + 1), row[column]);
                if (at - line < LooksAt)
                {
                    widths[column] = Math.Max(widths[column], Length(row[column]) + 2);
                }
            }
        }

        for (var column = 0; column < widths.Length; column++)
        {
            sheet.Column(column + 1).Width = Math.Clamp(widths[column], Narrowest, Widest);
        }

        if (freeze)
        {
            sheet.SheetView.FreezeRows(line);
            if (at > line)
            {
                sheet.Range(line, 1, at, head.Count).SetAutoFilter();
            }
        }
    }

    /// <summary>Writes one value: text, number, day or wall time.</summary>
    public static void Put(IXLCell cell, object? value)
    {
        switch (value)
        {
            case null:
                break;
            case double number:
                cell.SetValue(number);
                break;
            case int number:
                cell.SetValue(number);
                break;
            case DateOnly day:
                cell.SetValue(day.ToDateTime(TimeOnly.MinValue));
                cell.Style.DateFormat.Format = "yyyy-mm-dd";
                break;
            case DateTime wall:
                cell.SetValue(wall);
                cell.Style.DateFormat.Format = "yyyy-mm-dd hh:mm";
                break;
            default:
                var text = SheetText.Clean(value.ToString());
                if (text.Length > 0)
                {
                    cell.SetValue(text);
                    if (SheetText.LooksLikeFormula(text))
                    {
                        // Stays text also for whoever edits the cell.
                        cell.Style.IncludeQuotePrefix = true;
                    }
                }

                break;
        }
    }

    private static int Length(object? value) => value switch
    {
        null => 0,
        DateOnly => 10,
        DateTime => 16,
        _ => Math.Min(value.ToString()!.Length, (int)Widest),
    };
}
