using System.Globalization;

namespace LogBook.Domain.Languages;

/// <summary>
/// One wording in the three languages of the product. Places for values are {0}, {1} as in composite formatting;
/// values are formatted by the caller or with the culture of the language.
/// </summary>
/// <param name="En">English.</param>
/// <param name="Es">Spanish.</param>
/// <param name="Pt">Portuguese.</param>
public sealed record Text(string En, string Es, string Pt)
{
    /// <summary>The wording in one language.</summary>
    /// <param name="language">Language asked for.</param>
    /// <returns>The wording, with its places unfilled.</returns>
    public string In(Language language) => language switch
    {
        Language.Spanish => Es,
        Language.Portuguese => Pt,
        _ => En,
    };

    /// <summary>The wording in one language with its places filled.</summary>
    /// <param name="language">Language asked for.</param>
    /// <param name="values">Values for the places; a <see cref="Text"/> is put in the same language.</param>
    /// <returns>The finished text.</returns>
    public string In(Language language, params object?[] values) => string.Format(
        Cultures.Of(language),
        In(language),
        Array.ConvertAll(values, value => value is Text text ? text.In(language) : value));
}
