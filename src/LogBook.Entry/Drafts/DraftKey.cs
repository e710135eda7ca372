namespace LogBook.Entry.Drafts;

/// <summary>Keys of the fields of a draft: parts joined with "/", a part may hold any character.</summary>
public static class DraftKey
{
    /// <summary>First part of what belongs to the visit as a whole.</summary>
    public const string Visit = "visit";

    /// <summary>First part of what belongs to a system.</summary>
    public const string Systems = "systems";

    /// <summary>Joins parts.</summary>
    /// <param name="parts">Parts as they are.</param>
    /// <returns>The key.</returns>
    public static string Of(params IReadOnlyList<string> parts) => string.Join('/', parts.Select(Escape));

    /// <summary>Goes one or more parts deeper.</summary>
    /// <param name="key">A key.</param>
    /// <param name="parts">Parts as they are.</param>
    /// <returns>The longer key.</returns>
    public static string Under(string key, params IReadOnlyList<string> parts) => key + "/" + Of(parts);

    /// <summary>The parts of a key.</summary>
    /// <param name="key">A key.</param>
    /// <returns>Parts as they were given.</returns>
    public static IReadOnlyList<string> Parts(string key) => Array.ConvertAll(key.Split('/'), Unescape);

    /// <summary>An identifier for the page, made of the key.</summary>
    /// <param name="key">A key.</param>
    /// <returns>Letters, digits, hyphens and underscores only, one for each key.</returns>
    public static string ElementId(string key) =>
        "f-" + string.Concat(key.Select(c => char.IsAsciiLetterOrDigit(c) || c == '-' ? c.ToString() : "_" + ((int)c).ToString("x", System.Globalization.CultureInfo.InvariantCulture) + "_"));

    private static string Escape(string part) => part.Replace("%", "%25", StringComparison.Ordinal).Replace("/", "%2F", StringComparison.Ordinal);

    private static string Unescape(string part) => part.Replace("%2F", "/", StringComparison.Ordinal).Replace("%25", "%", StringComparison.Ordinal);
}
