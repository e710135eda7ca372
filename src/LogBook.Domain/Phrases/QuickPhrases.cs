using System.Text.Json;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Phrases;

/// <summary>A firm's own quick phrases: short texts in three languages that one tap writes into a visit.</summary>
/// <param name="ByUse">Phrases of each use in the order in which they are offered; uses without phrases may be missing.</param>
/// <remarks>
/// Not part of the exchange format: a visit holds the words that were tapped, not where they came from. As JSON:
/// <c>{"seen": [{"en": "…", "es": "…", "pt": "…"}], …}</c>.
/// </remarks>
public sealed record QuickPhrases(IReadOnlyDictionary<PhraseUse, IReadOnlyList<Text>> ByUse)
{
    /// <summary>Most phrases of one use: more is a list to be searched, not a tap.</summary>
    public const int MostOfOneUse = 12;

    /// <summary>Most characters of a phrase in one language.</summary>
    public const int MostCharacters = 60;

    /// <summary>Stands between phrases in a field, and therefore within none.</summary>
    public const char Between = ';';

    /// <summary>No phrases.</summary>
    public static QuickPhrases None { get; } = new(new Dictionary<PhraseUse, IReadOnlyList<Text>>());

    /// <summary>Code of a use, as in the JSON.</summary>
    /// <param name="use">Where a phrase belongs.</param>
    /// <returns>The name of the use in camel case.</returns>
    public static string CodeOf(PhraseUse use) => JsonNamingPolicy.CamelCase.ConvertName(use.ToString());

    /// <summary>Reads <see cref="Write"/>.</summary>
    /// <param name="json">JSON object; a language that is missing is read as empty, a use that is unknown is passed over.</param>
    /// <returns>The phrases, without spaces around them.</returns>
    /// <exception cref="JsonException">The text is no such object.</exception>
    public static QuickPhrases Read(string json)
    {
        using var document = JsonDocument.Parse(json);
        if (document.RootElement.ValueKind != JsonValueKind.Object)
        {
            throw new JsonException("Quick phrases are an object.");
        }

        var read = new Dictionary<PhraseUse, IReadOnlyList<Text>>();
        foreach (var use in Enum.GetValues<PhraseUse>())
        {
            if (document.RootElement.TryGetProperty(CodeOf(use), out var list) && list.ValueKind == JsonValueKind.Array && list.GetArrayLength() > 0)
            {
                read[use] = [.. list.EnumerateArray().Select(phrase => new Text(Words(phrase, "en"), Words(phrase, "es"), Words(phrase, "pt")))];
            }
        }

        return new QuickPhrases(read);
    }

    /// <summary>Canonical JSON (RFC 8785).</summary>
    /// <returns>Text that <see cref="Read"/> reads.</returns>
    public string Write()
    {
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes))
        {
            writer.WriteStartObject();
            foreach (var (use, phrases) in ByUse.Where(pair => pair.Value.Count > 0))
            {
                writer.WriteStartArray(CodeOf(use));
                foreach (var phrase in phrases)
                {
                    writer.WriteStartObject();
                    writer.WriteString("en", phrase.En);
                    writer.WriteString("es", phrase.Es);
                    writer.WriteString("pt", phrase.Pt);
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
            }

            writer.WriteEndObject();
        }

        using var document = JsonDocument.Parse(bytes.ToArray());
        return CanonicalJson.Of(document.RootElement);
    }

    /// <summary>What keeps these phrases from being used.</summary>
    /// <param name="language">Language of the messages.</param>
    /// <returns>
    /// Issues with paths as in the JSON: a language that is missing, a phrase that is too long, has a semicolon or stands twice in one
    /// use and language, and more than <see cref="MostOfOneUse"/> of one use. Empty when all is well.
    /// </returns>
    public IReadOnlyList<Issue> Check(Language language)
    {
        List<Issue> issues = [];
        foreach (var (use, phrases) in ByUse)
        {
            if (phrases.Count > MostOfOneUse)
            {
                issues.Add(new Issue(CodeOf(use), "too-many", PhraseTexts.TooMany.In(language, phrases.Count, MostOfOneUse)));
            }

            foreach (var (code, spoken) in new[] { ("en", Language.English), ("es", Language.Spanish), ("pt", Language.Portuguese) })
            {
                var before = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
                for (var i = 0; i < phrases.Count; i++)
                {
                    if (Fault(phrases[i].In(spoken), before, language) is { } fault)
                    {
                        issues.Add(new Issue($"{CodeOf(use)}[{i}].{code}", fault.Code, fault.Message));
                    }
                }
            }
        }

        return issues;
    }

    private static (string Code, string Message)? Fault(string words, HashSet<string> before, Language language) => words switch
    {
        { Length: 0 } => ("required", PhraseTexts.Missing.In(language)),
        { Length: > MostCharacters } => ("too-long", PhraseTexts.TooLong.In(language, words.Length, MostCharacters)),
        _ when words.Contains(Between, StringComparison.Ordinal) => ("semicolon", PhraseTexts.Semicolon.In(language, words)),
        _ when !before.Add(words) => ("twice", PhraseTexts.Twice.In(language, words)),
        _ => null,
    };

    private static string Words(JsonElement phrase, string code) =>
        phrase.ValueKind == JsonValueKind.Object && phrase.TryGetProperty(code, out var words) && words.ValueKind == JsonValueKind.String ? words.GetString()!.Trim() : string.Empty;
}
