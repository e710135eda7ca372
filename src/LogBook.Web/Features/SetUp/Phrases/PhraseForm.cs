using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;
using LogBook.Web.Features.SetUp.Forms;

namespace LogBook.Web.Features.SetUp.Phrases;

/// <summary>Form of the firm's own quick phrases: one list for each place where they are offered.</summary>
internal static class PhraseForm
{
    public static readonly IReadOnlyList<FormField> Fields = [.. Enum.GetValues<PhraseUse>().Select(use =>
        Ask.Rows(
            QuickPhrases.CodeOf(use),
            PhrasePageTexts.NameOf(use),
            PhrasePageTexts.Phrase,
            Ask.Text("en", PhrasePageTexts.English).Needed(),
            Ask.Text("es", PhrasePageTexts.Spanish).Needed(),
            Ask.Text("pt", PhrasePageTexts.Portuguese).Needed()) with { Hint = BuiltInOf(use) })];

    private static Text BuiltInOf(PhraseUse use)
    {
        string In(Language language) => PhrasePageTexts.BuiltIn.In(language, string.Join("; ", LogBook.Entry.Phrases.PhraseBook.Default.Of(use).Select(phrase => phrase.In(language))));
        return new Text(In(Language.English), In(Language.Spanish), In(Language.Portuguese));
    }
}
