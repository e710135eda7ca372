using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Web.Features.SetUp.People;

/// <summary>An account as an administrator sees it.</summary>
/// <param name="Id">Key.</param>
/// <param name="Email">Address it signs in with.</param>
/// <param name="Person">Code of the person in the set-up.</param>
/// <param name="Role">What it may do.</param>
/// <param name="Customer">Code of the customer whose records it sees, for accounts of customers and their staff.</param>
/// <param name="Language">Language spoken to it.</param>
/// <param name="DisabledAt">Since when it is shut out.</param>
/// <param name="HasPassword">Whether a password was set; false while an invitation is open.</param>
public sealed record AccountView(int Id, string Email, string? Person, PersonRole Role, string? Customer, Language Language, DateTime? DisabledAt, bool HasPassword);
