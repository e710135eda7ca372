using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp.Templates;

/// <summary>Words of the rule templates.</summary>
public static class TemplateTexts
{
    public static readonly Text Title = new("Rule templates", "Plantillas de normas", "Modelos de regras");
    public static readonly Text Intro = new(
        "Rules of authorities and guides to start from, with the source in which they were read. All are off until a person takes one over. Law and guidance change: check with the authority before you do. LogBook gives no legal advice.",
        "Normas de autoridades y guías como punto de partida, con la fuente en que se leyeron. Todas están apagadas hasta que una persona asume una. Las leyes y guías cambian: compruebe con la autoridad antes. LogBook no da asesoría legal.",
        "Regras de autoridades e guias como ponto de partida, com a fonte em que foram lidas. Todas estão desligadas até que uma pessoa assuma uma. Leis e guias mudam: confira com a autoridade antes. O LogBook não dá assessoria jurídica.");

    public static readonly Text CheckFirst = new("Check with the authority", "Compruebe con la autoridad", "Confira com a autoridade");
    public static readonly Text Source = new("Source", "Fuente", "Fonte");
    public static readonly Text AsksFor = new("Asks for", "Pide", "Pede");
    public static readonly Text InForce = new("In force, by the template", "En vigor, según la plantilla", "Em vigor, pelo modelo");
    public static readonly Text FromTo = new("{0} to {1}", "{0} a {1}", "{0} a {1}");
    public static readonly Text FromOn = new("from {0}", "desde el {0}", "desde {0}");
    public static readonly Text Keep = new("Records kept {0} years", "Registros guardados {0} años", "Registros guardados por {0} anos");
    public static readonly Text KeepUnknown = new("Retention not in the source", "Conservación no indicada en la fuente", "Guarda não indicada na fonte");
    public static readonly Text InUse = new("Taken over: version from {0}, {1} systems", "Asumida: versión del {0}, {1} sistemas", "Assumida: versão de {0}, {1} sistemas");
    public static readonly Text Off = new("Off", "Apagada", "Desligado");
    public static readonly Text TakeOver = new("Take over", "Asumir", "Assumir");
    public static readonly Text NewVersion = new("Take over as a new version", "Asumir como versión nueva", "Assumir como nova versão");
    public static readonly Text From = new("In force from", "En vigor desde", "Em vigor desde");
    public static readonly Text FromHint = new("Records before that day are judged by what was in force then.", "Los registros anteriores se juzgan por lo que regía entonces.", "Registros anteriores são julgados pelo que valia então.");
    public static readonly Text CheckedWith = new("Who checked it with the authority, and when", "Quién lo comprobó con la autoridad y cuándo", "Quem conferiu com a autoridade e quando");
    public static readonly Text Systems = new("Systems under this rule", "Sistemas bajo esta norma", "Sistemas sob esta regra");
    public static readonly Text Sites = new("Sites with this promise", "Sitios con esta promesa", "Locais com esta promessa");
    public static readonly Text Promises = new("Promises of contracts", "Promesas de contratos", "Promessas de contratos");
    public static readonly Text PromisesMore = new(
        "What is agreed with a customer. The interval of visits is kept with the site; other tasks of a contract are rules without a jurisdiction. “By the 10th” counts from the month after the visit: the end of that day.",
        "Lo acordado con un cliente. El intervalo de visitas se lleva en el sitio; otras tareas de un contrato son normas sin jurisdicción. «Hasta el día 10» se cuenta en el mes siguiente a la visita: hasta el final de ese día.",
        "O que foi combinado com um cliente. O intervalo de visitas fica no local; outras tarefas de um contrato são regras sem jurisdição. “Até o dia 10” conta no mês seguinte à visita: até o fim desse dia.");

    public static readonly Text PromiseOf = new("{0} sites", "{0} sitios", "{0} locais");
    public static readonly Text Promise = new("Promise", "Prometer", "Prometer");
    public static readonly Text Saved = new("Taken over.", "Asumido.", "Assumido.");
    public static readonly Text Changed = new("Somebody changed it meanwhile. Please look again.", "Alguien lo cambió entretanto. Mire de nuevo, por favor.", "Alguém mudou isto entretanto. Olhe de novo, por favor.");
    public static readonly Text NotThere = new("One of these is no longer there.", "Alguno ya no está.", "Algum deles não está mais aqui.");
    public static readonly Text NotAllowed = new("Your account may not do this.", "Su cuenta no puede hacer esto.", "Sua conta não pode fazer isto.");
    public static readonly Text Band = new("from {0}: {1}", "desde {0}: {1}", "a partir de {0}: {1}");
    public static readonly Text EveryDays = new("every {0} days", "cada {0} días", "a cada {0} dias");
    public static readonly Text RunningDays = new("days of operation", "días de operación", "dias de operação");
    public static readonly Text WithinDays = new("within {0} days of “{1}”", "en {0} días desde «{1}»", "em {0} dias desde “{1}”");
    public static readonly Text Retest = new("retest on day {0} to {1}", "repetir entre el día {0} y el {1}", "repetir do dia {0} ao {1}");
    public static readonly Text ThenEvery = new("then every {0} days", "después cada {0} días", "depois a cada {0} dias");
    public static readonly Text Notify = new("tell the authority within {0} hours of receipt", "avisar a la autoridad en {0} horas desde la recepción", "avisar a autoridade em {0} horas desde o recebimento");

    private static readonly Dictionary<TemplateStatus, Text> Statuses = new()
    {
        [TemplateStatus.Confirmed] = new("Read in the source", "Leída en la fuente", "Lida na fonte"),
        [TemplateStatus.SecondHand] = new("Second-hand: read in a text about the source", "De segunda mano: leída en un texto sobre la fuente", "De segunda mão: lida num texto sobre a fonte"),
        [TemplateStatus.Unconfirmed] = new("Unconfirmed: not found in a readable source", "Sin confirmar: no hallada en una fuente legible", "Não confirmada: não achada em fonte legível"),
    };

    public static Text NameOf(TemplateStatus status) => Statuses[status];
}
