using LogBook.Web.Components;
using Microsoft.AspNetCore.Mvc;

namespace LogBook.Web.Account;

/// <summary>Small acts that set a cookie and go back.</summary>
public static class AccountActs
{
    /// <summary>Maps them.</summary>
    public static void MapAccountActs(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/account/language", SetLanguage).AllowAnonymous().ExcludeFromDescription();

    // Reading the form binds it to the anti-forgery check of the pipeline.
    private static IResult SetLanguage(HttpContext context, [FromForm] string language, [FromForm] string? back)
    {
        if (LanguageCodes.Parse(language) is { } chosen)
        {
            LanguageCookie.Set(context, chosen);
        }

        return Results.LocalRedirect(back is "/account/sign-in" ? back : LocalPath.Of(back));
    }
}
