using LogBook.Application.Search;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Search;

/// <summary>Words of the search.</summary>
public static class SearchTexts
{
    public static readonly Text Title = new("Search", "Buscar", "Buscar");
    public static readonly Text Label = new("Code, name or day (2025-03-03)", "Código, nombre o día (2025-03-03)", "Código, nome ou dia (2025-03-03)");
    public static readonly Text Find = new("Find", "Buscar", "Buscar");
    public static readonly Text TooShort = new("Type at least two signs", "Escriba al menos dos signos", "Digite ao menos dois sinais");
    public static readonly Text Nothing = new("Nothing found for “{0}”", "Nada encontrado para «{0}»", "Nada encontrado para “{0}”");

    /// <summary>Heading of a kind of hit.</summary>
    public static Text NameOf(SearchHitKind kind) => kind switch
    {
        SearchHitKind.Site => new("Sites", "Sitios", "Locais"),
        SearchHitKind.System => new("Systems", "Sistemas", "Sistemas"),
        SearchHitKind.Customer => new("Customers", "Clientes", "Clientes"),
        SearchHitKind.Visit => new("Visits", "Visitas", "Visitas"),
        SearchHitKind.Product => new("Products", "Productos", "Produtos"),
        _ => new("People", "Personas", "Pessoas"),
    };
}
