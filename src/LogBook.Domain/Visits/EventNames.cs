using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Event types as the document writes them.</summary>
public static class EventNames
{
    private static readonly Dictionary<string, EventType> ByName = Enum.GetValues<EventType>().ToDictionary(
        type => typeof(EventType).GetField(type.ToString())!.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name,
        StringComparer.Ordinal);

    /// <summary>Whether a text is an event type.</summary>
    /// <param name="name">Name as in the document, lower case with hyphens.</param>
    public static bool Contains(string name) => ByName.ContainsKey(name);

    /// <summary>The event type that a text names.</summary>
    /// <param name="name">Name as in the document, lower case with hyphens; null names none.</param>
    /// <param name="type">The event type, where there is one.</param>
    /// <returns>Whether there is one.</returns>
    public static bool TryParse([NotNullWhen(true)] string? name, out EventType type)
    {
        type = default;
        return name is not null && ByName.TryGetValue(name, out type);
    }
}
