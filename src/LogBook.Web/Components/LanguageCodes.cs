using LogBook.Domain.Languages;

namespace LogBook.Web.Components;

/// <summary>Codes of the languages (ISO 639-1), and which one a request asks for.</summary>
public static class LanguageCodes
{
    /// <summary>Cookie with the language chosen on this device.</summary>
    public const string Cookie = "logbook-language";

    /// <summary>Claim with the language of the account.</summary>
    public const string Claim = "logbook:language";

    /// <summary>Code of a language.</summary>
    public static string Of(Language language) => language switch
    {
        Language.Spanish => "es",
        Language.Portuguese => "pt",
        _ => "en",
    };

    /// <summary>The language of a code such as "es" or "pt-BR"; null for any other.</summary>
    public static Language? Parse(string? code) => code?.Split('-', '_')[0].Trim().ToLowerInvariant() switch
    {
        "en" => Language.English,
        "es" => Language.Spanish,
        "pt" => Language.Portuguese,
        _ => null,
    };

    /// <summary>Account, then device, then what the browser asks for, then English.</summary>
    public static Language For(HttpContext context) =>
        Parse(context.User.FindFirst(Claim)?.Value)
        ?? Parse(context.Request.Cookies[Cookie])
        ?? context.Request.GetTypedHeaders().AcceptLanguage
            .OrderByDescending(item => item.Quality ?? 1)
            .Select(item => Parse(item.Value.Value))
            .FirstOrDefault(language => language is not null)
        ?? Language.English;
}
