using System.Globalization;
using System.Text;

namespace LogBook.Domain.Tests.Reference;

/// <summary>Reads the reference tables that lie beside the tests.</summary>
public static class ReferenceTable
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Reference");

    public static IReadOnlyList<ReferenceRow> Rows(string file) =>
    [
        .. Lines(file).Select(cells => new ReferenceRow(
            cells[0], cells[1], cells[2], cells[3], cells[4],
            cells[5].Length == 0 ? null : double.Parse(cells[5], CultureInfo.InvariantCulture),
            cells[6], cells[7], cells[8])),
    ];

    /// <summary>Cells of every line after the heading.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Lines(string file) =>
        [.. File.ReadLines(Path.Combine(Folder, file)).Skip(1).Where(line => line.Length > 0).Select(Cells)];

    /// <summary>Names of the tables that lie there.</summary>
    public static IReadOnlyList<string> Files => [.. Directory.EnumerateFiles(Folder, "*.csv").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    /// <summary>Cells of the heading.</summary>
    public static IReadOnlyList<string> Headings(string file) => Cells(File.ReadLines(Path.Combine(Folder, file)).First());

    /// <summary>Every line after the heading as a cell by its heading.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Records(string file)
    {
        var headings = Headings(file);
        return [.. Lines(file).Select(cells => headings.Zip(cells).ToDictionary(cell => cell.First, cell => cell.Second))];
    }

    /// <summary>One column as numbers, empty cells left out.</summary>
    public static double[] Column(string file, string heading)
    {
        var index = Headings(file).ToList().IndexOf(heading);
        return [.. Lines(file).Select(cells => cells[index]).Where(cell => cell.Length > 0).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
    }

    private static IReadOnlyList<string> Cells(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                cell.Append(line[++i]);
            }
            else if (line[i] == '"')
            {
                quoted = !quoted;
            }
            else if (line[i] == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(line[i]);
            }
        }

        cells.Add(cell.ToString());
        return cells;
    }
}
