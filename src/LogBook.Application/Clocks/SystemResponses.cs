using LogBook.Domain.Clocks;

namespace LogBook.Application.Clocks;

/// <summary>The newest counts of one system.</summary>
/// <param name="System">Code of the system.</param>
/// <param name="SystemName">Its name.</param>
/// <param name="Responses">One for each count with a result.</param>
public sealed record SystemResponses(string System, string SystemName, IReadOnlyList<CountResponse> Responses);
