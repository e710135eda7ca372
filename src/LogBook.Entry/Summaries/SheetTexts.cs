using LogBook.Domain.Languages;

namespace LogBook.Entry.Summaries;

/// <summary>Words around the summary that is shown before the visit is closed.</summary>
public static class SheetTexts
{
    public static readonly Text Show = new("Show the summary to sign", "Mostrar el resumen para firmar", "Mostrar o resumo para assinar");
    public static readonly Text Back = new("Back to the form", "Volver al formulario", "Voltar ao formulário");
    public static readonly Text Pdf = new("PDF", "PDF", "PDF");
    public static readonly Text MakingPdf = new("The PDF is being made …", "Se está haciendo el PDF …", "O PDF está sendo feito …");
    public static readonly Text PdfMade = new("The PDF is on this device: {0}", "El PDF está en este dispositivo: {0}", "O PDF está neste aparelho: {0}");
    public static readonly Text PdfFailed = new("The PDF could not be made on this device.", "No se pudo hacer el PDF en este dispositivo.", "Não foi possível fazer o PDF neste aparelho.");
    public static readonly Text SignedOn = new("Date", "Fecha", "Data");
    public static readonly Text InLanguage = new("Language of the summary", "Idioma del resumen", "Idioma do resumo");
    public static readonly Text NotClosed = new(
        "As entered so far; the visit is not closed yet.",
        "Tal como está anotado hasta ahora; la visita aún no está cerrada.",
        "Como anotado até agora; a visita ainda não está fechada.");
}
