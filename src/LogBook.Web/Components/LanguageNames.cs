using LogBook.Domain.Languages;

namespace LogBook.Web.Components;

/// <summary>Languages by their own names.</summary>
public static class LanguageNames
{
    /// <summary>Name of a language in itself.</summary>
    public static string Of(Language language) => language switch
    {
        Language.Spanish => "Español",
        Language.Portuguese => "Português",
        _ => "English",
    };
}
