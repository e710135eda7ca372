using System.Text.Json.Serialization;

namespace LogBook.Entry.Drafts;

/// <summary>JSON of a draft, generated at build time because the form also runs trimmed in the browser.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(DraftDocument))]
internal sealed partial class DraftJson : JsonSerializerContext;
