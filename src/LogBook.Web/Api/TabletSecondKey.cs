namespace LogBook.Web.Api;

/// <summary>The second key to a person's drafts on a tablet.</summary>
/// <param name="Key">32 bytes in base64.</param>
/// <param name="Tablet">Name of the tablet; only when it is handed in.</param>
/// <param name="Replaces">Earlier key that goes; only when it is handed in.</param>
public sealed record TabletSecondKey(string Key, string? Tablet = null, string? Replaces = null);
