using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using LogBook.Domain.Exchange.Shapes;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Exchange;

/// <summary>
/// Reads exchange documents. What does not fit the format is refused with its path and with all other faults of the
/// document; nothing is guessed and nothing is lost in silence. Whether codes are known, dates agree and units fit the test
/// is the next step, <see cref="ExchangeCheck"/>.
/// </summary>
public static class ExchangeReader
{
    /// <summary>Name in the field "format".</summary>
    public const string Format = "logbook-exchange";

    /// <summary>Version that is read and written.</summary>
    public const int Version = 1;

    /// <summary>Reads a document.</summary>
    /// <param name="json">JSON text.</param>
    /// <param name="language">Language of the messages.</param>
    /// <returns>The document or the issues of its form.</returns>
    public static ExchangeReadResult Read(string json, Language language = Language.English) =>
        Read(Encoding.UTF8.GetBytes(json), null, language);

    /// <summary>Reads a document.</summary>
    /// <param name="json">JSON in UTF-8; a byte order mark is passed over.</param>
    /// <param name="language">Language of the messages.</param>
    /// <returns>The document or the issues of its form.</returns>
    public static ExchangeReadResult Read(ReadOnlySpan<byte> json, Language language = Language.English) => Read(json, null, language);

    /// <summary>Reads a document and checks it against the known set-up: everything that is wrong with it comes back at once.</summary>
    /// <param name="json">JSON text.</param>
    /// <param name="known">Set-up known before.</param>
    /// <param name="language">Language of the messages.</param>
    /// <param name="mayUpdate">Whether set-up under a code that is known may have other content.</param>
    /// <returns>The document or the issues of its form and content.</returns>
    public static ExchangeReadResult ReadAndCheck(string json, FirmSetUp known, Language language = Language.English, bool mayUpdate = false) =>
        Read(Encoding.UTF8.GetBytes(json), known, language, mayUpdate);

    /// <summary>Reads a document and checks it against the known set-up: everything that is wrong with it comes back at once.</summary>
    /// <param name="json">JSON in UTF-8; a byte order mark is passed over.</param>
    /// <param name="known">Set-up known before.</param>
    /// <param name="language">Language of the messages.</param>
    /// <param name="mayUpdate">Whether set-up under a code that is known may have other content.</param>
    /// <returns>The document or the issues of its form and content.</returns>
    public static ExchangeReadResult ReadAndCheck(ReadOnlySpan<byte> json, FirmSetUp known, Language language = Language.English, bool mayUpdate = false) =>
        Read(json, known, language, mayUpdate);

    private static ExchangeReadResult Read(ReadOnlySpan<byte> json, FirmSetUp? known, Language language, bool mayUpdate = false)
    {
        if (json.StartsWith("\uFEFF"u8))
        {
            json = json[3..];
        }

        if (!Utf8.IsValid(json))
        {
            return Refused(new Issue("", "not-utf8", ExchangeTexts.NotUtf8.In(language)));
        }

        JsonDocument parsed;
        try
        {
            parsed = JsonDocument.Parse(json.ToArray());
        }
        catch (JsonException e)
        {
            return Refused(new Issue("", "malformed", ExchangeTexts.NotJson.In(language, (e.LineNumber ?? 0) + 1, (e.BytePositionInLine ?? 0) + 1)));
        }

        using (parsed)
        {
            return HeadIssue(parsed.RootElement, language) is { } head ? Refused(head) : Read(parsed.RootElement, known, language, mayUpdate);
        }
    }

    private static ExchangeReadResult Read(JsonElement json, FirmSetUp? known, Language language, bool mayUpdate)
    {
        var form = new ShapeCheck(language);
        form.Check(json, ExchangeShapes.Document);
        if (known is null && form.Issues.Count > 0)
        {
            return new ExchangeReadResult(null, form.Issues);
        }

        var refused = form.Issues.Select(i => i.Path).ToHashSet(StringComparer.Ordinal);
        var document = form.NeedsTidying || refused.Count > 0
            ? JsonSerializer.Deserialize(Tidying.Of(json, ExchangeShapes.Document, refused), ExchangeJson.Default.ExchangeDocument)!
            : json.Deserialize(ExchangeJson.Default.ExchangeDocument)!;
        if (known is null)
        {
            return new ExchangeReadResult(document, []);
        }

        // Where a code of the set-up could not be read, others that name it would be called unknown without reason.
        var isCodeRefused = refused.Any(p => !p.StartsWith("visits[", StringComparison.Ordinal) && p.EndsWith(".code", StringComparison.Ordinal));
        var content = ExchangeCheck.Check(document, known, language).Where(i =>
            !refused.Contains(i.Path)
            && !i.Message.Contains(Tidying.StandIn, StringComparison.Ordinal)
            && !(isCodeRefused && i.Code == "unknown-code")
            && !(mayUpdate && i.Code == ExchangeCheck.SetUpDiffers));
        List<Issue> issues = [.. form.Issues, .. content];
        return issues.Count == 0 ? new ExchangeReadResult(document, []) : InPart(document, issues);
    }

    /// <summary>Leaves out the visits that have an issue.</summary>
    private static ExchangeReadResult InPart(ExchangeDocument document, List<Issue> issues)
    {
        var refused = new SortedSet<int>();
        foreach (var issue in issues)
        {
            if (VisitOf(issue.Path) is not { } index)
            {
                return new ExchangeReadResult(null, issues);
            }

            refused.Add(index);
        }

        return new ExchangeReadResult(null, issues)
        {
            Good = document with { Visits = [.. document.Visits.Where((_, i) => !refused.Contains(i))] },
            RefusedVisits = [.. refused],
        };
    }

    private static int? VisitOf(string path)
    {
        const string Start = "visits[";
        var end = path.IndexOf(']', StringComparison.Ordinal);
        return path.StartsWith(Start, StringComparison.Ordinal) && end > 0
            && int.TryParse(path.AsSpan(Start.Length, end - Start.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? index
            : null;
    }

    /// <summary>Reads one stored piece of a document; the reverse of <see cref="ExchangeWriter.CanonicalOf{T}"/>.</summary>
    /// <typeparam name="T">A type of the document.</typeparam>
    /// <param name="json">Text that was written by this program: its form is not checked.</param>
    /// <returns>The piece.</returns>
    /// <exception cref="JsonException">The text was not written by this program.</exception>
    public static T Parse<T>(string json)
        where T : class => JsonSerializer.Deserialize(json, ExchangeWriter.TypeInfo<T>()) ?? throw new JsonException("The stored text is null.");

    private static ExchangeReadResult Refused(Issue issue) => new(null, [issue]);

    /// <summary>Another format, version or a newer minor: then every other fault would only be noise.</summary>
    private static Issue? HeadIssue(JsonElement json, Language language)
    {
        if (json.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        if (json.TryGetProperty("format", out var format) && format.ValueKind == JsonValueKind.String && !format.ValueEquals(Format))
        {
            return new Issue("format", "wrong-format", ExchangeTexts.Expected.In(language, "format", format.GetRawText(), Format));
        }

        if (json.TryGetProperty("version", out var version) && version.ValueKind == JsonValueKind.Number && version.GetDouble() != Version)
        {
            return new Issue("version", "wrong-version", ExchangeTexts.Expected.In(language, "version", version.GetRawText(), Version));
        }

        return json.TryGetProperty("minor", out var minor) && minor.ValueKind == JsonValueKind.Number && minor.GetDouble() > ExchangeShapes.Minor
            ? new Issue("minor", "newer-minor", ExchangeTexts.Newer.In(language, minor.GetRawText(), ExchangeShapes.Minor))
            : null;
    }
}
