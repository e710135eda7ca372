using System.Globalization;

namespace LogBook.Application.MoveIn;

/// <summary>One sheet of a file: rows of cells as they stand there.</summary>
/// <param name="Name">Name of the sheet; of a CSV file, its own name.</param>
/// <param name="Rows">Rows from the first on; a row may be shorter than others.</param>
public sealed record MoveInSheet(string Name, IReadOnlyList<IReadOnlyList<MoveInCell>> Rows)
{
    /// <summary>The cell at a row and column, both from 0; empty where there is none.</summary>
    public MoveInCell At(int row, int column) => row >= 0 && row < Rows.Count && column >= 0 && column < Rows[row].Count ? Rows[row][column] : MoveInCell.Empty;

    /// <summary>Address of a cell as spreadsheets write it, from row and column counted from 0: "B7".</summary>
    public static string Address(int row, int column) => Letters(column) + (row + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>Letters of a column counted from 0: "A", "Z", "AA".</summary>
    public static string Letters(int column)
    {
        var letters = "";
        for (var rest = column + 1; rest > 0; rest = (rest - 1) / 26)
        {
            letters = (char)('A' + ((rest - 1) % 26)) + letters;
        }

        return letters;
    }
}
