using LogBook.Domain.Languages;
using Microsoft.AspNetCore.Identity;

namespace LogBook.Web.Account;

/// <summary>Says in a person's language why an account was not changed.</summary>
public static class AccountErrors
{
    /// <summary>Words for the errors of the account store.</summary>
    public static IReadOnlyList<string> Say(IEnumerable<IdentityError> errors, Language language) => [.. errors.Select(error => error.Code switch
    {
        nameof(IdentityErrorDescriber.PasswordTooShort) => AccountTexts.PasswordShort.In(language),
        nameof(IdentityErrorDescriber.PasswordMismatch) => AccountTexts.PasswordWrong.In(language),
        CommonPasswords.Code => AccountTexts.PasswordCommon.In(language),
        _ => AccountTexts.NotAccepted.In(language, error.Description),
    }).Distinct()];
}
