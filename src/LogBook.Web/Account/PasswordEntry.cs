namespace LogBook.Web.Account;

/// <summary>What was written into the form that changes a password.</summary>
public sealed class PasswordEntry
{
    /// <summary>A longer one would only make hashing slow.</summary>
    public const int Longest = 200;

    public string? Old { get; set; }

    public string? New { get; set; }

    public string? Again { get; set; }
}
