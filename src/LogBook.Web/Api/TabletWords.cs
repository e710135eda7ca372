using LogBook.Domain.Languages;

namespace LogBook.Web.Api;

/// <summary>Words in each language: a tablet without signal may be asked for another one than it was filled in.</summary>
/// <param name="En">English.</param>
/// <param name="Es">Spanish.</param>
/// <param name="Pt">Portuguese.</param>
public sealed record TabletWords(string En, string Es, string Pt)
{
    /// <summary>Says the same in each language.</summary>
    /// <param name="say">Words in one language.</param>
    public static TabletWords Of(Func<Language, string> say) => new(say(Language.English), say(Language.Spanish), say(Language.Portuguese));
}
