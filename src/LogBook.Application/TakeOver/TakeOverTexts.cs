using LogBook.Domain.Languages;

namespace LogBook.Application.TakeOver;

/// <summary>Words of the story of a site.</summary>
internal static class TakeOverTexts
{
    public static readonly Text FindingOpen = new("{0}, still open", "{0}, sigue abierto", "{0}, ainda aberta");
    public static readonly Text FindingClosed = new("{0}, until {1}", "{0}, hasta el {1}", "{0}, até {1}");
    public static readonly Text ManySettings = new("{0} settings changed or found changed", "{0} ajustes cambiados o hallados cambiados", "{0} ajustes mudados ou encontrados mudados");
}
