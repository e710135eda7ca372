namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>Something to correct.</summary>
/// <param name="Place">Identifier of the field on the page; null where it belongs to none.</param>
/// <param name="Message">Field, what stands there and what is expected.</param>
public sealed record FormIssue(string? Place, string Message);
