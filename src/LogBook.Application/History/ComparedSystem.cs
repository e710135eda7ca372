using LogBook.Domain.Programmes;

namespace LogBook.Application.History;

/// <summary>A system that can be compared.</summary>
/// <param name="Site">Code of its site.</param>
/// <param name="SiteName">Name of its site.</param>
/// <param name="System">Code.</param>
/// <param name="SystemName">Name.</param>
public sealed record ComparedSystem(string Site, string SiteName, string System, string SystemName)
{
    /// <summary>How the address names it.</summary>
    public string Key => $"{Site}/{System}";

    /// <summary>Range of the reading in force on the last day; null where none is set.</summary>
    public TestRange? Range { get; init; }
}
