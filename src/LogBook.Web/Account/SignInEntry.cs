namespace LogBook.Web.Account;

/// <summary>What was written into the sign-in form.</summary>
public sealed class SignInEntry
{
    public string? Email { get; set; }

    public string? Password { get; set; }

    public bool Remember { get; set; }
}
