using LogBook.Domain.Languages;

namespace LogBook.Entry.Texts;

/// <summary>Wording of the visit form as a whole: steps, messages, buttons.</summary>
public static class EntryTexts
{
    public static readonly Text Visit = new("Visit", "Visita", "Visita");
    public static readonly Text Amendment = new("Amendment of a visit", "Enmienda de una visita", "Emenda de uma visita");
    public static readonly Text Steps = new("Steps of the visit", "Pasos de la visita", "Etapas da visita");
    public static readonly Text SystemsOfSite = new("Systems of the site", "Sistemas del sitio", "Sistemas do local");
    public static readonly Text StepState = new("{0}: {1} of {2} done", "{0}: {1} de {2} hechos", "{0}: {1} de {2} feitos");
    public static readonly Text DoneOf = new("{0} of {1}", "{0} de {1}", "{0} de {1}");
    public static readonly Text AllDone = new("done", "hecho", "feito");
    public static readonly Text OpenCount = new("{0} open", "{0} pendientes", "{0} pendentes");

    public static readonly Text Arrive = new("Arrive and look first", "Llegar y mirar primero", "Chegar e olhar primeiro");
    public static readonly Text Controller = new("Controller as found", "Controlador como se encontró", "Controlador como encontrado");
    public static readonly Text Reference = new("Reference", "Referencia", "Referência");
    public static readonly Text Water = new("Water tests", "Análisis de agua", "Análises de água");
    public static readonly Text Stock = new("Stock and counters", "Existencias y contadores", "Estoque e contadores");
    public static readonly Text Tower = new("Tower", "Torre", "Torre");
    public static readonly Text Samples = new("Samples", "Muestras", "Amostras");
    public static readonly Text Adjust = new("Adjust", "Ajustar", "Ajustar");
    public static readonly Text Close = new("Close", "Cerrar", "Fechar");
    public static readonly Text Sheet = new("Sheet of tests", "Hoja de análisis", "Folha de análises");

    public static readonly Text Yes = new("Yes", "Sí", "Sim");
    public static readonly Text No = new("No", "No", "Não");
    public static readonly Text Reason = new("Reason", "Motivo", "Motivo");
    public static readonly Text Note = new("Note", "Nota", "Nota");
    public static readonly Text Notes = new("Notes", "Notas", "Notas");
    public static readonly Text Choose = new("Choose", "Elegir", "Escolher");
    public static readonly Text Add = new("Add: {0}", "Añadir: {0}", "Adicionar: {0}");
    public static readonly Text Remove = new("Remove", "Quitar", "Remover");
    public static readonly Text More = new("More: {0}", "Más: {0}", "Mais: {0}");
    public static readonly Text MoreShort = new("More", "Más", "Mais");
    public static readonly Text Less = new("Less: {0}", "Menos: {0}", "Menos: {0}");
    public static readonly Text Next = new("Next: {0}", "Siguiente: {0}", "Próxima: {0}");
    public static readonly Text Last = new("Last visit: {0}", "Última visita: {0}", "Última visita: {0}");
    public static readonly Text LastNone = new("No earlier value", "Sin valor anterior", "Sem valor anterior");
    public static readonly Text Range = new("Range {0} to {1}", "Intervalo de {0} a {1}", "Faixa de {0} a {1}");
    public static readonly Text RangeFrom = new("Range from {0}", "Intervalo desde {0}", "Faixa a partir de {0}");
    public static readonly Text RangeTo = new("Range up to {0}", "Intervalo hasta {0}", "Faixa até {0}");
    public static readonly Text InRange = new("in range", "dentro del intervalo", "dentro da faixa");
    public static readonly Text AboveRange = new("above the range", "por encima del intervalo", "acima da faixa");
    public static readonly Text BelowRange = new("below the range", "por debajo del intervalo", "abaixo da faixa");
    public static readonly Text UnitOf = new("Unit of {0}", "Unidad de {0}", "Unidade de {0}");
    public static readonly Text Understood = new("Understood: {0}", "Entendido: {0}", "Entendido: {0}");
    public static readonly Text WhichNumber = new("“{0}”: which number is meant?", "«{0}»: ¿qué número es?", "“{0}”: qual é o número?");
    public static readonly Text NotANumber = new(
        "{0}: “{1}” is not a number. Expected digits with at most one decimal sign, as in 12.5 or 12,5.",
        "{0}: «{1}» no es un número. Se esperan cifras con un solo signo decimal, como 12,5 o 12.5.",
        "{0}: “{1}” não é um número. Esperam-se algarismos com um só sinal decimal, como 12,5 ou 12.5.");
    public static readonly Text TooManyDigits = new(
        "{0}: “{1}” has too many digits. Expected 15 at most.",
        "{0}: «{1}» tiene demasiadas cifras. Se esperan 15 como máximo.",
        "{0}: “{1}” tem algarismos demais. Esperam-se no máximo 15.");
    public static readonly Text Negative = new(
        "{0}: {1} is below zero. Expected zero or more.",
        "{0}: {1} es menor que cero. Se espera cero o más.",
        "{0}: {1} é menor que zero. Espera-se zero ou mais.");
    public static readonly Text NoQualifier = new(
        "{0}: “{1}” begins with {2}. Expected a plain number here.",
        "{0}: «{1}» empieza con {2}. Aquí se espera un número sin signo.",
        "{0}: “{1}” começa com {2}. Aqui se espera um número sem sinal.");
    public static readonly Text NotAWholeNumber = new(
        "{0}: “{1}” is not a whole number. Expected digits only.",
        "{0}: «{1}» no es un número entero. Se esperan solo cifras.",
        "{0}: “{1}” não é um número inteiro. Esperam-se só algarismos.");
    public static readonly Text NotATime = new(
        "{0}: “{1}” is not a time. Expected day and time.",
        "{0}: «{1}» no es una hora. Se esperan día y hora.",
        "{0}: “{1}” não é um horário. Esperam-se dia e hora.");
    public static readonly Text Answer = new("{0}: say which number “{1}” is.", "{0}: indique qué número es «{1}».", "{0}: indique qual número é “{1}”.");
    public static readonly Text ItIsRight = new("{0} is right", "{0} es correcto", "{0} está certo");
    public static readonly Text Confirmed = new("Read again and confirmed", "Leído otra vez y confirmado", "Lido novamente e confirmado");
    public static readonly Text Problems = new("Please correct before closing", "Corrija antes de cerrar", "Corrija antes de fechar");
    public static readonly Text Refused = new("The visit was not taken. Nothing was lost.", "La visita no fue aceptada. No se perdió nada.", "A visita não foi aceita. Nada se perdeu.");
    public static readonly Text CautionRead = new("Read", "Leído", "Lido");
    public static readonly Text Cautions = new("Take care", "Precaución", "Cuidado");
    public static readonly Text CannotWork = new("I cannot work here", "No puedo trabajar aquí", "Não posso trabalhar aqui");
    public static readonly Text CanWork = new("Go on with the visit", "Continuar con la visita", "Continuar a visita");
    public static readonly Text WhyStopped = new("Why work stopped", "Por qué se detuvo el trabajo", "Por que o trabalho parou");
    public static readonly Text WhyAmended = new("Why the visit is amended", "Por qué se enmienda la visita", "Por que a visita é emendada");
    public static readonly Text StoppedHint = new(
        "The visit ends here and is a record like any other: say why, and close it. What was entered stays.",
        "La visita termina aquí y es un registro como cualquier otro: diga por qué y ciérrela. Lo anotado se conserva.",
        "A visita termina aqui e é um registro como qualquer outro: diga por que e feche-a. O que foi anotado fica.");
    public static readonly Text DoneBy = new("Done by", "Hecha por", "Feita por");
    public static readonly Text WhoElse = new("Who else is here", "Quién más está aquí", "Quem mais está aqui");
    public static readonly Text With = new("With {0}", "Con {0}", "Com {0}");
    public static readonly Text KindOfVisit = new("Kind of visit", "Tipo de visita", "Tipo de visita");
    public static readonly Text Arrived = new("Arrived", "Llegada", "Chegada");
    public static readonly Text Left = new("Left", "Salida", "Saída");
    public static readonly Text Running = new("Is the system running?", "¿Está en marcha el sistema?", "O sistema está funcionando?");
    public static readonly Text InUse = new("Is it in use this season?", "¿Está en uso esta temporada?", "Está em uso nesta temporada?");
    public static readonly Text ReadBack = new("Read back", "Lectura de lo anotado", "Leitura do anotado");
    public static readonly Text StillOpen = new("Still open", "Pendiente", "Pendente");
    public static readonly Text NothingOpen = new("Nothing is open.", "No queda nada pendiente.", "Nada está pendente.");
    public static readonly Text LeaveOpen = new("Leave open because", "Dejar pendiente porque", "Deixar pendente porque");
    public static readonly Text LeaveOpenHint = new("Goes to the supervisor with the visit.", "Va al supervisor con la visita.", "Vai ao supervisor com a visita.");
    public static readonly Text LeftOpenNote = new("Left open ({0}) because: {1}", "Queda pendiente ({0}) porque: {1}", "Fica pendente ({0}) porque: {1}");
    public static readonly Text CloseVisit = new("Close the visit", "Cerrar la visita", "Fechar a visita");
    public static readonly Text SaveAmendment = new("Save the amendment", "Guardar la enmienda", "Salvar a emenda");
    public static readonly Text CloseFirst = new("Before closing: settle what is open, or say why it stays open.", "Antes de cerrar: resuelva lo pendiente o diga por qué queda pendiente.", "Antes de fechar: resolva o pendente ou diga por que fica pendente.");
    public static readonly Text AtTheSide = new("Figures", "Cifras", "Números");
    // Not the cycles: conductivity reads low at high cycles, and the figure of the visit is corrected for it.
    public static readonly Text ConductivityRatio = new("Conductivity, tower over make-up", "Conductividad, torre entre reposición", "Condutividade, torre sobre reposição");
    public static readonly Text ProbeErrorFigure = new("Probe as found against reference", "Sonda como se encontró frente a la referencia", "Sonda como encontrada frente à referência");
    public static readonly Text NoFigures = new("No figures yet.", "Aún no hay cifras.", "Ainda não há números.");
}
