using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Visits;

/// <summary>Words of the list of visits and of a visit.</summary>
public static class VisitsTexts
{
    public static readonly Text Title = new("Visits", "Visitas", "Visitas");
    public static readonly Text Empty = new("No visit has been handed in", "No se ha entregado ninguna visita", "Nenhuma visita foi entregue");
    public static readonly Text Visit = new("Visit {0}", "Visita {0}", "Visita {0}");
    public static readonly Text Arrived = new("Arrived", "Llegada", "Chegada");
    public static readonly Text Minutes = new("{0}\u00a0min", "{0}\u00a0min", "{0}\u00a0min");
    public static readonly Text Length = new("Length", "Duración", "Duração");
    public static readonly Text Version = new("Version {0}", "Versión {0}", "Versão {0}");
    public static readonly Text Void = new("Void", "Anulada", "Anulada");
    public static readonly Text Counting = new("Those that count", "Las que cuentan", "As que contam");
    public static readonly Text ToReview = new("Visits to review", "Visitas por revisar", "Visitas por revisar");
    public static readonly Text AllStates = new("All, void or not", "Todas, anuladas o no", "Todas, anuladas ou não");
    public static readonly Text Summary = new("Visit summary", "Resumen de la visita", "Resumo da visita");
    public static readonly Text Amend = new("Amend", "Corregir", "Corrigir");
    public static readonly Text MarkReviewed = new("Mark as reviewed", "Marcar como revisada", "Marcar como revisada");
    public static readonly Text MakeVoid = new("Declare void", "Anular", "Anular");
    public static readonly Text UndoVoid = new("Let it count again", "Volver a contar", "Voltar a contar");
    public static readonly Text Move = new("Move to another site", "Mover a otro sitio", "Mover para outro local");
    public static readonly Text Reason = new("Reason", "Motivo", "Motivo");
    public static readonly Text Note = new("Note (may stay empty)", "Nota (puede quedar vacía)", "Nota (pode ficar vazia)");
    public static readonly Text ToSite = new("Code of the right site", "Código del sitio correcto", "Código do local correto");
    public static readonly Text Cancel = new("Leave as it is", "Dejar como está", "Deixar como está");
    public static readonly Text Confirm = new("Yes, do it", "Sí, hacerlo", "Sim, fazer");
    public static readonly Text VoidMeans = new(
        "A void visit stays readable for the firm's people, but no figure, finding or clock uses it. This can be undone.",
        "Una visita anulada sigue visible para el personal de la empresa, pero ninguna cifra, hallazgo o plazo la usa. Se puede deshacer.",
        "Uma visita anulada continua visível para o pessoal da empresa, mas nenhuma cifra, constatação ou prazo a usa. Pode ser desfeito.");
    public static readonly Text MoveMeans = new(
        "The document stays as it was handed in; the visit counts at the other site from now on, and figures of both sites are worked out anew.",
        "El documento queda como se entregó; desde ahora la visita cuenta en el otro sitio y las cifras de ambos se calculan de nuevo.",
        "O documento fica como foi entregue; a partir de agora a visita conta no outro local e as cifras dos dois são calculadas de novo.");
    public static readonly Text ReviewMeans = new(
        "Says that a supervisor has looked at the visit.",
        "Indica que un supervisor ha mirado la visita.",
        "Indica que um supervisor olhou a visita.");
    public static readonly Text DidNotHold = new(
        "Something in it did not hold (say what in the note)",
        "Algo en ella no se sostuvo (diga qué en la nota)",
        "Algo nela não se sustentou (diga o quê na nota)");
    public static readonly Text RestoreMeans = new(
        "The visit counts again, and figures are worked out anew.",
        "La visita vuelve a contar y las cifras se calculan de nuevo.",
        "A visita volta a contar e as cifras são calculadas de novo.");
    public static readonly Text ReasonNeeded = new("A reason is needed.", "Hace falta un motivo.", "É preciso um motivo.");
    public static readonly Text SiteNeeded = new("Which site?", "¿Qué sitio?", "Qual local?");
    public static readonly Text Saved = new("Done.", "Hecho.", "Feito.");
    public static readonly Text NotAllowed = new("Your account may not do this.", "Su cuenta no puede hacer esto.", "Sua conta não pode fazer isto.");
    public static readonly Text ChangedMeanwhile = new("Somebody changed this visit meanwhile. It has been read again: look at it and decide anew.", "Alguien cambió esta visita entretanto. Se ha leído de nuevo: mírela y decida otra vez.", "Alguém mudou esta visita nesse meio-tempo. Ela foi lida de novo: olhe e decida outra vez.");
    public static readonly Text NotFound = new("There is no such visit or site for this account.", "No existe esa visita o sitio para esta cuenta.", "Não há essa visita ou local para esta conta.");
    public static readonly Text VoidedBy = new("Void since {0}, by {1}: {2}", "Anulada desde {0}, por {1}: {2}", "Anulada desde {0}, por {1}: {2}");
    public static readonly Text ReviewedBy = new("Reviewed {0} by {1}", "Revisada {0} por {1}", "Revisada {0} por {1}");
    public static readonly Text MovedFrom = new("Handed in for {0} and moved here", "Entregada para {0} y movida aquí", "Entregue para {0} e movida para cá");
    public static readonly Text ConflictsWait = new(
        "Came twice with different content: {0}. Somebody has to say which is right.",
        "Llegadas dos veces con contenido distinto: {0}. Alguien debe decir cuál es la correcta.",
        "Chegaram duas vezes com conteúdo diferente: {0}. Alguém precisa dizer qual está certa.");
    public static readonly Text Conflicts = new("Visits that came twice", "Visitas llegadas dos veces", "Visitas que chegaram duas vezes");
    public static readonly Text ConflictOf = new("Two contents of one visit, {0}", "Dos contenidos de una visita, {0}", "Dois conteúdos de uma visita, {0}");
    public static readonly Text NoConflicts = new("No visit waits to be settled", "Ninguna visita espera decisión", "Nenhuma visita espera decisão");
    public static readonly Text ConflictsMore = new(
        "When a device sends a visit whose identity is known with other content, nothing is overwritten: the second content is kept here until a supervisor has compared both.",
        "Cuando un aparato envía una visita cuya identidad ya consta con otro contenido, nada se sobrescribe: el segundo contenido se guarda aquí hasta que un supervisor compare ambos.",
        "Quando um aparelho envia uma visita cuja identidade já consta com outro conteúdo, nada é sobrescrito: o segundo conteúdo fica guardado aqui até que um supervisor compare os dois.");
    public static readonly Text Standing = new("What stands", "Lo que consta", "O que consta");
    public static readonly Text CameLater = new("What came later", "Lo que llegó después", "O que chegou depois");
    public static readonly Text CameAt = new("came {0}, from {1}, by {2}", "llegó {0}, de {1}, por {2}", "chegou {0}, de {1}, por {2}");
    public static readonly Text KeepStanding = new("Keep what stands", "Conservar lo que consta", "Manter o que consta");
    public static readonly Text TakeOther = new("Take what came later", "Tomar lo que llegó después", "Adotar o que chegou depois");
    public static readonly Text KeepMeans = new(
        "The visit stays as it is. The other content stays in the records and counts nowhere.",
        "La visita queda como está. El otro contenido permanece en los registros y no cuenta.",
        "A visita fica como está. O outro conteúdo permanece nos registros e não conta.");
    public static readonly Text TakeMeans = new(
        "The other content becomes the next version of the visit; what stood stays readable as the version before. Figures are worked out anew and the summary is sent again.",
        "El otro contenido pasa a ser la versión siguiente de la visita; lo anterior sigue legible como versión previa. Las cifras se calculan de nuevo y el resumen se envía otra vez.",
        "O outro conteúdo passa a ser a próxima versão da visita; o anterior continua legível como versão prévia. Os números são calculados de novo e o resumo é enviado outra vez.");
    public static readonly Text SameContent = new("The records tell the same; only the text differs.", "Los registros dicen lo mismo; solo difiere el texto.", "Os registros dizem o mesmo; só o texto difere.");
    public static readonly Text Settled = new("Settled.", "Decidido.", "Decidido.");
    public static readonly Text Versions = new("Versions", "Versiones", "Versões");
    public static readonly Text ReceivedBy = new("received {0}, from {1}", "recibida {0}, de {1}", "recebida {0}, de {1}");
    public static readonly Text Where = new("Where", "Dónde", "Onde");
    public static readonly Text Before = new("Before", "Antes", "Antes");
    public static readonly Text After = new("After", "Después", "Depois");
    public static readonly Text NoDifference = new("The records are the same.", "Los registros son iguales.", "Os registros são iguais.");
    public static readonly Text Readings = new("Readings", "Lecturas", "Leituras");
    public static readonly Text Controller = new("Controller", "Controlador", "Controlador");
    public static readonly Text ProductFound = new("found on it: {0}", "encontrado en él: {0}", "encontrado nela: {0}");
    public static readonly Text Probes = new("Probes", "Sondas", "Sondas");
    public static readonly Text AsFound = new("As found", "Como se encontró", "Como encontrado");
    public static readonly Text Reference = new("Reference", "Referencia", "Referência");
    public static readonly Text AfterCleaning = new("After cleaning", "Tras limpiar", "Após limpar");
    public static readonly Text AsLeft = new("As left", "Como se dejó", "Como deixado");
    public static readonly Text Calibrated = new("calibrated", "calibrada", "calibrada");
    public static readonly Text MetersAndStock = new("Counters and stock", "Contadores y existencias", "Contadores e estoque");
    public static readonly Text Dial = new("dial {0}", "esfera {0}", "mostrador {0}");
    public static readonly Text Total = new("total {0}", "total {0}", "total {0}");
    public static readonly Text Added = new("{0}\u00a0L added", "{0}\u00a0L añadidos", "{0}\u00a0L adicionados");
    public static readonly Text Swapped = new("container exchanged", "envase cambiado", "recipiente trocado");
    public static readonly Text HoursRun = new("{0}\u00a0h run", "{0}\u00a0h de marcha", "{0}\u00a0h de funcionamento");
    public static readonly Text FirstTyped = new("first typed as {0}", "escrito primero como {0}", "digitado primeiro como {0}");
    public static readonly Text ReadAgain = new("read again, the same", "leído otra vez, igual", "lido de novo, igual");
    public static readonly Text PumpsAndOutputs = new("Pumps, outputs and clock", "Bombas, salidas y reloj", "Bombas, saídas e relógio");
    public static readonly Text Stroke = new("stroke {0} found, {1} left", "carrera {0} encontrada, {1} dejada", "curso {0} encontrado, {1} deixado");
    public static readonly Text Speed = new("speed {0} found, {1} left", "velocidad {0} encontrada, {1} dejada", "velocidade {0} encontrada, {1} deixada");
    public static readonly Text Drawdown = new("drawdown: {0} in {1}\u00a0s", "prueba de columna: {0} en {1}\u00a0s", "teste de coluna: {0} em {1}\u00a0s");
    public static readonly Text TimedBleed = new("Bleed timed: {0} in {1}\u00a0s", "Purga cronometrada: {0} en {1}\u00a0s", "Purga cronometrada: {0} em {1}\u00a0s");
    public static readonly Text CurrentOutput = new("Current output: {0}", "Salida de corriente: {0}", "Saída de corrente: {0}");
    public static readonly Text ClockOff = new("Controller clock {0}\u00a0min fast (slow: minus)", "Reloj del controlador adelantado {0}\u00a0min (atraso: menos)", "Relógio do controlador adiantado {0}\u00a0min (atraso: menos)");
    public static readonly Text PlanWeek = new("Week {0} of the dose plan shown", "Semana {0} del plan de dosis mostrada", "Semana {0} do plano de doses mostrada");
    public static readonly Text Reset = new("reset", "reiniciado", "zerado");
    public static readonly Text Found = new("Found", "Encontrado", "Encontrado");
    public static readonly Text Left = new("Left", "Dejado", "Deixado");
    public static readonly Text Events = new("Events, alarms, observations", "Sucesos, alarmas, observaciones", "Eventos, alarmes, observações");
    public static readonly Text StandingAlarm = new("Alarm standing: {0}", "Alarma presente: {0}", "Alarme presente: {0}");
    public static readonly Text PastAlarm = new("Alarm: {0}", "Alarma: {0}", "Alarme: {0}");
    public static readonly Text Actions = new("Actions", "Acciones", "Ações");
    public static readonly Text Recommendations = new("Recommendations", "Recomendaciones", "Recomendações");
    public static readonly Text Signatures = new("Signatures", "Firmas", "Assinaturas");
    public static readonly Text Absent = new("not signed: {0}", "sin firma: {0}", "sem assinatura: {0}");
    public static readonly Text Photos = new("Photos", "Fotos", "Fotos");
    public static readonly Text PhotosStanding = new("Photos of what stands", "Fotos de lo que consta", "Fotos do que consta");
    public static readonly Text PhotosCame = new("Photos of what came", "Fotos de lo que llegó", "Fotos do que chegou");
    public static readonly Text PhotoAlt = new("Photo: {0}", "Foto: {0}", "Foto: {0}");
    public static readonly Text PhotoOpen = new("Open large: {0}", "Abrir en grande: {0}", "Abrir em tamanho grande: {0}");
    public static readonly Text PhotoWaiting = new("the picture has not come in yet", "la imagen aún no ha llegado", "a imagem ainda não chegou");
    public static readonly Text FindingsHere = new("Findings first seen at this visit", "Hallazgos vistos primero en esta visita", "Constatações vistas primeiro nesta visita");
    public static readonly Text Figures = new("Worked out from this visit", "Calculado a partir de esta visita", "Calculado a partir desta visita");
    public static readonly Text Notes = new("Notes", "Notas", "Notas");
    public static readonly Text StoppedBecause = new("Could not work here: {0}", "No se pudo trabajar aquí: {0}", "Não foi possível trabalhar aqui: {0}");
    public static readonly Text BySupervisor = new("Supervisor", "Supervisor", "Supervisor");

    /// <summary>Name of a visit's state.</summary>
    public static Text NameOf(VisitState state) => state switch
    {
        VisitState.Reviewed => new("Reviewed", "Revisada", "Revisada"),
        VisitState.Reissued => new("Reissued", "Reemitida", "Reemitida"),
        _ => new("Closed", "Cerrada", "Encerrada"),
    };

    /// <summary>How a version came in.</summary>
    public static Text NameOf(IntakeSource source) => source switch
    {
        IntakeSource.Tablet => new("the tablet", "la tableta", "o tablet"),
        IntakeSource.Page => new("the page", "la página", "a página"),
        IntakeSource.Api => new("another program", "otro programa", "outro programa"),
        IntakeSource.Import => new("an import", "una importación", "uma importação"),
        _ => new("the demo", "la demostración", "a demonstração"),
    };
}
