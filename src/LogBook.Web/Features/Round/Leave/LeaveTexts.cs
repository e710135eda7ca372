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
    public static readonly Text Every = new("every {0},", "cada {0},", "toda semana {0},");
    public static readonly Text OnlyOn = new("Only on these weekdays, every week", "Solo estos días, todas las semanas", "Só nestes dias, toda semana");
    public static readonly Text OnlyOnMore = new("None chosen: every day of the span.", "Ninguno elegido: todos los días del periodo.", "Nenhum escolhido: todos os dias do período.");
    public static readonly Text StandIn = new("Who stands in", "Quién sustituye", "Quem substitui");
    public static readonly Text NobodyYet = new("nobody yet", "nadie todavía", "ninguém ainda");
    public static readonly Text Reason = new("Reason", "Motivo", "Motivo");
    public static readonly Text ReasonUnsaid = new("not said", "sin indicar", "não informado");
    public static readonly Text LentOf = new("Sites of {0}", "Sitios de {0}", "Locais de {0}");
    public static readonly Text LentAll = new("all go to {0}", "todos pasan a {0}", "todos passam a {0}");
    public static readonly Text LentSome = new("{0} go to {1}", "{0} pasan a {1}", "{0} passam a {1}");
    public static readonly Text HandTo = new("Hand this day to {0}", "Pasar este día a {0}", "Passar este dia a {0}");
    public static readonly Text ClosedToday = new("closed today", "cerrado hoy", "fechado hoje");
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

    public static readonly Text AwayOn = new("away {0}", "ausente: {0}", "ausente: {0}");
    public static readonly Text ClosedOn = new("closed {0}", "cerrado: {0}", "fechado: {0}");
    public static readonly Text NotServing = new("no longer visits sites", "ya no visita sitios", "não visita mais locais");
    public static readonly Text NeedsSomebody = new("needs somebody", "necesita a alguien", "precisa de alguém");
    public static readonly Text GoesInstead = new("{0} goes instead of {1}", "va {0} en lugar de {1}", "{0} vai em lugar de {1}");
    public static readonly Text GoBy = new("closed on the day it is due: go by {0}", "cerrado el día en que vence: ir hasta el {0}", "fechado no dia em que vence: ir até {0}");
    public static readonly Text OpensOn = new("closed until it is late: opens on {0}", "cerrado hasta que vence: abre el {0}", "fechado até vencer: abre em {0}");
    public static readonly Text InPlaceOf = new("in place of {0}", "en lugar de {0}", "em lugar de {0}");

    public static readonly Text PatchTitle = new("Hand a patch over", "Pasar una zona", "Passar uma área");
    public static readonly Text PatchIntro = new(
        "For good, the own technician of each chosen site changes in its set-up. For some days, the sites stand on the colleague's round and go back by themselves. Whoever is away needs nothing of this: enter leave with who stands in.",
        "Para siempre: el técnico propio de cada sitio elegido cambia en su ficha. Para unos días: los sitios están en la ronda del compañero y vuelven solos. Quien está ausente no necesita esto: anote una ausencia con quien sustituye.",
        "Para sempre: o técnico próprio de cada local escolhido muda no cadastro. Para alguns dias: os locais ficam na ronda do colega e voltam sozinhos. Quem está ausente não precisa disto: anote uma ausência com quem substitui.");
    public static readonly Text PatchSpan = new("For how long", "Por cuánto tiempo", "Por quanto tempo");
    public static readonly Text PatchForGood = new("for good", "para siempre", "para sempre");
    public static readonly Text PatchForDays = new("for some days", "para unos días", "para alguns dias");
    public static readonly Text PatchLent = new("On the round of {1} from {2} to {3}, then back by itself: {0}.", "En la ronda de {1} del {2} al {3}, después de vuelta sola: {0}.", "Na ronda de {1} de {2} a {3}, depois de volta sozinha: {0}.");
    public static readonly Text PatchNotLent = new("They stay with {0}.", "Se quedan con {0}.", "Ficam com {0}.");
    public static readonly Text PatchFrom = new("Sites of", "Sitios de", "Locais de");
    public static readonly Text PatchTo = new("go to", "pasan a", "passam a");
    public static readonly Text PatchNobody = new("nobody", "nadie", "ninguém");
    public static readonly Text PatchEmpty = new("No site stands on this round", "Ningún sitio está en esta ronda", "Nenhum local está nesta ronda");
    public static readonly Text PatchCount = new("Chosen: {0} of {1}, {2} min on site a round", "Elegidos: {0} de {1}, {2} min en sitio por ronda", "Escolhidos: {0} de {1}, {2} min no local por ronda");
    public static readonly Text PatchAll = new("All", "Todos", "Todos");
    public static readonly Text PatchNone = new("None", "Ninguno", "Nenhum");
    public static readonly Text PatchGo = new("Hand over to {1}: {0}", "Pasar a {1}: {0}", "Passar a {1}: {0}");
    public static readonly Text PatchChoose = new("Choose who takes them over.", "Elija quién los recibe.", "Escolha quem os recebe.");
    public static readonly Text PatchWhole = new("Hand all sites of {1} to {2}: {0}", "Pasar todos los sitios de {1} a {2}: {0}", "Passar todos os locais de {1} a {2}: {0}");
    public static readonly Text PatchOther = new("Some of them, for some days, or to somebody else", "Solo algunos, por unos días o a otra persona", "Só alguns, por alguns dias ou a outra pessoa");
    public static readonly Text PatchDone = new("Now on the round of {1}: {0}.", "Ahora en la ronda de {1}: {0}.", "Agora na ronda de {1}: {0}.");
    public static readonly Text PatchBack = new("Give them back to {0}", "Devolverlos a {0}", "Devolvê-los a {0}");
    public static readonly Text Left = new("{0}, {1}", "{0}, {1}", "{0}, {1}");

    /// <summary>Name of a kind.</summary>
    public static Text NameOf(DaysOffKind kind) => kind switch
    {
        DaysOffKind.Person => new Text("A person is away", "Una persona está ausente", "Uma pessoa está ausente"),
        DaysOffKind.Firm => new Text("The firm is closed", "La empresa está cerrada", "A empresa está fechada"),
        DaysOffKind.Lent => new Text("Sites go to a colleague", "Sitios que pasan a un compañero", "Locais que passam a um colega"),
        _ => new Text("A site is closed", "Un sitio está cerrado", "Um local está fechado"),
    };

    /// <summary>Name of a reason.</summary>
    public static Text NameOf(OffReason reason) => reason switch
    {
        OffReason.Leave => new Text("leave", "permiso o vacaciones", "licença ou férias"),
        OffReason.Course => new Text("course", "curso", "curso"),
        OffReason.OtherWork => new Text("other work", "otro trabajo", "outro trabalho"),
        OffReason.PublicHoliday => new Text("public holiday", "día festivo", "feriado"),
        OffReason.FirmShut => new Text("firm shut", "empresa cerrada", "empresa fechada"),
        OffReason.PlantShut => new Text("plant shut", "planta parada", "planta parada"),
        _ => new Text("no access", "sin acceso", "sem acesso"),
    };
}
