using LogBook.Domain.Languages;

namespace LogBook.Web.Features;

/// <summary>Words that several reading pages share.</summary>
public static class ReadingTexts
{
    public static readonly Text All = new("All", "Todos", "Todos");
    public static readonly Text Site = new("Site", "Sitio", "Local");
    public static readonly Text System = new("System", "Sistema", "Sistema");
    public static readonly Text Customer = new("Customer", "Cliente", "Cliente");
    public static readonly Text Technician = new("Technician", "Técnico", "Técnico");
    public static readonly Text Kind = new("Kind", "Tipo", "Tipo");
    public static readonly Text Severity = new("How soon", "Urgencia", "Urgência");
    public static readonly Text State = new("State", "Estado", "Estado");
    public static readonly Text From = new("From", "Desde", "De");
    public static readonly Text To = new("To", "Hasta", "Até");
    public static readonly Text Day = new("Day", "Día", "Dia");
    public static readonly Text Findings = new("Findings", "Hallazgos", "Constatações");
    public static readonly Text OpenFindings = new("Open findings", "Hallazgos abiertos", "Constatações abertas");
    public static readonly Text NoFindings = new("No open findings", "Ningún hallazgo abierto", "Nenhuma constatação aberta");
    public static readonly Text Systems = new("Systems", "Sistemas", "Sistemas");
    public static readonly Text LastVisit = new("Last visit", "Última visita", "Última visita");
    public static readonly Text NextDue = new("Next due", "Próxima visita", "Próxima visita");
    public static readonly Text NeverVisited = new("No visit yet", "Sin visitas todavía", "Sem visitas ainda");
    public static readonly Text NoInterval = new("no interval agreed", "sin intervalo acordado", "sem intervalo combinado");
    public static readonly Text DueIn = new("in {0} days", "en {0} días", "em {0} dias");
    public static readonly Text DueTomorrow = new("tomorrow", "mañana", "amanhã");
    public static readonly Text DueToday = new("today", "hoy", "hoje");
    public static readonly Text OverBy = new("{0} days over", "{0} días de retraso", "{0} dias de atraso");
    public static readonly Text OverByOne = new("1 day over", "1 día de retraso", "1 dia de atraso");
    public static readonly Text DaysAgo = new("{0} days ago", "hace {0} días", "há {0} dias");
    public static readonly Text Yesterday = new("yesterday", "ayer", "ontem");
    public static readonly Text Every = new("every {0} days", "cada {0} días", "a cada {0} dias");
    public static readonly Text StartVisit = new("Start visit", "Empezar visita", "Iniciar visita");
    public static readonly Text Page = new("Page {0} of {1}", "Página {0} de {1}", "Página {0} de {1}");
    public static readonly Text Pages = new("Pages of the list", "Páginas de la lista", "Páginas da lista");
    public static readonly Text Earlier = new("Previous page", "Página anterior", "Página anterior");
    public static readonly Text Later = new("Next page", "Página siguiente", "Próxima página");
    public static readonly Text PageOfMore = new("Page {0} of more than {1}", "Página {0} de más de {1}", "Página {0} de mais de {1}");
    public static readonly Text CountMore = new("more than {0} in all", "más de {0} en total", "mais de {0} no total");
    public static readonly Text Count = new("{0} in all", "{0} en total", "{0} no total");
    public static readonly Text Filter = new("Show only", "Mostrar solo", "Mostrar só");
    public static readonly Text NothingWithFilter = new("Nothing matches these filters", "Nada coincide con estos filtros", "Nada corresponde a estes filtros");
    public static readonly Text ClearFilters = new("Show all again", "Mostrar todo otra vez", "Mostrar tudo de novo");
    public static readonly Text Value = new("Value", "Valor", "Valor");
    public static readonly Text Interval = new("95 % interval", "Intervalo del 95 %", "Intervalo de 95 %");
    public static readonly Text Limit = new("Limit", "Límite", "Limite");
    public static readonly Text Unit = new("Unit", "Unidad", "Unidade");
    public static readonly Text What = new("What", "Qué", "O quê");
    public static readonly Text Below = new("below", "por debajo", "abaixo");
    public static readonly Text Above = new("above", "por encima", "acima");
    public static readonly Text NotRead = new("not read", "no leído", "não lido");
    public static readonly Text Open = new("Open", "Abrir", "Abrir");
    public static readonly Text Technicians = new("Technicians", "Técnicos", "Técnicos");
}
