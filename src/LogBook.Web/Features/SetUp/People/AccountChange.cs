using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Web.Features.SetUp.People;

/// <summary>What an administrator wants an account to be.</summary>
/// <param name="Id">Key; null for a new account.</param>
/// <param name="Email">Address it signs in with.</param>
/// <param name="Person">Code of the person in the set-up.</param>
/// <param name="Role">What it may do.</param>
/// <param name="Customer">Code of the customer, needed for accounts of customers and their staff.</param>
/// <param name="Language">Language spoken to it.</param>
public sealed record AccountChange(int? Id, string Email, string? Person, PersonRole? Role, string? Customer, Language Language);
