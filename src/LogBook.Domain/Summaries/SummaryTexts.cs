using LogBook.Domain.Languages;

namespace LogBook.Domain.Summaries;

#pragma warning disable CS1591 // Each text says itself what it is.

/// <summary>Words of the visit summary.</summary>
public static class SummaryTexts
{
    public static readonly Text Title = new("Visit summary", "Resumen de la visita", "Resumo da visita");
    public static readonly Text Subject = new("Visit summary: {0}, {1}", "Resumen de la visita: {0}, {1}", "Resumo da visita: {0}, {1}");
    public static readonly Text SubjectReissued = new("Visit summary (version {2}): {0}, {1}", "Resumen de la visita (versión {2}): {0}, {1}", "Resumo da visita (versão {2}): {0}, {1}");
    public static readonly Text Reissued = new(
        "This is version {0}. It replaces the summary sent before. Reason: {1}",
        "Esta es la versión {0}. Sustituye al resumen enviado antes. Motivo: {1}",
        "Esta é a versão {0}. Substitui o resumo enviado antes. Motivo: {1}");

    public static readonly Text WeNeed = new("What we need from you", "Lo que necesitamos de ustedes", "O que precisamos de vocês");
    public static readonly Text NothingNeeded = new("Nothing at the moment.", "Nada por el momento.", "Nada por enquanto.");
    public static readonly Text WeFound = new("What we found", "Lo que encontramos", "O que constatamos");
    public static readonly Text NothingFound = new(
        "No finding that wants action is open for this system.",
        "No hay hallazgos abiertos que requieran una acción en este sistema.",
        "Não há constatações abertas que exijam ação neste sistema.");

    public static readonly Text FoundLater = new(
        "What follows from this and earlier visits is worked out on the server and comes with the summary by e-mail.",
        "Lo que resulta de esta visita y de las anteriores se calcula en el servidor y llega con el resumen por correo.",
        "O que resulta desta visita e das anteriores é calculado no servidor e chega com o resumo por e-mail.");

    public static readonly Text WeDid = new("What we did", "Lo que hicimos", "O que fizemos");
    public static readonly Text NothingDone = new("Readings only; nothing was changed.", "Solo lecturas; no se cambió nada.", "Somente leituras; nada foi alterado.");

    public static readonly Text Site = new("Site", "Instalación", "Local");
    public static readonly Text Customer = new("Customer", "Cliente", "Cliente");
    public static readonly Text Date = new("Date of the visit", "Fecha de la visita", "Data da visita");
    public static readonly Text By = new("Visited by", "Visitado por", "Visitado por");
    public static readonly Text Purpose = new("Purpose", "Motivo", "Finalidade");
    public static readonly Text System = new("System", "Sistema", "Sistema");
    public static readonly Text Volume = new("Water volume", "Volumen de agua", "Volume de água");

    public static readonly Text Test = new("Test", "Ensayo", "Ensaio");
    public static readonly Text Result = new("Result", "Resultado", "Resultado");
    public static readonly Text Range = new("Range", "Intervalo", "Faixa");
    public static readonly Text Standing = new("In or out", "Dentro o fuera", "Dentro ou fora");
    public static readonly Text Inside = new("in range", "dentro", "dentro");
    public static readonly Text Above = new("▲ above range", "▲ por encima", "▲ acima");
    public static readonly Text Below = new("▼ below range", "▼ por debajo", "▼ abaixo");
    public static readonly Text NoRange = new("no range set", "sin intervalo", "sem faixa");
    public static readonly Text Undecided = new("cannot be told", "no se puede decidir", "não se pode decidir");
    public static readonly Text NotTaken = new("not taken: {0}", "no realizado: {0}", "não realizado: {0}");
    public static readonly Text NotQuantifiable = new("not quantifiable", "no cuantificable", "não quantificável");
    public static readonly Text Pending = new("result pending", "resultado pendiente", "resultado pendente");
    public static readonly Text AtLeast = new("at least {0}", "al menos {0}", "no mínimo {0}");
    public static readonly Text AtMost = new("at most {0}", "como máximo {0}", "no máximo {0}");

    public static readonly Text Worked = new("Worked out from the readings", "Calculado a partir de las lecturas", "Calculado a partir das leituras");
    public static readonly Text WorkedNote = new(
        "± is the interval that holds about 95 % of what the true value may be, from the uncertainty of the instruments and methods.",
        "± es el intervalo que contiene cerca del 95 % de los valores verdaderos posibles, según la incertidumbre de los instrumentos y métodos.",
        "± é o intervalo que contém cerca de 95 % dos valores verdadeiros possíveis, segundo a incerteza dos instrumentos e métodos.");

    public static readonly Text CalculatedCaution = new(
        "Calculated from entered values; a competent person approves.",
        "Calculado a partir de valores introducidos; una persona competente lo aprueba.",
        "Calculado a partir de valores informados; uma pessoa competente aprova.");

    public static readonly Text ResultCaution = new(
        "A count is not a diagnosis. Follow your plan and the table of your authority; notify in time.",
        "Un recuento no es un diagnóstico. Siga su plan y la tabla de su autoridad; notifique a tiempo.",
        "Uma contagem não é um diagnóstico. Siga o seu plano e a tabela da sua autoridade; notifique a tempo.");

    public static readonly Text DeferCaution = new(
        "Local codes, permits, product labels and safety data sheets come first; this summary does not replace them.",
        "Las normas locales, los permisos, las etiquetas y las fichas de datos de seguridad tienen prioridad; este resumen no los sustituye.",
        "As normas locais, as licenças, os rótulos e as fichas de dados de segurança têm prioridade; este resumo não os substitui.");

    public static readonly Text ProbeDone = new(
        "Conductivity probe {0}: as found {1}, reference {2}, as left {3}",
        "Sonda de conductividad {0}: como se encontró {1}, referencia {2}, como se dejó {3}",
        "Sonda de condutividade {0}: como encontrada {1}, referência {2}, como deixada {3}");

    public static readonly Text OtherProbeDone = new(
        "Probe {0}: as found {1}, reference {2}, as left {3}",
        "Sonda {0}: como se encontró {1}, referencia {2}, como se dejó {3}",
        "Sonda {0}: como encontrada {1}, referência {2}, como deixada {3}");

    public static readonly Text Cleaned = new("cleaned", "limpiada", "limpa");
    public static readonly Text Calibrated = new("calibrated", "calibrada", "calibrada");
    public static readonly Text DrumFilled = new("{0}: {1} added to drum {2}", "{0}: {1} añadidos al bidón {2}", "{0}: {1} adicionados à bombona {2}");
    public static readonly Text DrumSwapped = new("{0}: drum {1} exchanged", "{0}: bidón {1} cambiado", "{0}: bombona {1} trocada");
    public static readonly Text AddedByHand = new("{0}: {1} added by hand", "{0}: {1} añadidos a mano", "{0}: {1} adicionados à mão");
    public static readonly Text SettingChanged = new("Setting {0}: {1} → {2}", "Ajuste {0}: {1} → {2}", "Ajuste {0}: {1} → {2}");
    public static readonly Text SwitchLeft = new("Output {0} left {1}", "Salida {0} dejada en {1}", "Saída {0} deixada em {1}");
    public static readonly Text ReasonGiven = new("{0} ({1})", "{0} ({1})", "{0} ({1})");
    public static readonly Text ActionDone = new("Done: {0}", "Hecho: {0}", "Feito: {0}");
    public static readonly Text ActionOpen = new("Open: {0}", "Pendiente: {0}", "Pendente: {0}");
    public static readonly Text DueBy = new("by {0}", "antes del {0}", "até {0}");
    public static readonly Text Otherwise = new("Otherwise: {0}", "De lo contrario: {0}", "Caso contrário: {0}");
    public static readonly Text StoppedVisit = new(
        "The work could not be done at this visit: {0}",
        "No se pudo trabajar en esta visita: {0}",
        "Não foi possível trabalhar nesta visita: {0}");

    public static readonly Text LateResults = new(
        "Results that are still pending will follow; this summary is then sent again as a new version.",
        "Los resultados pendientes llegarán después; entonces este resumen se envía de nuevo como una nueva versión.",
        "Os resultados pendentes virão depois; então este resumo é enviado de novo como uma nova versão.");

    public static readonly Text Seen = new("Seen: {0}", "Observado: {0}", "Observado: {0}");
    public static readonly Text Technician = new("Technician", "Técnico", "Técnico");
    public static readonly Text OfCustomer = new("For the customer", "Por el cliente", "Pelo cliente");
    public static readonly Text Signed = new("{0}, signed: {1}", "{0}, firma: {1}", "{0}, assinatura: {1}");
    public static readonly Text NotSigned = new("{0}, not signed: {1}", "{0}, sin firma: {1}", "{0}, sem assinatura: {1}");
    public static readonly Text NotSignedNoReason = new("{0}, not signed", "{0}, sin firma", "{0}, sem assinatura");
    public static readonly Text BeforeLeaving = new("act", "actuar", "agir");
    public static readonly Text ByNextVisit = new("plan", "planificar", "planejar");
    public static readonly Text KeepEye = new("watch", "vigilar", "vigiar");
    public static readonly Text Reference = new("Visit {0}, version {1}", "Visita {0}, versión {1}", "Visita {0}, versão {1}");
}
