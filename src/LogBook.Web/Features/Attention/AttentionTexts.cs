using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Attention;

/// <summary>Words of Needs attention.</summary>
public static class AttentionTexts
{
    public static readonly Text Title = new("Needs attention", "Requiere atención", "Requer atenção");
    public static readonly Text Empty = new("Nothing needs attention", "Nada requiere atención", "Nada requer atenção");
    public static readonly Text EmptyMore = new(
        "Findings appear here when the records of visits show something out of line, or when a clock runs out.",
        "Los hallazgos aparecen aquí cuando los registros de las visitas muestran algo fuera de lo normal o vence un plazo.",
        "As constatações aparecem aqui quando os registros das visitas mostram algo fora do normal ou um prazo vence.");
    public static readonly Text Firm = FindingTexts.OfFirm;
    public static readonly Text Age = new("since {0} ({1} days)", "desde {0} ({1} días)", "desde {0} ({1} dias)");
    public static readonly Text AgeToday = new("since today", "desde hoy", "desde hoje");
    public static readonly Text LastSeen = new("last seen {0}", "visto por última vez {0}", "vista pela última vez {0}");
    public static readonly Text Waiting = new("Open or taken on", "Abiertos o asumidos", "Abertas ou assumidas");
    public static readonly Text Asleep = new("Asleep: {0}", "Aplazados: {0}", "Adiadas: {0}");
    public static readonly Text DueBy = new("own clock: by {0}", "plazo propio: hasta el {0}", "prazo próprio: até {0}");
    public static readonly Text WasDue = new("own clock: ended {0}", "plazo propio: venció el {0}", "prazo próprio: venceu em {0}");
    public static readonly Text Nobody = new("nobody yet", "nadie todavía", "ninguém ainda");
    public static readonly Text TakenOnBy = new("looked after by {0}", "a cargo de {0}", "a cargo de {0}");
    public static readonly Text Evidence = new("Evidence", "Evidencia", "Evidência");
    public static readonly Text RestsOn = new("Visits it rests on", "Visitas en que se apoya", "Visitas em que se apoia");
    public static readonly Text ReadOff = new("read off by {0}", "leído con {0} de desvío", "leu com {0} de desvio");
    public static readonly Text SignAgainst = new("{0}: {1} (against {2})", "{0}: {1} (frente a {2})", "{0}: {1} (contra {2})");
    public static readonly Text Suggests = FindingTexts.Suggests;
    public static readonly Text LookNext = FindingTexts.LookNext;
    public static readonly Text ToHistory = new("Site history at that day", "Historial del sitio en ese día", "Histórico do local naquele dia");
    public static readonly Text VisitsOfPerson = new("Visits of this person", "Visitas de esta persona", "Visitas desta pessoa");
    public static readonly Text Instrument = new("The instrument", "El instrumento", "O instrumento");
    public static readonly Text Lot = new("The reagent lot", "El lote de reactivo", "O lote de reagente");
    public static readonly Text ToVisit = new("The visit where it was first seen", "La visita en que se vio primero", "A visita em que foi vista primeiro");
    public static readonly Text Earlier = new("The same trouble was closed before; it was first seen then on {0}.", "El mismo problema se cerró antes; entonces se vio primero el {0}.", "O mesmo problema foi encerrado antes; naquela vez foi visto primeiro em {0}.");
    public static readonly Text Until = new("asleep until {0}", "aplazado hasta {0}", "adiada até {0}");
    public static readonly Text Because = new("Reason: {0}", "Motivo: {0}", "Motivo: {0}");
    public static readonly Text IntervalMeans = new(
        "In brackets the 95 % interval, from the uncertainties of the readings that went in. Each figure of the visit says what went into it.",
        "Entre paréntesis el intervalo del 95 %, según las incertidumbres de las lecturas usadas. Cada cifra de la visita dice con qué se calculó.",
        "Entre parênteses o intervalo de 95 %, segundo as incertezas das leituras usadas. Cada cifra da visita diz com que foi calculada.");

    public static readonly Text Method = new("What is compared", "Qué se compara", "O que se compara");
    public static readonly Text NotAVerdict = FindingTexts.NotAVerdict;
    public static readonly Text Several = new("Chosen findings: {0}", "Hallazgos elegidos: {0}", "Constatações escolhidas: {0}");
    public static readonly Text Choose = new("Choose {0}", "Elegir {0}", "Escolher {0}");
    public static readonly Text ChooseAll = new("Choose all shown ({0})", "Elegir todos los mostrados ({0})", "Escolher todas as mostradas ({0})");
    public static readonly Text ChooseNone = new("Choose none", "No elegir ninguno", "Não escolher nenhuma");
    public static readonly Text SecondLookCount = new("Second look at instruments, lots and records: {0}", "Segunda revisión de instrumentos, lotes y registros: {0}", "Segunda verificação de instrumentos, lotes e registros: {0}");
    public static readonly Text SecondLookMeans = new(
        "What the records suggest about instruments, reagent lots and the records themselves. None of it says that anybody did wrong: look before you ask, and ask before you decide.",
        "Lo que los registros sugieren sobre instrumentos, lotes de reactivos y los propios registros. Nada de esto dice que alguien haya obrado mal: mire antes de preguntar y pregunte antes de decidir.",
        "O que os registros sugerem sobre instrumentos, lotes de reagentes e os próprios registros. Nada disso diz que alguém agiu mal: olhe antes de perguntar e pergunte antes de decidir.");
    public static readonly Text SecondLookEmpty = new("Nothing asks for a second look", "Nada pide una segunda revisión", "Nada pede uma segunda verificação");
    public static readonly Text Answer = new("Answer", "Respuesta", "Resposta");
    public static readonly Text TakeOn = new("Take this on", "Encargarse de esto", "Assumir isto");
    public static readonly Text Owner = new("Who looks after it", "Quién se encarga", "Quem cuida disso");
    public static readonly Text Myself = new("{0} (myself)", "{0} (yo)", "{0} (eu)");
    public static readonly Text Close = new("Close", "Cerrar", "Encerrar");
    public static readonly Text Sleep = new("Put to sleep until a day", "Aplazar hasta un día", "Adiar até um dia");
    public static readonly Text OpenAgain = new("Open again", "Volver a abrir", "Abrir de novo");
    public static readonly Text SleepUntil = new("Until", "Hasta", "Até");
    public static readonly Text TakeOnMeans = new(
        "Says who looks after it. It stays in the list until its evidence is gone.",
        "Indica quién se encarga. Sigue en la lista hasta que desaparezca la evidencia.",
        "Indica quem cuida disso. Continua na lista até que a evidência desapareça.");
    public static readonly Text SleepMeans = new(
        "It leaves the list until that day and then comes back by itself, with the reason on record; it comes back earlier when it gets worse.",
        "Sale de la lista hasta ese día y entonces vuelve por sí solo, con el motivo registrado; vuelve antes si empeora.",
        "Sai da lista até esse dia e então volta sozinho, com o motivo registrado; volta antes se piorar.");
    public static readonly Text CloseMeans = new(
        "It is over: it leaves the list for good, with the reason on record. Should its evidence come back with a later visit, that is a new finding which names this one.",
        "Ha terminado: sale de la lista definitivamente, con el motivo registrado. Si la evidencia vuelve con otra visita, será un hallazgo nuevo que nombra este.",
        "Acabou: sai da lista de vez, com o motivo registrado. Se a evidência voltar com outra visita, será uma constatação nova que cita esta.");
    public static readonly Text OpenAgainMeans = new(
        "The answer is taken back; that it was given stays on record.",
        "La respuesta se retira; queda registrado que se dio.",
        "A resposta é retirada; fica registrado que foi dada.");
    public static readonly Text WhichDay = new("A day after today is needed, at most a year ahead.", "Hace falta un día posterior a hoy, como máximo dentro de un año.", "É preciso um dia depois de hoje, no máximo daqui a um ano.");
    public static readonly Text Gone = new("This finding is no longer there: the records have changed. Load the page again.", "Este hallazgo ya no existe: los registros han cambiado. Cargue la página de nuevo.", "Esta constatação não existe mais: os registros mudaram. Carregue a página de novo.");
    public static readonly Text DuesAhead = new("Due soon: {0}", "Vencen pronto: {0}", "Vencem em breve: {0}");
    public static readonly Text NoEvidence = new("This finding rests on a record, not on figures.", "Este hallazgo se basa en un registro, no en cifras.", "Esta constatação se baseia em um registro, não em números.");
}
