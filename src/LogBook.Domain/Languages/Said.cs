namespace LogBook.Domain.Languages;

/// <summary>A wording with the values for its places: put into a language only when somebody reads it.</summary>
/// <param name="Wording">The wording; numbers carry their format in the place, as in {0:0.#}.</param>
/// <param name="Values">Values for the places; a <see cref="Text"/> or another <see cref="Said"/> is put in the same language.</param>
public sealed record Said(Text Wording, params IReadOnlyList<object?> Values)
{
    /// <summary>The finished sentence in one language.</summary>
    /// <param name="language">Language asked for.</param>
    /// <returns>The sentence.</returns>
    public string In(Language language) => Values.Count == 0
        ? Wording.In(language)
        : Wording.In(language, [.. Values.Select(value => value is Said said ? said.In(language) : value)]);
}
