using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Web.Features.Round.Leave;

/// <summary>Words of leave, closed days and the handing over of a patch.</summary>
public static class LeaveTexts
{
    public static readonly Text Title = new("Leave and closed days", "Ausencias y días cerrados", "Ausências e dias fechados");
    public static readonly Text Intro = new(
        "The plan proposes no visit for a closed day, and sends who stands in. The day of a clock never moves: what falls due on a closed day is proposed for the last open day before it.",
        "El plan no propone visitas en un día cerrado y envía a quien sustituye. El día de un plazo nunca se mueve: lo que vence en un día cerrado se propone para el último día abierto anterior.",
        "O plano não propõe visitas em um dia fechado e envia quem substitui. O dia de um prazo nunca muda: o que vence em um dia fechado é proposto para o último dia aberto antes dele.");
    public static readonly Text None = new("Nobody is away and nothing is closed", "Nadie está ausente y nada está cerrado", "Ninguém está ausente e nada está fechado");
    public static readonly Text NoneMore = new("Enter days below before they begin; the plan and the rounds follow at once.", "Anote los días abajo antes de que empiecen; el plan y las rondas los siguen enseguida.", "Anote os dias abaixo antes que comecem; o plano e as rondas os seguem logo.");
    public static readonly Text Coming = new("Now and coming", "Ahora y próximamente", "Agora e a seguir");
    public static readonly Text Past = new("Over since less than 90 days: {0}", "Terminados hace menos de 90 días: {0}", "Terminados há menos de 90 dias: {0}");
    public static readonly Text FromTo = new("{0} to {1}", "{0} a {1}", "{0} a {1}");
    public static readonly Text Now = new("now", "ahora", "agora");
    public static readonly Text StandsIn = new("{0} stands in", "sustituye {0}", "{0} substitui");
    public static readonly Text NobodyStandsIn = new("nobody stands in", "nadie sustituye", "ninguém substitui");
    public static readonly Text Change = new("Change", "Cambiar", "Alterar");
    public static readonly Text TakeBack = new("Take back", "Retirar", "Retirar");
    public static readonly Text Undo = new("Put it back", "Restablecer", "Restabelecer");
    public static readonly Text PlanFrom = new("Plan from that day", "Plan desde ese día", "Plano a partir desse dia");
    public static readonly Text Add = new("Enter days", "Anotar días", "Anotar dias");
    public static readonly Text Changing = new("Change: {0}", "Cambiar: {0}", "Alterar: {0}");
    public static readonly Text What = new("What", "Qué", "O quê");
    public static readonly Text Who = new("Who", "Quién", "Quem");
    public static readonly Text Which = new("Which site", "Qué sitio", "Que local");
    public static readonly Text First = new("First day", "Primer día", "Primeiro dia");
    public static readonly Text Last = new("Last day", "Último día", "Último dia");
    public static readonly Text StandIn = new("Who stands in", "Quién sustituye", "Quem substitui");
    public static readonly Text NobodyYet = new("nobody yet", "nadie todavía", "ninguém ainda");
    public static readonly Text Note = new("Note, nothing about anybody's health", "Nota, nada sobre la salud de nadie", "Nota, nada sobre a saúde de ninguém");
    public static readonly Text Save = new("Save", "Guardar", "Salvar");
    public static readonly Text Cancel = new("Cancel", "Cancelar", "Cancelar");
    public static readonly Text Saved = new("Kept: {0}.", "Guardado: {0}.", "Guardado: {0}.");
    public static readonly Text TakenBack = new("Taken back: {0}.", "Retirado: {0}.", "Retirado: {0}.");
    public static readonly Text Meanwhile = new("These days were changed meanwhile. They are shown as they stand now; please try again.", "Estos días cambiaron entretanto. Se muestran como están ahora; inténtelo de nuevo.", "Estes dias mudaram nesse meio-tempo. São mostrados como estão agora; tente de novo.");
    public static readonly Text DaysNeeded = new("First and last day are needed.", "Hacen falta el primer y el último día.", "São precisos o primeiro e o último dia.");
    public static readonly Text WhoNeeded = new("Choose who or which site.", "Elija quién o qué sitio.", "Escolha quem ou que local.");
    public static readonly Text Firm = new("Whole firm", "Toda la empresa", "Toda a empresa");
    public static readonly Text Choose = new("choose", "elija", "escolha");

    public static readonly Text AwayUntil = new("away {0} to {1}", "ausente del {0} al {1}", "ausente de {0} a {1}");
    public static readonly Text ClosedUntil = new("closed {0} to {1}", "cerrado del {0} al {1}", "fechado de {0} a {1}");
    public static readonly Text NotServing = new("no longer visits sites", "ya no visita sitios", "não visita mais locais");
    public static readonly Text NeedsSomebody = new("needs somebody", "necesita a alguien", "precisa de alguém");
    public static readonly Text GoesInstead = new("{0} goes instead of {1}", "va {0} en lugar de {1}", "{0} vai em lugar de {1}");
    public static readonly Text GoBy = new("closed on the day it is due: go by {0}", "cerrado el día en que vence: ir hasta el {0}", "fechado no dia em que vence: ir até {0}");
    public static readonly Text OpensOn = new("closed until it is late: opens on {0}", "cerrado hasta que vence: abre el {0}", "fechado até vencer: abre em {0}");
    public static readonly Text InPlaceOf = new("in place of {0}", "en lugar de {0}", "em lugar de {0}");

    public static readonly Text PatchTitle = new("Hand a patch over", "Pasar una zona", "Passar uma área");
    public static readonly Text PatchIntro = new(
        "For good: the own technician of each chosen site changes in its set-up. For some days only, enter leave with who stands in: that gives itself back.",
        "Para siempre: el técnico propio de cada sitio elegido cambia en su ficha. Para unos días, anote una ausencia con quien sustituye: se devuelve sola.",
        "Para sempre: o técnico próprio de cada local escolhido muda no cadastro. Para alguns dias, anote uma ausência com quem substitui: volta sozinha.");
    public static readonly Text PatchFrom = new("Sites of", "Sitios de", "Locais de");
    public static readonly Text PatchTo = new("go to", "pasan a", "passam a");
    public static readonly Text PatchNobody = new("nobody", "nadie", "ninguém");
    public static readonly Text PatchEmpty = new("No site stands on this round", "Ningún sitio está en esta ronda", "Nenhum local está nesta ronda");
    public static readonly Text PatchCount = new("{0} of {1} sites, {2} min on site a round", "{0} de {1} sitios, {2} min en sitio por ronda", "{0} de {1} locais, {2} min no local por ronda");
    public static readonly Text PatchAll = new("All", "Todos", "Todos");
    public static readonly Text PatchNone = new("None", "Ninguno", "Nenhum");
    public static readonly Text PatchGo = new("Hand {0} sites to {1}", "Pasar {0} sitios a {1}", "Passar {0} locais a {1}");
    public static readonly Text PatchChoose = new("Choose who takes them over.", "Elija quién los recibe.", "Escolha quem os recebe.");
    public static readonly Text PatchDone = new("{0} sites are now on the round of {1}.", "{0} sitios están ahora en la ronda de {1}.", "{0} locais estão agora na ronda de {1}.");
    public static readonly Text PatchBack = new("Give them back to {0}", "Devolverlos a {0}", "Devolvê-los a {0}");
    public static readonly Text Left = new("{0}, {1}", "{0}, {1}", "{0}, {1}");

    /// <summary>Name of a kind.</summary>
    public static Text NameOf(DaysOffKind kind) => kind switch
    {
        DaysOffKind.Person => new Text("A person is away", "Una persona está ausente", "Uma pessoa está ausente"),
        DaysOffKind.Firm => new Text("The firm is closed", "La empresa está cerrada", "A empresa está fechada"),
        _ => new Text("A site is closed", "Un sitio está cerrado", "Um local está fechado"),
    };
}
