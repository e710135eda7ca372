using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace LogBook.Domain.Exchange;

/// <summary>Canonical form of JSON by RFC 8785 (JSON Canonicalization Scheme): one value, one text, one hash.</summary>
public static class CanonicalJson
{
    private static readonly SearchValues<char> Escaped = SearchValues.Create([.. Enumerable.Range(0, ' ').Select(c => (char)c), '"', '\\']);

    /// <summary>Canonical text of a JSON value.</summary>
    /// <param name="element">Any JSON value; names within an object are unique.</param>
    /// <returns>Text without white space, names in the order of their UTF-16 code units, numbers as ECMAScript writes them.</returns>
    /// <exception cref="ArgumentException">A number is beyond the range of a double, a name stands twice, or the element holds no value.</exception>
    /// <exception cref="InvalidOperationException">A string holds half of a surrogate pair.</exception>
    public static string Of(JsonElement element)
    {
        var text = new StringBuilder();
        Write(text, element, leaveOutEmpty: false);
        return text.ToString();
    }

    /// <summary>As <see cref="Of"/>, but members that are null or an empty list are left out, as the exchange format asks of an export.</summary>
    internal static string WithoutEmpty(JsonElement element)
    {
        var text = new StringBuilder();
        Write(text, element, leaveOutEmpty: true);
        return text.ToString();
    }

    /// <summary>A number as ECMAScript's Number::toString writes it (RFC 8785 section 3.2.2.3).</summary>
    /// <param name="number">Finite.</param>
    /// <returns>The shortest text that reads back as the same double; negative zero is "0".</returns>
    /// <exception cref="ArgumentException"><paramref name="number"/> is not finite.</exception>
    public static string Number(double number)
    {
        if (!double.IsFinite(number))
        {
            throw new ArgumentException("JSON has no such number.", nameof(number));
        }

        if (number == 0)
        {
            return "0";
        }

        // "E16" is not the shortest form, "R" is, but writes its exponent otherwise: its digits and exponent are taken apart.
        var shortest = Math.Abs(number).ToString("R", CultureInfo.InvariantCulture);
        var mark = shortest.IndexOf('E', StringComparison.Ordinal);
        var exponent = mark < 0 ? 0 : int.Parse(shortest.AsSpan(mark + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var mantissa = mark < 0 ? shortest : shortest[..mark];
        var point = mantissa.IndexOf('.', StringComparison.Ordinal);
        var whole = point < 0 ? mantissa.Length : point;
        var all = point < 0 ? mantissa : mantissa.Remove(point, 1);
        var leading = all.Length - all.TrimStart('0').Length;
        var digits = all.Trim('0');
        var text = Arrange(digits, whole - leading + exponent);
        return number < 0 ? "-" + text : text;
    }

    /// <summary>Puts digits and decimal exponent as ECMA-262 Number::toString does; n is the place of the point counted from the first digit.</summary>
    private static string Arrange(string digits, int n)
    {
        var k = digits.Length;
        if (k <= n && n <= 21)
        {
            return digits + new string('0', n - k);
        }

        if (n is > 0 and <= 21)
        {
            return string.Concat(digits.AsSpan(0, n), ".", digits.AsSpan(n));
        }

        if (n is > -6 and <= 0)
        {
            return "0." + new string('0', -n) + digits;
        }

        var exponent = (n - 1).ToString("+0;-0", CultureInfo.InvariantCulture);
        return k == 1 ? $"{digits}e{exponent}" : $"{digits[..1]}.{digits[1..]}e{exponent}";
    }

    private static void Write(StringBuilder text, JsonElement element, bool leaveOutEmpty)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                WriteObject(text, element, leaveOutEmpty);
                break;
            case JsonValueKind.Array:
                WriteArray(text, element, leaveOutEmpty);
                break;
            case JsonValueKind.String:
                WriteString(text, element.GetString()!);
                break;
            case JsonValueKind.Number:
                text.Append(Number(element.GetDouble()));
                break;
            case JsonValueKind.True:
                text.Append("true");
                break;
            case JsonValueKind.False:
                text.Append("false");
                break;
            case JsonValueKind.Null:
                text.Append("null");
                break;
            default:
                throw new ArgumentException("The element holds no value.", nameof(element));
        }
    }

    private static void WriteObject(StringBuilder text, JsonElement element, bool leaveOutEmpty)
    {
        // A property makes its name anew each time it is asked: it is asked once.
        var members = new List<(string Name, JsonElement Value)>();
        foreach (var member in element.EnumerateObject())
        {
            if (!leaveOutEmpty || !IsEmpty(member.Value))
            {
                members.Add((member.Name, member.Value));
            }
        }

        members.Sort((a, b) => string.CompareOrdinal(a.Name, b.Name));
        text.Append('{');
        for (var i = 0; i < members.Count; i++)
        {
            if (i > 0)
            {
                if (members[i].Name == members[i - 1].Name)
                {
                    throw new ArgumentException($"The name {members[i].Name} stands twice.", nameof(element));
                }

                text.Append(',');
            }

            WriteString(text, members[i].Name);
            text.Append(':');
            Write(text, members[i].Value, leaveOutEmpty);
        }

        text.Append('}');
    }

    private static void WriteArray(StringBuilder text, JsonElement element, bool leaveOutEmpty)
    {
        text.Append('[');
        var first = true;
        foreach (var item in element.EnumerateArray())
        {
            if (!first)
            {
                text.Append(',');
            }

            first = false;
            Write(text, item, leaveOutEmpty);
        }

        text.Append(']');
    }

    private static bool IsEmpty(JsonElement value) =>
        value.ValueKind == JsonValueKind.Null || (value.ValueKind == JsonValueKind.Array && value.GetArrayLength() == 0);

    private static void WriteString(StringBuilder text, string value)
    {
        text.Append('"');
        if (value.AsSpan().IndexOfAny(Escaped) < 0)
        {
            text.Append(value).Append('"');
            return;
        }

        foreach (var c in value)
        {
            switch (c)
            {
                case '"':
                    text.Append("\\\"");
                    break;
                case '\\':
                    text.Append("\\\\");
                    break;
                case '\b':
                    text.Append("\\b");
                    break;
                case '\t':
                    text.Append("\\t");
                    break;
                case '\n':
                    text.Append("\\n");
                    break;
                case '\f':
                    text.Append("\\f");
                    break;
                case '\r':
                    text.Append("\\r");
                    break;
                case < ' ':
                    text.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture));
                    break;
                default:
                    text.Append(c);
                    break;
            }
        }

        text.Append('"');
    }
}
