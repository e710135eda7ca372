using PdfSharp.Drawing;

namespace LogBook.Papers.Layout;

/// <summary>Widths, wrapping and drawing of one table.</summary>
internal sealed class PaperTable
{
    private const int MostHeadLines = 5;
    private const double TickRoom = 13;

    private readonly IReadOnlyList<PaperColumn> _columns;
    private readonly double[] _widths;
    private readonly double _whole;
    private readonly PaperText _body;
    private readonly PaperText _bold;
    private readonly PaperText _small;
    private readonly PaperText _smallBold;
    private readonly double _pad;
    private readonly List<List<string>> _head;

    public PaperTable(IReadOnlyList<PaperColumn> columns, double width, PaperText body, PaperText bold, PaperText small, PaperText smallBold, double pad)
    {
        _columns = columns;
        _whole = width;
        _body = body;
        _bold = bold;
        _small = small;
        _smallBold = smallBold;
        _pad = pad;
        var weights = columns.Sum(column => column.Weight);
        _widths = [.. columns.Select(column => width * column.Weight / weights)];
        _head = [.. columns.Select((column, index) => smallBold.Wrap(column.Title, Inside(index)).Take(MostHeadLines).ToList())];
        HeadHeight = (_head.Max(lines => lines.Count) * smallBold.LineHeight) + (2 * pad);
    }

    public double HeadHeight { get; }

    public double LineHeight => _body.LineHeight;

    public MeasuredRow Measure(PaperRow row)
    {
        var cells = row.IsGroup
            ? [_bold.Wrap(row.Cells[0].Text, _whole - (2 * _pad))]
            : row.Cells.Take(_columns.Count).Select((cell, index) => Style(cell).Wrap(cell.Text, Inside(index) - (cell.Tick is null ? 0 : TickRoom))).ToList();
        return new MeasuredRow(row, cells, row.Note is null ? [] : _small.Wrap(row.Note, _whole - (6 * _pad)));
    }

    public double Height(MeasuredRow row) => (row.LineCount * LineHeight) + (2 * _pad);

    public void DrawHead(PaperSheet sheet, double x, double y, XBrush ink, XBrush shade)
    {
        sheet.Fill(x, y, _whole, HeadHeight, shade);
        for (var index = 0; index < _columns.Count; index++)
        {
            for (var line = 0; line < _head[index].Count; line++)
            {
                sheet.Text(_head[index][line], _smallBold, ink, x + Shift(index, _head[index][line], _smallBold), y + _pad + (line * _smallBold.LineHeight));
            }

            x += _widths[index];
        }
    }

    public void Draw(PaperSheet sheet, MeasuredRow row, int from, int count, double x, double y, XBrush ink, XBrush quiet, XBrush shade)
    {
        if (row.Row.IsGroup)
        {
            sheet.Fill(x, y, _whole, (count * LineHeight) + (2 * _pad), shade);
        }

        var left = x;
        for (var index = 0; index < row.Cells.Count; index++)
        {
            var cell = row.Row.Cells[index];
            if (cell.Tick is { } ticked && from == 0)
            {
                sheet.Text(ticked ? "\u2611" : "\u2610", _bold, ink, left + Shift(index, "", _body), y + _pad);
            }

            for (var line = from; line < Math.Min(from + count, row.Cells[index].Count); line++)
            {
                var text = row.Cells[index][line];
                var shift = row.Row.IsGroup ? _pad : Shift(index, text, Style(cell)) + (cell.Tick is null ? 0 : TickRoom);
                sheet.Text(text, Style(cell), ink, left + shift, y + _pad + ((line - from) * LineHeight));
            }

            left += _widths[index];
        }

        for (var line = Math.Max(from, row.CellLines); line < from + count; line++)
        {
            sheet.Text(row.Note[line - row.CellLines], _small, quiet, x + (4 * _pad), y + _pad + ((line - from) * LineHeight));
        }
    }

    private PaperText Style(PaperCell cell) => cell.Bold ? _bold : _body;

    private double Inside(int index) => _widths[index] - (2 * _pad);

    private double Shift(int index, string text, PaperText style) => _columns[index].Align switch
    {
        PaperAlign.Right => Math.Max(_pad, _widths[index] - _pad - style.Width(text)),
        PaperAlign.Centre => Math.Max(_pad, (_widths[index] - style.Width(text)) / 2),
        _ => _pad,
    };
}
