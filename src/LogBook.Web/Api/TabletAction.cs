using System.Text.Json;

namespace LogBook.Web.Api;

/// <summary>An action that stands.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Since">When it was first written down, ISO 8601.</param>
/// <param name="Action">The action as in the exchange format.</param>
public sealed record TabletAction(string Site, string System, string Since, JsonElement Action);
