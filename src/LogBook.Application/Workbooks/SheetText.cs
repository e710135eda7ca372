using System.Text;
using System.Xml;

namespace LogBook.Application.Workbooks;

/// <summary>Text as a workbook can hold it.</summary>
public static class SheetText
{
    // A cell holds 32,767 characters; a longer text ends with a mark, never silently.
    private const int Longest = 32_767;
    private const string CutMark = " …";

    /// <summary>Without characters that XML cannot carry, cut with a mark where it is too long.</summary>
    public static string Clean(string? text)
    {
        if (string.IsNullOrEmpty(text))
        {
            return "";
        }

        var kept = new StringBuilder(text.Length);
        for (var place = 0; place < text.Length; place++)
        {
            if (XmlConvert.IsXmlChar(text[place]))
            {
                kept.Append(text[place]);
            }
            else if (place + 1 < text.Length && XmlConvert.IsXmlSurrogatePair(text[place + 1], text[place]))
            {
                kept.Append(text[place]).Append(text[++place]);
            }
        }

        return kept.Length > Longest ? kept.ToString(0, Longest - CutMark.Length) + CutMark : kept.ToString();
    }

    /// <summary>A name that a sheet may bear: at most 31 characters, none of those that workbooks reserve.</summary>
    public static string Name(string text)
    {
        var name = string.Concat(Clean(text).Select(letter => "[]:*?/\\'".Contains(letter, StringComparison.Ordinal) ? ' ' : letter)).Trim();
        return name.Length > 31 ? name[..31].TrimEnd() : name;
    }

    /// <summary>Whether a spreadsheet would take the text for a formula if somebody typed it.</summary>
    public static bool LooksLikeFormula(string text) => text.TrimStart(' ') is { Length: > 0 } start && "=+-@\t\r\n".Contains(start[0], StringComparison.Ordinal);
}
