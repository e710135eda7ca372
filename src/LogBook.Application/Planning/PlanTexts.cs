using LogBook.Domain.Languages;

namespace LogBook.Application.Planning;

/// <summary>Why a plan is not changed.</summary>
internal static class PlanTexts
{
    public static readonly Text DayIsOver = new("This day is over; its plan stays as it was.", "Este día ya pasó; su plan queda como estaba.", "Este dia já passou; o plano fica como estava.");
    public static readonly Text SiteUnknown = new("There is no site {0} in use.", "No hay un sitio {0} en uso.", "Não há um local {0} em uso.");
    public static readonly Text LastBeforeFirst = new("The last day lies before the first.", "El último día es anterior al primero.", "O último dia é anterior ao primeiro.");
    public static readonly Text DaysAreOver = new("These days are over; they stay as they were.", "Estos días ya pasaron; quedan como estaban.", "Estes dias já passaram; ficam como estavam.");
    public static readonly Text OtherReason = new("This reason does not belong to days of this kind.", "Este motivo no corresponde a días de este tipo.", "Este motivo não corresponde a dias deste tipo.");
    public static readonly Text TooLong = new("At most {0} days at a time.", "Como máximo {0} días de una vez.", "No máximo {0} dias de uma vez.");
    public static readonly Text NobodyStandsIn = new("{0} cannot stand in: choose a colleague who visits sites.", "{0} no puede sustituir: elija un compañero que visite sitios.", "{0} não pode substituir: escolha um colega que visite locais.");
    public static readonly Text NoteTooLong = new("The note has at most {0} characters.", "La nota tiene como máximo {0} caracteres.", "A nota tem no máximo {0} caracteres.");
    public static readonly Text PatchMoved = new("{0} is no longer on that round; look again.", "{0} ya no está en esa ronda; mire de nuevo.", "{0} não está mais nessa ronda; olhe de novo.");
    public static readonly Text NoSites = new("Choose at least one site.", "Elija al menos un sitio.", "Escolha ao menos um local.");
    public static readonly Text HasBegun = new(
        "{0} has begun the visit at {1}: the day cannot be taken back any more. A supervisor can plan it anew.",
        "{0} ya empezó la visita a {1}: el día ya no se puede recuperar. Un supervisor puede planificarlo de nuevo.",
        "{0} já começou a visita a {1}: o dia não pode mais ser retomado. Um supervisor pode planejá-lo de novo.");
    public static readonly Text PersonUnknown = new("{0} is nobody of the firm who visits sites.", "{0} no es nadie de la empresa que visite sitios.", "{0} não é ninguém da empresa que visite locais.");
}
