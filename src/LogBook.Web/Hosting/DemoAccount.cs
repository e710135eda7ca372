using LogBook.Domain.Sites;

namespace LogBook.Web.Hosting;

/// <summary>An account of the demo; no secret, since the demo holds invented records only.</summary>
/// <param name="Email">Address to sign in with.</param>
/// <param name="Password">Its password.</param>
/// <param name="Role">What it may do.</param>
/// <param name="CustomerOfSite">For a customer: code of a site whose owner it is.</param>
public sealed record DemoAccount(string Email, string Password, PersonRole Role, string? CustomerOfSite = null);
