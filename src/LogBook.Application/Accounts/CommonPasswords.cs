using LogBook.Application.Data;
using Microsoft.AspNetCore.Identity;

namespace LogBook.Application.Accounts;

/// <summary>
/// Refuses passwords that anybody would try first. Length does most (at least 12 characters, no rules of composition);
/// this takes out the long ones that are no secret. It is no list of leaked passwords: such a list is not shipped.
/// </summary>
public sealed class CommonPasswords : IPasswordValidator<LogBookUser>
{
    /// <summary>Code of the error.</summary>
    public const string Code = "PasswordCommon";

    private const int FewestDifferent = 5;

    // Stems that make up most long, weak passwords; what is left after taking them out must still be long enough to guess at.
    private static readonly string[] Stems =
    [
        "password", "passwort", "contraseña", "contrasena", "senha", "qwerty", "qwertz", "azerty", "asdfgh", "zxcvbn", "letmein", "welcome",
        "bienvenido", "bemvindo", "iloveyou", "teamo", "administrator", "administrador", "admin", "login", "changeme", "secret", "secreto",
        "segredo", "football", "futbol", "futebol", "baseball", "superman", "princess", "princesa", "dragon", "monkey", "master", "sunshine",
        "trustno", "default", "logbook", "coolingtower", "abcdef", "abc123", "123456789", "12345678", "1234567", "123456", "12345", "1234",
        "987654321", "87654321", "654321", "correcthorsebatterystaple",
    ];

    private const int FewestLeft = 6;

    /// <summary>Whether a password is one of those that anybody would try first.</summary>
    public static bool IsCommon(string password, string? userName)
    {
        var lower = password.ToLowerInvariant();
        if (lower.Distinct().Count() < FewestDifferent || IsRepeated(lower) || IsRun(lower))
        {
            return true;
        }

        var rest = new string([.. lower.Where(char.IsLetterOrDigit)]);
        foreach (var stem in Stems.Concat(NameParts(userName)))
        {
            rest = rest.Replace(stem, string.Empty, StringComparison.Ordinal);
        }

        return rest.Length < FewestLeft && rest.Length < lower.Length;
    }

    /// <inheritdoc />
    public Task<IdentityResult> ValidateAsync(UserManager<LogBookUser> manager, LogBookUser user, string? password) => Task.FromResult(
        password is not null && IsCommon(password, user.UserName)
            ? IdentityResult.Failed(new IdentityError { Code = Code, Description = "The password is too common." })
            : IdentityResult.Success);

    private static IEnumerable<string> NameParts(string? userName) => (userName ?? string.Empty).ToLowerInvariant()
        .Split(['@', '.', '-', '_', ' '], StringSplitOptions.RemoveEmptyEntries).Where(part => part.Length > 3);

    // "winterwinter", "abcabcabcabc".
    private static bool IsRepeated(string text) => (text + text).IndexOf(text, 1, StringComparison.Ordinal) < text.Length;

    // "abcdefghijkl", "210987654321": each character one beside the last.
    private static bool IsRun(string text)
    {
        var steps = text.Zip(text.Skip(1), (a, b) => Math.Abs(b - a) is 1 or 9);
        return steps.Count(step => step) >= text.Length - 2;
    }
}
