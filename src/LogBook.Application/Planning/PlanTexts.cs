using LogBook.Domain.Languages;

namespace LogBook.Application.Planning;

/// <summary>Why a plan is not changed.</summary>
internal static class PlanTexts
{
    public static readonly Text DayIsOver = new("This day is over; its plan stays as it was.", "Este día ya pasó; su plan queda como estaba.", "Este dia já passou; o plano fica como estava.");
    public static readonly Text SiteUnknown = new("There is no site {0} in use.", "No hay un sitio {0} en uso.", "Não há um local {0} em uso.");
    public static readonly Text PersonUnknown = new("{0} is nobody of the firm who visits sites.", "{0} no es nadie de la empresa que visite sitios.", "{0} não é ninguém da empresa que visite locais.");
}
