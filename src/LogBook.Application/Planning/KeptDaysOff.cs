using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Domain.Exchange;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Planning;

/// <summary>Leave or closed days with the version that was read.</summary>
/// <param name="Off">The days.</param>
/// <param name="Version">Version of the record; 0 before it is kept.</param>
public sealed record KeptDaysOff(DaysOff Off, int Version)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    internal static string Write(DaysOff off) => CanonicalJson.Of(JsonSerializer.SerializeToElement(off, Json));

    internal static DaysOff Read(string document) => JsonSerializer.Deserialize<DaysOff>(document, Json)!;
}
