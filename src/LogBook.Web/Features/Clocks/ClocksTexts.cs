using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Clocks;

/// <summary>Words of the pages about clocks.</summary>
public static class ClocksTexts
{
    public static readonly Text Title = new("Clocks", "Plazos", "Prazos");
    public static readonly Text Intro = new(
        "Every duty that runs: rules of authorities in the version in force, intervals and summaries agreed with customers, retests, and countdowns from a result. LogBook says what the records show about a rule; it does not say that a plant is in order.",
        "Todo plazo que corre: normas de autoridades en su versión vigente, intervalos y resúmenes acordados con clientes, repeticiones y cuentas atrás desde un resultado. LogBook dice lo que muestran los registros sobre una norma; no dice que una instalación esté en orden.",
        "Todo prazo que corre: regras de autoridades na versão em vigor, intervalos e resumos combinados com clientes, repetições e contagens regressivas a partir de um resultado. O LogBook diz o que os registros mostram sobre uma regra; não diz que uma instalação está em ordem.");

    public static readonly Text AsOf = new("As of {0}", "A fecha de {0}", "Em {0}");
    public static readonly Text Empty = new("No clock runs", "No corre ningún plazo", "Nenhum prazo corre");
    public static readonly Text EmptyMore = new(
        "Clocks come from the rules a system is under, from the visit interval of a site and from a promised summary. They are kept in the set-up.",
        "Los plazos vienen de las normas de un sistema, del intervalo de visitas de un sitio y del resumen prometido. Se llevan en la configuración.",
        "Os prazos vêm das regras de um sistema, do intervalo de visitas de um local e do resumo prometido. Ficam na configuração.");

    public static readonly Text NotMet = new("All that is not met", "Todo lo no cumplido", "Tudo o que não foi cumprido");
    public static readonly Text Rule = new("Rule", "Norma", "Regra");
    public static readonly Text StartedBy = new("Set running by", "Lo pone en marcha", "Começa por");
    public static readonly Text Clock = new("What is asked for", "Qué se pide", "O que se pede");
    public static readonly Text Where = new("Where", "Dónde", "Onde");
    public static readonly Text Since = new("Since", "Desde", "Desde");
    public static readonly Text Due = new("Due", "Vence", "Vence");
    public static readonly Text LastMet = new("Last met", "Cumplido por última vez", "Cumprido pela última vez");
    public static readonly Text Never = new("nothing on record", "nada registrado", "nada registrado");
    public static readonly Text Pending = new("sampled {0}, result pending", "muestra del {0}, resultado pendiente", "amostra de {0}, resultado pendente");
    public static readonly Text MetLate = new("{0}, after its time", "{0}, fuera de plazo", "{0}, fora do prazo");
    public static readonly Text Version = new("{0}, version from {1}", "{0}, versión del {1}", "{0}, versão de {1}");
    public static readonly Text Contract = new("agreed with the customer", "acordado con el cliente", "combinado com o cliente");
    public static readonly Text Gone = new("rule no longer on file", "norma que ya no consta", "regra que não consta mais");
    public static readonly Text Idle = new("plant out of operation today", "hoy la instalación no opera", "hoje a instalação não opera");
    public static readonly Text Meets = new("Met by: {0}", "Lo cumple: {0}", "Cumpre-o: {0}");
    public static readonly Text SiteClocks = new("Clocks of this site", "Plazos de este sitio", "Prazos deste local");
    public static readonly Text AllClocks = new("All clocks", "Todos los plazos", "Todos os prazos");
    public static readonly Text Showing = new("Shown: {0}", "Mostrado: {0}", "Mostrado: {0}");

    public static readonly Text EveryDays = new("{0} every {1} days", "{0} cada {1} días", "{0} a cada {1} dias");
    public static readonly Text EveryRunningDays = new("{0} every {1} days of operation", "{0} cada {1} días de operación", "{0} a cada {1} dias de operação");
    public static readonly Text AfterEvent = new("{0}: within {1} days of “{2}”", "{0}: en {1} días desde «{2}»", "{0}: em {1} dias desde “{2}”");
    public static readonly Text Retest = new("{0}: test again from {1} to {2}", "{0}: repetir del {1} al {2}", "{0}: repetir de {1} a {2}");
    public static readonly Text Notify = new("{0}: tell the authority within {1} of receipt", "{0}: avisar a la autoridad en {1} desde la recepción", "{0}: avisar a autoridade em {1} desde o recebimento");
    public static readonly Text VisitEvery = new("Visit every {0} days", "Visita cada {0} días", "Visita a cada {0} dias");
    public static readonly Text SummaryBy = new("Summary by {0}", "Resumen hasta el {0}", "Resumo até {0}");
    public static readonly Text SummaryWithin = new("Summary within {0} of the visit", "Resumen en {0} desde la visita", "Resumo em {0} desde a visita");
    public static readonly Text WatchedCount = new("the count that the rules watch", "el recuento que vigilan las normas", "a contagem que as regras vigiam");
    public static readonly Text Hours = new("{0} hours", "{0} horas", "{0} horas");
    public static readonly Text OneHour = new("1 hour", "1 hora", "1 hora");
    public static readonly Text Days = new("{0} days", "{0} días", "{0} dias");
    public static readonly Text OneDay = new("1 day", "1 día", "1 dia");
    public static readonly Text Minutes = new("{0} minutes", "{0} minutos", "{0} minutos");
    public static readonly Text Left = new("{0} left", "quedan {0}", "restam {0}");
    public static readonly Text Over = new("{0} over", "{0} de retraso", "{0} de atraso");

    public static readonly Text BySample = new("a sample: {0}", "una muestra: {0}", "uma amostra: {0}");
    public static readonly Text ByTask = new("“{0}” recorded at a visit as done", "«{0}» registrado como hecho en una visita", "“{0}” registrado como feito numa visita");
    public static readonly Text ByRetest = new("a sample taken from {0} to {1}", "una muestra tomada del {0} al {1}", "uma amostra colhida de {0} a {1}");
    public static readonly Text ByNotice = new("a notification written down here: who told whom, when and how", "un aviso registrado aquí: quién avisó a quién, cuándo y cómo", "um aviso registrado aqui: quem avisou a quem, quando e como");
    public static readonly Text ByVisit = new("a visit to the site", "una visita al sitio", "uma visita ao local");
    public static readonly Text BySummary = new("the customer's mail server has taken the summary", "el servidor de correo del cliente ha aceptado el resumen", "o servidor de e-mail do cliente aceitou o resumo");
    public static readonly Text TooEarly = new("A sample of {0} came before that.", "Una muestra del {0} fue anterior.", "Uma amostra de {0} foi anterior.");

    public static readonly Text Counts = new("Microbiology: newest results and what follows", "Microbiología: últimos resultados y lo que sigue", "Microbiologia: últimos resultados e o que segue");
    public static readonly Text NoCounts = new("No count on record", "Ningún recuento registrado", "Nenhuma contagem registrada");
    public static readonly Text CountCaution = new(
        "A count is not a diagnosis. Follow the plan and the authority's table; notify in time.",
        "Un recuento no es un diagnóstico. Siga el plan y la tabla de la autoridad; avise a tiempo.",
        "Uma contagem não é um diagnóstico. Siga o plano e a tabela da autoridade; avise a tempo.");

    public static readonly Text AsEntered = new("As entered", "Como se introdujo", "Como foi informado");
    public static readonly Text InOtherUnits = new("The same number", "El mismo número", "O mesmo número");
    public static readonly Text SampledOn = new("Sampled", "Muestra", "Amostra");
    public static readonly Text ReceivedOn = new("Received", "Recibido", "Recebido");
    public static readonly Text NewerPending = new("A newer sample of {0} waits for its result.", "Una muestra más nueva, del {0}, espera resultado.", "Uma amostra mais nova, de {0}, espera o resultado.");
    public static readonly Text Band = new("Band of the rule in force on the day of the sample", "Banda de la norma vigente el día de la muestra", "Faixa da regra em vigor no dia da amostra");
    public static readonly Text FromOn = new("{0}: from {1} on", "{0}: desde {1}", "{0}: a partir de {1}");
    public static readonly Text BelowBands = new("below the lowest band", "por debajo de la banda más baja", "abaixo da faixa mais baixa");
    public static readonly Text NoBand = new("no number to compare", "sin número que comparar", "sem número a comparar");
    public static readonly Text NoRule = new("no rule with bands was in force for this test", "no había norma con bandas vigente para este ensayo", "não havia regra com faixas em vigor para este ensaio");
    public static readonly Text RuleSays = new("The rule says", "La norma dice", "A regra diz");
    public static readonly Text Steps = new("What is open and what is met", "Qué queda abierto y qué está cumplido", "O que está aberto e o que foi cumprido");
    public static readonly Text Done = new("On record since the result", "Registrado desde el resultado", "Registrado desde o resultado");
    public static readonly Text NothingDone = new("Nothing on record yet. Treatment, cleaning and samples are recorded at a visit.", "Aún no hay nada registrado. Tratamiento, limpieza y muestras se registran en una visita.", "Nada registrado ainda. Tratamento, limpeza e amostras são registrados numa visita.");
    public static readonly Text NotQuantifiable = new("not quantifiable", "no cuantificable", "não quantificável");

    public static readonly Text RecordNotice = new("Write down a notification", "Registrar un aviso", "Registrar um aviso");
    public static readonly Text Correct = new("Correct the notification", "Corregir el aviso", "Corrigir o aviso");
    public static readonly Text TakeBack = new("Take the notification back", "Retirar el aviso", "Retirar o aviso");
    public static readonly Text NoticeMeans = new(
        "LogBook does not notify anybody. Tell the authority as its rule says, then write down here who told whom, when and how.",
        "LogBook no avisa a nadie. Avise a la autoridad como dice su norma y registre aquí quién avisó a quién, cuándo y cómo.",
        "O LogBook não avisa ninguém. Avise a autoridade como diz a regra e registre aqui quem avisou a quem, quando e como.");

    public static readonly Text NoticeWhen = new("When it was told (time at the site)", "Cuándo se avisó (hora del sitio)", "Quando foi avisado (hora do local)");
    public static readonly Text NoticeBy = new("Who told it", "Quién avisó", "Quem avisou");
    public static readonly Text NoticeTo = new("Whom", "A quién", "A quem");
    public static readonly Text NoticeHow = new("How, and what proves it", "Cómo y qué lo prueba", "Como e o que o prova");
    public static readonly Text NoticeHowHint = new("Reference number, name of who took the call, form sent.", "Número de referencia, nombre de quien atendió, formulario enviado.", "Número de referência, nome de quem atendeu, formulário enviado.");
    public static readonly Text WhichMoment = new("Give day and time.", "Indique día y hora.", "Informe dia e hora.");
    public static readonly Text NoticeSaved = new("Written down.", "Registrado.", "Registrado.");
    public static readonly Text NotAllowed = new("Your account may not do this.", "Su cuenta no puede hacer esto.", "Sua conta não pode fazer isto.");
    public static readonly Text NotThere = new("This result is no longer there.", "Este resultado ya no está.", "Este resultado não está mais aqui.");

    private static readonly Dictionary<ClockStanding, Text> Standings = new()
    {
        [ClockStanding.Missed] = new("Missed", "No cumplido", "Não cumprido"),
        [ClockStanding.DueSoon] = new("Due soon", "Vence pronto", "Vence logo"),
        [ClockStanding.Unknown] = new("Unknown", "Sin registro", "Sem registro"),
        [ClockStanding.Running] = new("Under way", "En curso", "Em curso"),
        [ClockStanding.Met] = new("Met", "Cumplido", "Cumprido"),
    };

    private static readonly Dictionary<DutyKind, Text> Kinds = new()
    {
        [DutyKind.Interval] = new("The last time it was done", "La última vez que se hizo", "A última vez que foi feito"),
        [DutyKind.AfterEvent] = new("An event at the plant", "Un suceso en la instalación", "Um evento na instalação"),
        [DutyKind.Retest] = new("A result: test again", "Un resultado: repetir", "Um resultado: repetir"),
        [DutyKind.Notify] = new("A result: tell the authority", "Un resultado: avisar a la autoridad", "Um resultado: avisar a autoridade"),
        [DutyKind.Visit] = new("The agreed visit", "La visita acordada", "A visita combinada"),
        [DutyKind.Summary] = new("The promised summary", "El resumen prometido", "O resumo prometido"),
    };

    public static Text NameOf(ClockStanding standing) => Standings[standing];

    public static Text NameOf(DutyKind kind) => Kinds[kind];
}
