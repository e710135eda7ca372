using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Reviews;

/// <summary>What lies ahead of a system as it is kept beside its assessment.</summary>
internal static class KeptAhead
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    public static string Text(SystemAhead ahead) => JsonSerializer.Serialize(ahead, Json);

    public static SystemAhead Read(string? text) => text is null ? SystemAhead.Nothing : JsonSerializer.Deserialize<SystemAhead>(text, Json)!;
}
