using System.Text.RegularExpressions;

namespace LogBook.Web.Components;

/// <summary>Telephone numbers in what people wrote.</summary>
public static partial class PhoneNumbers
{
    /// <summary>A text in its parts: words, and for those that are a number what is to be dialled.</summary>
    public static IEnumerable<(string Words, string? Number)> Parts(string? text)
    {
        var (all, at) = (text ?? "", 0);
        foreach (Match found in Number().Matches(all))
        {
            yield return (all[at..found.Index], null);

            // The zero in brackets is dialled at home only.
            var dialled = found.Value.StartsWith('+') ? found.Value.Replace("(0)", "", StringComparison.Ordinal) : found.Value;
            yield return (found.Value, string.Concat(dialled.Where(sign => char.IsAsciiDigit(sign) || sign == '+')));
            at = found.Index + found.Length;
        }

        yield return (all[at..], null);
    }

    // From abroad seven digits on, at home nine: shorter ones may be hours or days.
    [GeneratedRegex(@"(?<![\w.])(?:\+[ (]?\d(?:[ ()/-]{0,2}\d){6,14}|\(?0\d?(?:[ ()/-]{0,2}\d){8,12})(?!\w)", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Number();
}
