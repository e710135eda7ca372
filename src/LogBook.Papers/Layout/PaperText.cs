using System.Globalization;
using System.Text;
using LogBook.Papers.Fonts;
using PdfSharp.Drawing;

namespace LogBook.Papers.Layout;

/// <summary>A size and weight of the font: how wide a text is, and where it wraps.</summary>
internal sealed class PaperText
{
    private readonly Dictionary<char, double> _widths = [];
    private readonly XGraphics _measure;

    public PaperText(XGraphics measure, double points, bool bold)
    {
        _measure = measure;
        Font = PaperFonts.Of(points, bold);
        LineHeight = points * 1.28;
        Ascent = points * 0.98;
    }

    public XFont Font { get; }

    public double LineHeight { get; }

    public double Ascent { get; }

    /// <summary>Only what the font can draw: no controls or direction marks, □ for what is missing, tabs as spaces.</summary>
    public static string Clean(string? text)
    {
        if (string.IsNullOrEmpty(text))
        {
            return "";
        }

        var kept = new StringBuilder(text.Length);
        foreach (var rune in Composed(text).ReplaceLineEndings("\n").EnumerateRunes())
        {
            if (rune.Value == '\n')
            {
                kept.Append('\n');
            }
            else if (rune.Value is '\t' or 0x00A0 or 0x202F or 0x2009)
            {
                kept.Append(rune.Value == '\t' ? ' ' : '\u00A0');
            }
            else if (rune.IsBmp && PaperGlyphs.Has((char)rune.Value))
            {
                kept.Append((char)rune.Value);
            }
            else if (Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.NonSpacingMark))
            {
                kept.Append('\u25A1');
            }
        }

        return kept.ToString();
    }

    public double Width(ReadOnlySpan<char> text)
    {
        var sum = 0.0;
        foreach (var letter in text)
        {
            sum += Width(letter);
        }

        return sum;
    }

    /// <summary>Lines of at most this width; a word that does not fit a line is cut.</summary>
    public List<string> Wrap(string? text, double width)
    {
        var lines = new List<string>();
        foreach (var given in Clean(text).Split('\n'))
        {
            WrapLine(given, width, lines);
        }

        while (lines.Count > 1 && lines[^1].Length == 0)
        {
            lines.RemoveAt(lines.Count - 1);
        }

        return lines;
    }

    // Letters with their accent apart become one, where that is known: a browser without language data does not know it.
    private static string Composed(string text)
    {
        // Half a pair of surrogates would be refused; as a rune it is the replacement character.
        var whole = string.Concat(text.EnumerateRunes());
        try
        {
            return whole.Normalize(NormalizationForm.FormC);
        }
        catch (PlatformNotSupportedException)
        {
            return whole;
        }
    }

    private double Width(char letter)
    {
        if (!_widths.TryGetValue(letter, out var width))
        {
            // A single blank may be measured as nothing at the end of a string; between two letters it never is.
            width = char.IsWhiteSpace(letter)
                ? _measure.MeasureString($"x{letter}x", Font).Width - _measure.MeasureString("xx", Font).Width
                : _measure.MeasureString(letter.ToString(), Font).Width;
            _widths[letter] = width;
        }

        return width;
    }

    private void WrapLine(string given, double width, List<string> lines)
    {
        var start = 0;
        while (start < given.Length)
        {
            var (end, next) = Fitting(given, start, width);
            lines.Add(given[start..end].TrimEnd(' '));
            start = next;
        }

        if (given.Length == 0)
        {
            lines.Add("");
        }
    }

    private (int End, int Next) Fitting(string text, int start, double width)
    {
        var used = 0.0;
        var blank = -1;
        for (var at = start; at < text.Length; at++)
        {
            used += Width(text[at]);
            if (text[at] == ' ')
            {
                blank = at;
            }
            else if (used > width + 0.01 && at > start)
            {
                return blank > start ? (blank, blank + 1) : (at, at);
            }
        }

        return (text.Length, text.Length);
    }
}
