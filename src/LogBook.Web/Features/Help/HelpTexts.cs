using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Help;

/// <summary>Words of the help pages themselves.</summary>
public static class HelpTexts
{
    public static readonly Text Title = new("Help", "Ayuda", "Ajuda");

    public static readonly Text Intro = new(
        "A page for each screen. The word Help at the top of a screen opens the one that belongs to it.",
        "Una página para cada pantalla. La palabra Ayuda, arriba en cada pantalla, abre la suya.",
        "Uma página para cada tela. A palavra Ajuda, no alto de cada tela, abre a dela.");

    public static readonly Text AllPages = new("All help pages", "Todas las páginas de ayuda", "Todas as páginas de ajuda");

    public static readonly Text Scope = new(
        "LogBook reads and records; it never gives a controller an order. Product labels, safety data sheets, site rules, the law and licensed persons go before anything that stands here.",
        "LogBook lee y anota; nunca da órdenes a un controlador. Las etiquetas de los productos, las fichas de datos de seguridad, las normas del sitio, la ley y las personas habilitadas van antes que todo lo que aquí se dice.",
        "O LogBook lê e registra; nunca dá ordens a um controlador. Os rótulos dos produtos, as fichas de segurança, as regras do local, a lei e as pessoas habilitadas vêm antes de tudo o que está aqui.");
}
