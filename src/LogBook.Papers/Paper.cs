using System.Globalization;
using LogBook.Papers.Layout;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace LogBook.Papers;

/// <summary>A document that is written from top to bottom: what is added stands below what was added before, on the next page where there is no room.</summary>
/// <remarks>Not safe for use by two threads at once.</remarks>
public sealed class Paper : IDisposable
{
    private const double Margin = 42;
    private const double Top = 58;
    private const int HeadingLevels = 3;

    private static readonly XBrush Ink = XBrushes.Black;
    private static readonly XBrush Quiet = new XSolidBrush(XColor.FromArgb(0x4A, 0x4A, 0x4A));
    private static readonly XBrush Shade = new XSolidBrush(XColor.FromArgb(0xEC, 0xEE, 0xF0));
    private static readonly XPen Rule = new(XColor.FromArgb(0xB4, 0xB9, 0xBE), 0.5);
    private static readonly XPen Strong = new(XColor.FromArgb(0x30, 0x30, 0x30), 0.8);

    private readonly PaperFrame _frame;
    private readonly XGraphics _measure;
    private readonly List<PaperSheet> _sheets = [];
    private readonly List<(string Text, int Level, int Sheet)> _outline = [];
    private readonly List<IDisposable> _pictures = [];
    private readonly PaperText _body;
    private readonly PaperText _bold;
    private readonly PaperText _small;
    private readonly PaperText _smallBold;
    private readonly PaperText[] _headings;
    private readonly double _width;
    private readonly double _height;
    private readonly double _pad;
    private double _y;

    /// <summary>An empty document.</summary>
    public Paper(PaperFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        _pad = frame.IsDense ? 1.25 : 3;
        _frame = frame;
        var (narrow, wide) = frame.Size == PaperSize.Letter ? (612.0, 792.0) : (595.0, 842.0);
        (_width, _height) = frame.Landscape ? (wide, narrow) : (narrow, wide);
        _measure = XGraphics.CreateMeasureContext(new XSize(_width, _height), XGraphicsUnit.Point, XPageDirection.Downwards);
        _body = new PaperText(_measure, frame.Points, bold: false);
        _bold = new PaperText(_measure, frame.Points, bold: true);
        _small = new PaperText(_measure, 8, bold: false);
        _smallBold = new PaperText(_measure, 8, bold: true);
        _headings = [new PaperText(_measure, 17, bold: true), new PaperText(_measure, 12.5, bold: true), new PaperText(_measure, 10.5, bold: true)];
        NewSheet();
    }

    /// <summary>Pages so far.</summary>
    public int Pages => _sheets.Count;

    private double Inner => _width - (2 * Margin);

    private double Bottom => _height - 52;

    private PaperSheet Sheet => _sheets[^1];

    /// <summary>A heading; level 1 is the largest, 3 the smallest. It stays with what comes after it and stands in the file's outline.</summary>
    public Paper Heading(string text, int level = 2)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(level, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(level, HeadingLevels);
        var style = _headings[level - 1];
        var lines = style.Wrap(text, Inner);
        if (_y > Top)
        {
            _y += level == HeadingLevels ? 7 : 12;
        }

        Room((lines.Count * style.LineHeight) + 44);
        _outline.Add((PaperText.Clean(text).ReplaceLineEndings(" "), level, _sheets.Count - 1));
        Lines(lines, style, Ink, Margin);
        _y += 3;
        return this;
    }

    /// <summary>A paragraph that wraps; line ends are kept.</summary>
    public Paper Paragraph(string? text, bool bold = false)
    {
        Lines((bold ? _bold : _body).Wrap(text, Inner), bold ? _bold : _body, Ink, Margin);
        _y += 4;
        return this;
    }

    /// <summary>A paragraph in small, quiet letters.</summary>
    public Paper Small(string? text)
    {
        Lines(_small.Wrap(text, Inner), _small, Quiet, Margin);
        _y += 3;
        return this;
    }

    /// <summary>A paragraph set apart by a bar at its left, on a shade.</summary>
    public Paper Note(string? text)
    {
        var lines = _body.Wrap(text, Inner - 18);
        var done = 0;
        while (done < lines.Count)
        {
            Room((2 * _body.LineHeight) + 8);
            var fit = Math.Min(lines.Count - done, Math.Max(1, (int)((Bottom - _y - 8) / _body.LineHeight)));
            var height = (fit * _body.LineHeight) + 8;
            Sheet.Fill(Margin, _y, Inner, height, Shade);
            Sheet.Fill(Margin, _y, 3, height, Quiet);
            for (var line = 0; line < fit; line++)
            {
                Sheet.Text(lines[done + line], _body, Ink, Margin + 11, _y + 4 + (line * _body.LineHeight));
            }

            _y += height;
            done += fit;
        }

        _y += 6;
        return this;
    }

    /// <summary>Names and what belongs to them, in two columns.</summary>
    /// <param name="pairs">In order.</param>
    /// <param name="nameShare">Share of the names in the width, 0 to 1.</param>
    public Paper KeyValues(IEnumerable<(string Name, string? Value)> pairs, double nameShare = 0.3)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        var columns = new[] { new PaperColumn("", nameShare), new PaperColumn("", 1 - nameShare) };
        Rows(columns, [.. pairs.Select(pair => PaperRow.Of(pair.Name, new PaperCell(pair.Value, Bold: true)))], head: false, nothing: null);
        return this;
    }

    /// <summary>A table; it breaks over pages and repeats its head.</summary>
    /// <param name="columns">At least one.</param>
    /// <param name="rows">In order.</param>
    /// <param name="nothing">Said in place of rows where there is none.</param>
    public Paper Table(IReadOnlyList<PaperColumn> columns, IEnumerable<PaperRow> rows, string? nothing = null)
    {
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentOutOfRangeException.ThrowIfZero(columns.Count);
        Rows(columns, [.. rows], columns.Any(column => column.Title.Length > 0), nothing);
        return this;
    }

    /// <summary>A box to tick, or ticked already, and what it is about.</summary>
    public Paper TickBox(string text, bool ticked = false)
    {
        var lines = _body.Wrap(text, Inner - 18);
        Room(Math.Min(lines.Count, 3) * _body.LineHeight);
        Sheet.Text(Tick(ticked), _headings[1], Ink, Margin, _y - 3);
        Lines(lines, _body, Ink, Margin + 18);
        _y += 4;
        return this;
    }

    /// <summary>Lines to write on, each with its label below; the three stay together.</summary>
    /// <param name="labels">From left to right, for example signature, name, date.</param>
    public Paper SignatureLine(params string[] labels)
    {
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentOutOfRangeException.ThrowIfZero(labels.Length);
        Room(58);
        _y += 36;
        var share = Inner / labels.Length;
        for (var index = 0; index < labels.Length; index++)
        {
            var x = Margin + (index * share);
            Sheet.Line(x, _y, x + share - 14, _y, Strong);
            Sheet.Text(_small.Wrap(labels[index], share - 14)[0], _small, Quiet, x, _y + 3);
        }

        _y += 22;
        return this;
    }

    /// <summary>A picture (PNG or JPEG) with its caption, made smaller where it does not fit.</summary>
    public Paper Picture(byte[] image, string? caption = null, double maxWidth = double.PositiveInfinity, double maxHeight = 260)
    {
        ArgumentNullException.ThrowIfNull(image);
        var stream = new MemoryStream(image, 0, image.Length, writable: false, publiclyVisible: true);
        var drawn = XImage.FromStream(stream);
        _pictures.Add(drawn);
        _pictures.Add(stream);
        var scale = Math.Min(1, Math.Min(Math.Min(maxWidth, Inner) / drawn.PixelWidth, Math.Min(maxHeight, Bottom - Top - 30) / drawn.PixelHeight));
        var (width, height) = (drawn.PixelWidth * scale, drawn.PixelHeight * scale);
        Room(height + 18);
        Sheet.Picture(drawn, Margin, _y, width, height);
        _y += height + 3;
        return caption is null ? Space(3) : Small(caption);
    }

    /// <summary>Empty room, in points.</summary>
    public Paper Space(double points)
    {
        _y += points;
        return this;
    }

    /// <summary>What follows starts a page; nothing happens on an empty page.</summary>
    public Paper PageBreak()
    {
        if (_y > Top)
        {
            NewSheet();
        }

        return this;
    }

    /// <summary>The file.</summary>
    public byte[] ToBytes()
    {
        using var document = new PdfDocument();
        document.Info.Title = _frame.Title;
        document.Info.Author = _frame.Author;
        document.Info.CreationDate = _frame.MadeAt;
        document.Info.ModificationDate = _frame.MadeAt;
        document.Language = _frame.Language;
        var pages = new List<PdfPage>();
        for (var index = 0; index < _sheets.Count; index++)
        {
            Frame(_sheets[index], index + 1);
            var page = document.AddPage();
            page.Width = XUnit.FromPoint(_width);
            page.Height = XUnit.FromPoint(_height);
            using var graphics = XGraphics.FromPdfPage(page);
            _sheets[index].DrawOn(graphics);
            pages.Add(page);
        }

        Outline(document, pages);
        using var buffer = new MemoryStream();
        document.Save(buffer, closeStream: false);
        return PaperBytes.Settled(buffer.ToArray());
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var picture in _pictures)
        {
            picture.Dispose();
        }

        _measure.Dispose();
    }

    private static string Tick(bool ticked) => ticked ? "\u2611" : "\u2610";

    private void Outline(PdfDocument document, List<PdfPage> pages)
    {
        PdfOutline? over = null;
        foreach (var (text, level, sheet) in _outline.Where(entry => entry.Level < HeadingLevels && entry.Text.Length > 0))
        {
            if (level == 1 || over is null)
            {
                over = document.Outlines.Add(text, pages[sheet], opened: true);
            }
            else
            {
                over.Outlines.Add(text, pages[sheet], opened: true);
            }
        }
    }

    private void Frame(PaperSheet sheet, int number)
    {
        var half = (Inner / 2) - 6;
        sheet.Text(First(_smallBold, _frame.HeaderLeft, half), _smallBold, Ink, Margin, 30);
        Right(sheet, First(_small, _frame.HeaderRight, half), 30);
        sheet.Line(Margin, 46, _width - Margin, 46, Rule);
        sheet.Line(Margin, _height - 42, _width - Margin, _height - 42, Rule);
        sheet.Text(First(_small, _frame.FooterLeft, Inner - 90), _small, Quiet, Margin, _height - 37);
        Right(sheet, string.Format(CultureInfo.InvariantCulture, _frame.PageOf, number, _sheets.Count), _height - 37);
    }

    private void Right(PaperSheet sheet, string text, double top) => sheet.Text(text, _small, Quiet, _width - Margin - _small.Width(text), top);

    private static string First(PaperText style, string text, double width)
    {
        var lines = style.Wrap(text, width);
        return lines.Count > 1 ? lines[0] + "…" : lines[0];
    }

    private void Rows(IReadOnlyList<PaperColumn> columns, List<PaperRow> rows, bool head, string? nothing)
    {
        var table = new PaperTable(columns, Inner, _body, _bold, _small, _smallBold, _pad);
        if (rows.Count == 0)
        {
            Small(nothing ?? "–");
            return;
        }

        var first = table.Measure(rows[0]);
        Room(Math.Min((head ? table.HeadHeight : 0) + table.Height(first) + 14, Bottom - Top));
        if (head)
        {
            Head(table);
        }

        for (var index = 0; index < rows.Count; index++)
        {
            var row = table.Measure(rows[index]);
            var together = table.Height(row) + (rows[index].IsGroup && index + 1 < rows.Count ? table.Height(table.Measure(rows[index + 1])) : 0);
            var whole = Bottom - Top - (head ? table.HeadHeight : 0);
            if (_y + Math.Min(together, whole) > Bottom + 0.01)
            {
                NewSheet();
                if (head)
                {
                    Head(table);
                }
            }

            Row(table, row, head);
        }

        _y += 8;
    }

    // A row that is higher than a page is continued on the next ones.
    private void Row(PaperTable table, MeasuredRow row, bool head)
    {
        var from = 0;
        while (from < row.LineCount)
        {
            var fit = Math.Min(row.LineCount - from, Math.Max(1, (int)((Bottom - _y - (2 * _pad) + 0.01) / table.LineHeight)));
            table.Draw(Sheet, row, from, fit, Margin, _y, Ink, Quiet, Shade);
            _y += (fit * table.LineHeight) + (2 * _pad);
            Sheet.Line(Margin, _y, _width - Margin, _y, Rule);
            from += fit;
            if (from < row.LineCount)
            {
                NewSheet();
                if (head)
                {
                    Head(table);
                }
            }
        }
    }

    private void Head(PaperTable table)
    {
        table.DrawHead(Sheet, Margin, _y, Ink, Shade);
        _y += table.HeadHeight;
        Sheet.Line(Margin, _y, _width - Margin, _y, Strong);
    }

    private void Lines(List<string> lines, PaperText style, XBrush brush, double x)
    {
        foreach (var line in lines)
        {
            Room(style.LineHeight);
            Sheet.Text(line, style, brush, x, _y);
            _y += style.LineHeight;
        }
    }

    private void Room(double height)
    {
        if (_y > Top && _y + height > Bottom)
        {
            NewSheet();
        }
    }

    private void NewSheet()
    {
        _sheets.Add(new PaperSheet());
        _y = Top;
    }
}
