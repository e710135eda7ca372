using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Clocks;

/// <summary>The rule templates that come with LogBook, as dated data.</summary>
public static partial class RuleTemplates
{
    private static readonly Lazy<IReadOnlyList<RuleTemplate>> Read = new(() =>
    {
        using var stream = typeof(RuleTemplates).Assembly.GetManifestResourceStream("LogBook.Domain.Clocks.RuleTemplates.json")!;
        return JsonSerializer.Deserialize(stream, TemplateJson.Default.RuleTemplateArray)!;
    });

    /// <summary>All of them, by jurisdiction as in the file.</summary>
    public static IReadOnlyList<RuleTemplate> All => Read.Value;

    [JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
    [JsonSerializable(typeof(RuleTemplate[]))]
    private sealed partial class TemplateJson : JsonSerializerContext;
}
