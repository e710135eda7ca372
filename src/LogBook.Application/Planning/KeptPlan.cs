using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Domain.Exchange;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Planning;

/// <summary>A day's plan as it is stored and audited.</summary>
internal static class KeptPlan
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull };

    /// <summary>Code of the record of a day.</summary>
    public static string CodeOf(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>Canonical text.</summary>
    public static string Write(DayPlan plan) => CanonicalJson.Of(JsonSerializer.SerializeToElement(plan, Json));

    public static DayPlan Read(string document) => JsonSerializer.Deserialize<DayPlan>(document, Json)!;
}
