using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Round;

/// <summary>Words of Today's round.</summary>
public static class RoundPageTexts
{
    public static readonly Text Title = new("Today's round", "Ronda de hoy", "Ronda de hoje");
    public static readonly Text Empty = new("No site is on your round", "Ningún sitio está en su ronda", "Nenhum local está na sua ronda");
    public static readonly Text EmptyMore = new(
        "The supervisor puts sites on a round in the set-up.",
        "El supervisor asigna los sitios a una ronda en la configuración.",
        "O supervisor põe os locais em uma ronda na configuração.");
    public static readonly Text AllSites = new("All sites", "Todos los sitios", "Todos os locais");
    public static readonly Text SinceHere = new("Since you were here", "Desde que estuvo aquí", "Desde que você esteve aqui");
    public static readonly Text SinceDay = new("since {0}", "desde {0}", "desde {0}");
    public static readonly Text Nothing = new("Nothing has changed on record", "No consta ningún cambio", "Não há mudança registrada");
    public static readonly Text NeverHere = new("You have not been here yet", "Usted aún no ha estado aquí", "Você ainda não esteve aqui");
    public static readonly Text Changes = new("{0} changes", "{0} cambios", "{0} mudanças");
    public static readonly Text OneChange = new("1 change", "1 cambio", "1 mudança");
    public static readonly Text PlannedToday = new("Planned for you today", "Planificado para usted hoy", "Planejado para você hoje");
    public static readonly Text DueNow = new("Due", "Vencen", "Vencem");
    public static readonly Text DueSoon = new("Next days", "Próximos días", "Próximos dias");
    public static readonly Text Later = new("Later", "Más tarde", "Mais tarde");
    public static readonly Text Because = new("Why", "Por qué", "Por quê");
    public static readonly Text FurtherAhead = new("{0} more", "{0} más", "mais {0}");
    public static readonly Text WithoutClock = new("Without a due day", "Sin día previsto", "Sem dia previsto");
}
