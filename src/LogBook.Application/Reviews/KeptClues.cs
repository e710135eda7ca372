using System.Text.Json;
using LogBook.Application.Data;
using LogBook.Domain.Assessments;
using LogBook.Domain.Rounds;

namespace LogBook.Application.Reviews;

/// <summary>Clues and shifts as they are kept in the database.</summary>
internal static class KeptClues
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>The row of a system's clues.</summary>
    public static ClueRow Row(SystemRow system, SystemAssessment result, IReadOnlyList<RoundShift> seen) => new()
    {
        CustomerId = system.CustomerId,
        SystemId = system.Id,
        Clues = JsonSerializer.Serialize(result.Clues, Json),
        Seen = Text(seen),
        EngineVersion = result.EngineVersion,
    };

    /// <summary>Shifts as one text, by which two states of knowledge are compared; empty for none.</summary>
    public static string Text(IReadOnlyList<RoundShift> shifts) => shifts.Count == 0 ? "" : JsonSerializer.Serialize(shifts, Json);

    public static IReadOnlyList<RoundShift> Shifts(string? text) => string.IsNullOrEmpty(text) ? [] : JsonSerializer.Deserialize<List<RoundShift>>(text, Json) ?? [];

    public static SystemClues Clues(string text) => JsonSerializer.Deserialize<SystemClues>(text, Json)!;

    public static bool Same(ClueRow a, ClueRow b) =>
        (a.CustomerId, a.Clues, a.Seen, a.EngineVersion) == (b.CustomerId, b.Clues, b.Seen, b.EngineVersion);
}
