using LogBook.Domain.Languages;
using LogBook.Web.Components;

namespace LogBook.Web.Account;

/// <summary>Remembers the language on a device, for pages before sign-in.</summary>
public static class LanguageCookie
{
    /// <summary>Sets it for a year.</summary>
    public static void Set(HttpContext context, Language language) => context.Response.Cookies.Append(
        LanguageCodes.Cookie,
        LanguageCodes.Of(language),
        new CookieOptions { MaxAge = TimeSpan.FromDays(365), HttpOnly = true, IsEssential = true, SameSite = SameSiteMode.Lax, Secure = context.Request.IsHttps, Path = "/" });
}
