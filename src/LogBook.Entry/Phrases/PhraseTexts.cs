using LogBook.Domain.Languages;

namespace LogBook.Entry.Phrases;

/// <summary>Words around the quick phrases.</summary>
public static class PhraseTexts
{
    public static readonly Text PhrasesFor = new("Quick phrases: {0}", "Frases rápidas: {0}", "Frases rápidas: {0}");
}
