using LogBook.Domain.History;

namespace LogBook.Entry.Fields;

/// <summary>Reads the text of a code on a label: the product of the firm it names, and its lot.</summary>
public static class LabelText
{
    private const char GroupSeparator = '\u001d';

    /// <summary>The product a label names.</summary>
    /// <param name="text">Text of the code.</param>
    /// <param name="firm">Set-up of the firm.</param>
    /// <returns>Code of the product whose code, name or registration stands in the text as a word of its own; null for none or for two.</returns>
    public static string? ProductOf(string text, FirmSetUp firm)
    {
        var found = firm.Products.Values
            .Where(p => Names(text, p.Code) || Names(text, p.Name) || (p.Registration is { Length: > 0 } registration && Names(text, registration)))
            .Select(p => p.Code)
            .Distinct(StringComparer.OrdinalIgnoreCase)
            .ToList();
        return found.Count == 1 ? found[0] : null;
    }

    /// <summary>The lot a label names: the element "10" of the widespread code for goods, or what follows "LOT".</summary>
    /// <param name="text">Text of the code.</param>
    /// <returns>The lot, or null.</returns>
    /// <remarks>Application identifiers 01 (14 digits), 17 (6 digits) and 10 (up to 20 characters) of the GS1 General Specifications; from memory.</remarks>
    public static string? LotOf(string text)
    {
        var at = text.IndexOf("LOT", StringComparison.OrdinalIgnoreCase);
        if (at >= 0)
        {
            var rest = text[(at + 3)..].TrimStart(' ', ':', '=', '.').Split([' ', ';', ',', '\n', '\r', GroupSeparator], 2)[0];
            return rest.Length > 0 ? rest : null;
        }

        var bracket = text.IndexOf("(10)", StringComparison.Ordinal);
        return bracket >= 0 ? text[(bracket + 4)..].Split(['(', ' ', GroupSeparator], 2)[0] : null;
    }

    private static bool Names(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            var before = at == 0 || !char.IsLetterOrDigit(text[at - 1]);
            var after = at + word.Length == text.Length || !char.IsLetterOrDigit(text[at + word.Length]);
            if (before && after)
            {
                return true;
            }
        }

        return false;
    }
}
