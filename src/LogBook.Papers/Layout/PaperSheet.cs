using PdfSharp.Drawing;

namespace LogBook.Papers.Layout;

/// <summary>One page while it is being filled: what will be drawn, in order. Drawing waits until the number of pages is known.</summary>
internal sealed class PaperSheet
{
    private readonly List<Action<XGraphics>> _strokes = [];

    public void Text(string text, PaperText style, XBrush brush, double x, double top)
    {
        if (text.Length > 0)
        {
            _strokes.Add(to => to.DrawString(text, style.Font, brush, x, top + style.Ascent));
        }
    }

    public void Line(double x1, double y1, double x2, double y2, XPen pen) => _strokes.Add(to => to.DrawLine(pen, x1, y1, x2, y2));

    public void Fill(double x, double y, double width, double height, XBrush brush) => _strokes.Add(to => to.DrawRectangle(brush, x, y, width, height));

    public void Box(double x, double y, double width, double height, XPen pen) => _strokes.Add(to => to.DrawRectangle(pen, x, y, width, height));

    public void Picture(XImage image, double x, double y, double width, double height) => _strokes.Add(to => to.DrawImage(image, x, y, width, height));

    public void DrawOn(XGraphics to)
    {
        foreach (var stroke in _strokes)
        {
            stroke(to);
        }
    }
}
