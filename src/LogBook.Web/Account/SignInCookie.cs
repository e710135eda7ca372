using LogBook.Web.Hosting;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;

namespace LogBook.Web.Account;

/// <summary>
/// The cookie of a sign-in. Its `__Host-` name makes browsers refuse it without Secure, for other paths and from sub-domains.
/// The demo alone, which is for looking at on one's own machine without a certificate, has a plain name and is Secure only
/// over https; browsers that count loopback as trustworthy would take the other one as well, but not all do.
/// </summary>
public static class SignInCookie
{
    /// <summary>Name outside the demo.</summary>
    public const string Name = "__Host-logbook";

    /// <summary>Name in the demo.</summary>
    public const string DemoName = "logbook-demo";

    /// <summary>Sets name, flags, times and addresses.</summary>
    public static void Configure(CookieAuthenticationOptions cookie, HostSettings settings)
    {
        cookie.Cookie.Name = settings.IsDemo ? DemoName : Name;
        cookie.Cookie.SecurePolicy = settings.IsDemo ? CookieSecurePolicy.SameAsRequest : CookieSecurePolicy.Always;
        cookie.Cookie.HttpOnly = true;
        cookie.Cookie.Path = "/";

        // Lax, so that the link in a mail finds its reader signed in; what changes things is guarded by its own token.
        cookie.Cookie.SameSite = SameSiteMode.Lax;
        cookie.ExpireTimeSpan = TimeSpan.FromDays(14);
        cookie.SlidingExpiration = true;
        if (settings.IsDemo)
        {
            // Browsers know nothing of the demo's clock.
            cookie.TimeProvider = TimeProvider.System;
        }

        cookie.LoginPath = "/account/sign-in";
        cookie.AccessDeniedPath = "/account/not-here";
        cookie.ReturnUrlParameter = "back";
        cookie.Events.OnRedirectToLogin = context => Answer(context, StatusCodes.Status401Unauthorized);
        cookie.Events.OnRedirectToAccessDenied = context => Answer(context, StatusCodes.Status403Forbidden);
    }

    // Programs get a status, people a page.
    private static Task Answer(RedirectContext<CookieAuthenticationOptions> context, int status)
    {
        if (context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal))
        {
            context.Response.StatusCode = status;
        }
        else
        {
            context.Response.Redirect(context.RedirectUri);
        }

        return Task.CompletedTask;
    }
}
