using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Summaries;

/// <summary>Words of the page around a visit summary.</summary>
public static class SummaryPageTexts
{
    public static readonly Text Back = new("The visit", "La visita", "A visita");
    public static readonly Text InLanguage = new("Language", "Idioma", "Idioma");
}
