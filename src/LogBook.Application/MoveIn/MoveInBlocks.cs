namespace LogBook.Application.MoveIn;

/// <summary>Finds the headings of a sheet and what stands under each.</summary>
/// <remarks>
/// Data begin where a row has a day in it. The rows right above, up to three, are the heading, apart from titles (one text for
/// the whole row). Of two heading rows the upper one names groups: its text holds for the columns up to the next one. Where a
/// heading comes again further down, a new block begins, because columns may have moved.
/// </remarks>
public static class MoveInBlocks
{
    private const int MostHeadRows = 3;
    private const int FewestHeadings = 2;

    /// <summary>The blocks of a sheet from top to bottom; none where no row has a day under a heading.</summary>
    public static IReadOnlyList<MoveInBlock> Of(MoveInSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var blocks = new List<MoveInBlock>();
        for (var row = 1; row < sheet.Rows.Count; row++)
        {
            var (from, rows) = IsData(sheet, row) && !IsData(sheet, row - 1) ? HeadAbove(sheet, row) : (0, 0);
            if (rows == 0)
            {
                continue;
            }

            var headings = HeadingsOf(sheet, from, rows);
            if (blocks.Count > 0)
            {
                // Words between the rows are no heading unless they are mostly the same words as before.
                var named = headings.Where(heading => heading.Length > 0).ToList();
                if (named.Count(heading => blocks[0].Headings.Contains(heading, StringComparer.OrdinalIgnoreCase)) * 2 < named.Count)
                {
                    continue;
                }

                blocks[^1] = blocks[^1] with { LastRow = from - 1 };
            }

            blocks.Add(new MoveInBlock(sheet, from, rows, sheet.Rows.Count - 1, headings));
        }

        return blocks;
    }

    private static bool IsData(MoveInSheet sheet, int row)
    {
        if (row < 0)
        {
            return false;
        }

        for (var column = 0; column < sheet.Rows[row].Count; column++)
        {
            var cell = sheet.Rows[row][column];
            if (cell.Date is not null || DayReading.Parse(cell).Any)
            {
                return true;
            }
        }

        return false;
    }

    private static (int From, int Rows) HeadAbove(MoveInSheet sheet, int data)
    {
        var from = data;
        while (from > 0 && data - from < MostHeadRows && IsHeading(sheet, from - 1) && (from == data || ReachesAcross(sheet, from - 1, data - 1)))
        {
            from--;
        }

        return (from, data - from);
    }

    // A line such as "Customer: …" stands over the first columns only; groups of columns reach over most of them.
    private static bool ReachesAcross(MoveInSheet sheet, int row, int below)
    {
        static int Last(IReadOnlyList<MoveInCell> cells) => Enumerable.Range(0, cells.Count).LastOrDefault(column => !cells[column].IsEmpty, -1);
        return Last(sheet.Rows[row]) * 2 >= Last(sheet.Rows[below]);
    }

    // Words without numbers, in at least two columns that differ: one text for the whole row is a title.
    private static bool IsHeading(MoveInSheet sheet, int row)
    {
        var cells = sheet.Rows[row].Where(cell => !cell.IsEmpty).ToList();
        return cells.Count >= FewestHeadings && cells.TrueForAll(cell => cell.Number is null && cell.Date is null && (cell.Text.Any(char.IsLetter) || !cell.Text.Any(char.IsDigit)))
            && cells.Select(cell => cell.Text).Distinct(StringComparer.OrdinalIgnoreCase).Count() >= FewestHeadings;
    }

    private static List<string> HeadingsOf(MoveInSheet sheet, int from, int rows)
    {
        var width = Enumerable.Range(from, rows + 1).Where(row => row < sheet.Rows.Count).Max(row => sheet.Rows[row].Count);
        var parts = new List<string>[width];
        for (var row = from; row < from + rows; row++)
        {
            var group = "";
            for (var column = 0; column < width; column++)
            {
                var text = sheet.At(row, column).Text.Trim();
                group = text.Length > 0 ? text : group;

                // The last row names columns, those above it groups of columns.
                var own = row == from + rows - 1 ? text : group;
                (parts[column] ??= []).AddRange(own.Length > 0 ? [own] : []);
            }
        }

        return [.. parts.Select((words, column) => sheet.At(from + rows - 1, column).IsEmpty && Above(sheet, from, rows, column) ? "" : string.Join(" · ", words.Distinct(StringComparer.OrdinalIgnoreCase)))];
    }

    // A column with nothing in any heading row of its own is no column, however far the group before it reaches.
    private static bool Above(MoveInSheet sheet, int from, int rows, int column)
    {
        for (var row = from; row < from + rows; row++)
        {
            if (!sheet.At(row, column).IsEmpty)
            {
                return false;
            }
        }

        return true;
    }
}
