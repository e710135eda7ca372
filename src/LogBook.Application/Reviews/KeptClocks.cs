using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Application.Data;
using LogBook.Domain.Assessments;
using LogBook.Domain.Clocks;

namespace LogBook.Application.Reviews;

/// <summary>Clocks as they are kept in the database.</summary>
internal static class KeptClocks
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingDefault,
        IgnoreReadOnlyProperties = true,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>The row of a system's clocks.</summary>
    public static ClockRow Row(SystemRow system, SystemAssessment result) => new()
    {
        CustomerId = system.CustomerId,
        SystemId = system.Id,
        Clocks = JsonSerializer.Serialize(result.Clocks, Json),
        EngineVersion = result.EngineVersion,
    };

    public static IReadOnlyList<RunningClock> Clocks(string text) => JsonSerializer.Deserialize<List<RunningClock>>(text, Json) ?? [];

    public static bool Same(ClockRow a, ClockRow b) => (a.CustomerId, a.Clocks, a.EngineVersion) == (b.CustomerId, b.Clocks, b.EngineVersion);
}
