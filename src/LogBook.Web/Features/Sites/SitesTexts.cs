using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Sites;

/// <summary>Words of the list of sites and the site card.</summary>
public static class SitesTexts
{
    public static readonly Text Title = new("Sites", "Sitios", "Locais");
    public static readonly Text Empty = new("No site yet", "Todavía no hay sitios", "Ainda não há locais");
    public static readonly Text EmptyMore = new(
        "Sites come with the set-up: an import, or entered by the supervisor.",
        "Los sitios llegan con la configuración: por importación o introducidos por el supervisor.",
        "Os locais chegam com a configuração: por importação ou informados pelo supervisor.");
    public static readonly Text Find = new("Find a site", "Buscar un sitio", "Encontrar um local");
    public static readonly Text Order = new("Order", "Orden", "Ordem");
    public static readonly Text ByDue = new("Due first", "Primero las que vencen", "Primeiro os que vencem");
    public static readonly Text ByFindings = new("Findings first", "Primero los hallazgos", "Primeiro as constatações");
    public static readonly Text ByCode = new("By code", "Por código", "Por código");
    public static readonly Text Contacts = new("Contacts", "Contactos", "Contatos");
    public static readonly Text NoContacts = new("No contact on file", "Sin contactos registrados", "Sem contatos registrados");
    public static readonly Text GetsSummaries = new("gets visit summaries", "recibe resúmenes de visita", "recebe resumos da visita");
    public static readonly Text LastVisits = new("Last visits", "Últimas visitas", "Últimas visitas");
    public static readonly Text AllVisits = new("All visits to this site", "Todas las visitas a este sitio", "Todas as visitas a este local");
    public static readonly Text NoVisits = new("Nobody has handed in a visit to this site", "Nadie ha entregado una visita a este sitio", "Ninguém entregou uma visita a este local");
    public static readonly Text Actions = new("Open actions", "Acciones abiertas", "Ações abertas");
    public static readonly Text NoActions = new("No open action", "Ninguna acción abierta", "Nenhuma ação aberta");
    public static readonly Text Recommendations = new("Recommendations without an answer", "Recomendaciones sin respuesta", "Recomendações sem resposta");
    public static readonly Text NoRecommendations = new("None waits for an answer", "Ninguna espera respuesta", "Nenhuma espera resposta");
    public static readonly Text Since = new("since {0}", "desde {0}", "desde {0}");
    public static readonly Text DueOn = new("due {0}", "vence {0}", "vence {0}");
    public static readonly Text Owner = new("owner: {0}", "responsable: {0}", "responsável: {0}");
    public static readonly Text IfNot = new("If not: {0}", "Si no: {0}", "Se não: {0}");
    public static readonly Text Access = new("Access", "Acceso", "Acesso");
    public static readonly Text Address = new("Address", "Dirección", "Endereço");
    public static readonly Text History = new("Site history", "Historial del sitio", "Histórico do local");
    public static readonly Text Sheet = new("Sheet", "Hoja", "Folha");
    public static readonly Text Volume = new("Volume", "Volumen", "Volume");
    public static readonly Text Round = new("On the round of {0}", "En la ronda de {0}", "Na ronda de {0}");
    public static readonly Text NoPhotos = new("No photos here: the site does not allow them", "Sin fotos aquí: el sitio no las permite", "Sem fotos aqui: o local não as permite");
    public static readonly Text ShowAll = new("Show all", "Mostrar todos", "Mostrar todas");
}
