using LogBook.Domain.Exchange.Shapes;

namespace LogBook.Domain.Visits;

/// <summary>Event types as the document writes them.</summary>
internal static class EventNames
{
    private static readonly IReadOnlyList<string> All = ExchangeShapes.VisitEvent.Find("type")!.Choices;

    /// <summary>Whether a text is an event type.</summary>
    public static bool Contains(string name) => All.Contains(name, StringComparer.Ordinal);
}
