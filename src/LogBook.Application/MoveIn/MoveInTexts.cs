using LogBook.Domain.Languages;

namespace LogBook.Application.MoveIn;

/// <summary>Words about files that are moved in.</summary>
public static class MoveInTexts
{
    public static readonly Text TooLarge = new("The file is empty or larger than {0} MB.", "El archivo está vacío o supera los {0} MB.", "O arquivo está vazio ou passa de {0} MB.");
    public static readonly Text TooMany = new("A sheet has more than {0} rows or {1} columns: divide it.", "Una hoja tiene más de {0} filas o {1} columnas: divídala.", "Uma planilha tem mais de {0} linhas ou {1} colunas: divida-a.");
    public static readonly Text Unreadable = new(
        "The file cannot be read as a workbook (.xlsx) or as CSV ({0}). Save it again as one of these and try once more. Nothing was changed.",
        "El archivo no se puede leer como libro (.xlsx) ni como CSV ({0}). Guárdelo de nuevo en uno de esos formatos e inténtelo otra vez. No se cambió nada.",
        "O arquivo não pode ser lido como planilha (.xlsx) nem como CSV ({0}). Salve-o de novo em um desses formatos e tente outra vez. Nada foi mudado.");
    public static readonly Text NoHeading = new("no rows with a day under a heading were found", "no se encontraron filas con un día bajo un encabezado", "não foram encontradas linhas com um dia sob um cabeçalho");
    public static readonly Text TotalRow = new("a row of totals", "una fila de totales", "uma linha de totais");
    public static readonly Text WordsRow = new("a line of words without a day: {0}", "una línea de texto sin día: {0}", "uma linha de texto sem dia: {0}");
    public static readonly Text Twice = new("the same as row {0} of {1}", "igual que la fila {0} de {1}", "igual à linha {0} de {1}");
    public static readonly Text Empty = new("no values", "sin valores", "sem valores");
    public static readonly Text LeftOut = new("left out, as answered", "omitida, según la respuesta", "omitida, conforme a resposta");

    public static readonly Text SayKind = new("say what it holds", "diga qué contiene", "diga o que contém");
    public static readonly Text SayCode = new("say which one", "diga cuál", "diga qual");
    public static readonly Text SayPoint = new("say of which water", "diga de qué agua", "diga de que água");
    public static readonly Text SayUnit = new("say in which unit", "diga en qué unidad", "diga em que unidade");
    public static readonly Text NoDayColumn = new("no column holds the day of the visit", "ninguna columna contiene el día de la visita", "nenhuma coluna contém o dia da visita");

    public static readonly Text DayMissing = new("“{0}” is not a day; expected is one as 2025-03-04 or 4 March 2025.", "«{0}» no es un día; se espera uno como 2025-03-04 o 4 marzo 2025.", "«{0}» não é um dia; espera-se um como 2025-03-04 ou 4 março 2025.");
    public static readonly Text TimeMissing = new("“{0}” is not a time of the day; expected is one as 14:30 or 2:30 PM.", "«{0}» no es una hora del día; se espera una como 14:30 o 2:30 PM.", "«{0}» não é uma hora do dia; espera-se uma como 14:30 ou 2:30 PM.");
    public static readonly Text NoTime = new("the time is not known", "no se conoce la hora", "não se sabe a hora");
    public static readonly Text WrongUnit = new("“{0}”: only {1}, or a unit that converts to it, can be taken here.", "«{0}»: aquí solo se admite {1}, o una unidad convertible.", "«{0}»: aqui só se admite {1}, ou uma unidade convertível.");
    public static readonly Text NoSign = new("“{0}”: a level, a delivery, a meter and hours take a number without < or >.", "«{0}»: un nivel, una entrega, un contador y unas horas llevan un número sin < ni >.", "«{0}»: um nível, uma entrega, um hidrômetro e horas levam um número sem < nem >.");
    public static readonly Text OtherTaken = new("where it differs from row {0} of {1}, that row was taken, as answered", "donde difiere de la fila {0} de {1}, se tomó esa fila, según la respuesta", "onde difere da linha {0} de {1}, valeu essa linha, conforme a resposta");
    public static readonly Text WhichDay = new("“{0}”: which day is it?", "«{0}»: ¿qué día es?", "«{0}»: que dia é?");
    public static readonly Text DayOrder = new("“{0}” and others of this column: does the day or the month come first?", "«{0}» y otras de esta columna: ¿va primero el día o el mes?", "«{0}» e outras desta coluna: vem primeiro o dia ou o mês?");
    public static readonly Text DayFirst = new("the day first: {0}", "primero el día: {0}", "primeiro o dia: {0}");
    public static readonly Text MonthFirst = new("the month first: {0}", "primero el mes: {0}", "primeiro o mês: {0}");
    public static readonly Text WhichNumber = new("“{0}”: which number is it?", "«{0}»: ¿qué número es?", "«{0}»: que número é?");
    public static readonly Text NoNumber = new("“{0}” is not a number; expected are digits, as 2.5 or <0.1.", "«{0}» no es un número; se esperan cifras, como 2,5 o <0,1.", "«{0}» não é um número; esperam-se algarismos, como 2,5 ou <0,1.");
    public static readonly Text NotDone = new("“{0}”: not done, or nothing found?", "«{0}»: ¿no realizado, o nada encontrado?", "«{0}»: não realizado, ou nada encontrado?");
    public static readonly Text WasNotDone = new("not done", "no realizado", "não realizado");
    public static readonly Text NothingFound = new("done, not quantifiable", "realizado, no cuantificable", "realizado, não quantificável");
    public static readonly Text LeaveOut = new("leave it out; the words go into the notes of the visit", "omitirlo; el texto pasa a las notas de la visita", "omitir; o texto vai para as notas da visita");
    public static readonly Text LeaveRow = new("leave the row out", "omitir la fila", "omitir a linha");
    public static readonly Text TakeIt = new("it is right as it stands", "es correcto tal como está", "está certo como está");
    public static readonly Text WhichSite = new("“{0}”: which site is it?", "«{0}»: ¿qué sitio es?", "«{0}»: que local é?");
    public static readonly Text WhichSystem = new("“{0}” at {1}: which system is it?", "«{0}» en {1}: ¿qué sistema es?", "«{0}» em {1}: que sistema é?");
    public static readonly Text WhichPerson = new("“{0}”: who is it?", "«{0}»: ¿quién es?", "«{0}»: quem é?");
    public static readonly Text TwoRows = new("Row {0} and row {1} of {2} tell different values for the same day and system: {3}. What are they?", "La fila {0} y la fila {1} de {2} dan valores distintos para el mismo día y sistema: {3}. ¿Qué son?", "A linha {0} e a linha {1} de {2} dão valores diferentes para o mesmo dia e sistema: {3}. O que são?");
    public static readonly Text TwoVisits = new("two visits on that day", "dos visitas ese día", "duas visitas nesse dia");
    public static readonly Text KeepFirst = new("one visit, the first row is right", "una visita, la primera fila es correcta", "uma visita, a primeira linha está certa");
    public static readonly Text KeepSecond = new("one visit, this row is right", "una visita, esta fila es correcta", "uma visita, esta linha está certa");
    public static readonly Text OtherUnit = new("Meter {0} counts in {1}, the column is in {2}. What are the numbers?", "El contador {0} cuenta en {1}, la columna está en {2}. ¿Qué son los números?", "O hidrômetro {0} conta em {1}, a coluna está em {2}. O que são os números?");
    public static readonly Text AsMeter = new("as the meter counts, in {0}", "como cuenta el contador, en {0}", "como conta o hidrômetro, em {0}");
    public static readonly Text Convert = new("in {0}; convert them", "en {0}; convertirlos", "em {0}; converter");
    public static readonly Text NotKnown = new("{0} is not a part of {1}", "{0} no es parte de {1}", "{0} não é parte de {1}");
    public static readonly Text NotAllowed = new("You may not move records in.", "Usted no puede traer registros.", "Você não pode trazer registros.");
    public static readonly Text StillOpen = new("Something is still to be answered.", "Aún queda algo por responder.", "Ainda falta responder algo.");
    public static readonly Text Imported = new("from {0}", "de {0}", "de {0}");
    public static readonly Text NoteOf = new("{0}: {1}", "{0}: {1}", "{0}: {1}");

    public static readonly Text NameNeeded = new("A name of 1 to 100 letters is needed.", "Se necesita un nombre de 1 a 100 letras.", "É preciso um nome de 1 a 100 letras.");

    public static readonly Text TemplateSheet = new("Visits", "Visitas", "Visitas");
    public static readonly Text TemplateNote = new("One row for each visit to a system. Leave out what you do not have; add columns of your own and say later what they are.", "Una fila por cada visita a un sistema. Omita lo que no tenga; añada columnas propias y diga después qué son.", "Uma linha para cada visita a um sistema. Omita o que não tem; acrescente colunas próprias e diga depois o que são.");
    public static readonly Text Date = new("Date", "Fecha", "Data");
    public static readonly Text Time = new("Time", "Hora", "Hora");
    public static readonly Text Site = new("Site", "Sitio", "Local");
    public static readonly Text System = new("System", "Sistema", "Sistema");
    public static readonly Text Technician = new("Technician", "Técnico", "Técnico");
    public static readonly Text Notes = new("Notes", "Notas", "Notas");
    public static readonly Text TowerWord = new("tower", "torre", "torre");
    public static readonly Text MakeUpWord = new("make-up", "reposición", "reposição");
}
