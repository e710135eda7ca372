using System.Text.Json;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;

namespace LogBook.Capture.Visits;

/// <summary>An action that stands, as it came with the round.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Since">When it was first written down.</param>
/// <param name="Action">The action as in the exchange format.</param>
internal sealed record DeviceAction(string Site, string System, DateTimeOffset Since, JsonElement Action)
{
    /// <summary>What the form knows of it.</summary>
    public StandingAction Read() => new(Site, System, Since.UtcDateTime, ExchangeReader.Parse<VisitAction>(Action.GetRawText()));
}
