namespace LogBook.Web.Api;

/// <summary>What a person calls a tablet.</summary>
/// <param name="Name">1 to 100 characters; told in the list of credentials.</param>
public sealed record TabletName(string Name);
