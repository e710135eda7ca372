namespace LogBook.Web.Account;

/// <summary>Addresses to go on to after signing in: within this installation only.</summary>
public static class LocalPath
{
    /// <summary>The path when it stays here, otherwise the first page.</summary>
    public static string Of(string? path) =>
        path is ['/', ..] and not ['/', '/' or '\\', ..] && !path.Any(char.IsControl) && !path.StartsWith("/account/sign", StringComparison.OrdinalIgnoreCase) ? path : "/";
}
