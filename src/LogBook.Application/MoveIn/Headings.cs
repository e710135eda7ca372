using System.Globalization;
using System.Text;

namespace LogBook.Application.MoveIn;

/// <summary>Headings as keys and as words.</summary>
public static class Headings
{
    /// <summary>By which a heading is known again: without case, accents and extra blanks.</summary>
    public static string KeyOf(string heading) => string.Join(' ', Plain(heading).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Small letters without accents.</summary>
    public static string Plain(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var kept = new StringBuilder(text.Length);
        foreach (var letter in string.Concat(text.EnumerateRunes()).Normalize(NormalizationForm.FormKD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
            {
                kept.Append(char.ToLowerInvariant(letter));
            }
        }

        return kept.ToString();
    }

    /// <summary>The words of a text, apart from signs between them; "+", "-" and figures within a word stay.</summary>
    public static string Words(string text) => " " + string.Join(' ', Plain(text).Split([' ', '\t', '\n', '\r', '(', ')', '[', ']', ',', ';', ':', '·', '/', '.', '"', '\''], StringSplitOptions.RemoveEmptyEntries)) + " ";
}
