using LogBook.Application.MoveIn;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp.MoveIn;

/// <summary>Words of the page that moves spreadsheets in.</summary>
public static class MoveInPageTexts
{
    public static readonly Text Title = new("Spreadsheets move in", "Traer hojas de cálculo", "Trazer planilhas");
    public static readonly Text Short = new("Bring past visits in from a workbook or a CSV file.", "Traer visitas pasadas desde un libro de cálculo o un archivo CSV.", "Trazer visitas passadas de uma planilha ou de um arquivo CSV.");
    public static readonly Text Intro = new(
        "Choose a workbook (.xlsx) or a CSV file in your own layout. LogBook finds the headings, shows what it takes each column for and asks about every cell that could mean two things. Nothing is written before you press the button at the end, and the same file twice adds nothing.",
        "Elija un libro (.xlsx) o un archivo CSV con su propia disposición. LogBook encuentra los encabezados, muestra por qué toma cada columna y pregunta por cada celda que podría significar dos cosas. No se escribe nada hasta que pulse el botón del final, y el mismo archivo dos veces no añade nada.",
        "Escolha uma planilha (.xlsx) ou um arquivo CSV com a sua própria disposição. O LogBook encontra os cabeçalhos, mostra como entende cada coluna e pergunta por cada célula que poderia significar duas coisas. Nada é escrito antes de você tocar no botão do fim, e o mesmo arquivo duas vezes não acrescenta nada.");
    public static readonly Text File = new("Workbook or CSV file", "Libro o archivo CSV", "Planilha ou arquivo CSV");
    public static readonly Text Template = new("Template workbook to fill in", "Libro modelo para rellenar", "Planilha modelo para preencher");
    public static readonly Text Reading = new("The file is being read.", "Se está leyendo el archivo.", "O arquivo está sendo lido.");
    public static readonly Text ReadFile = new("{0}: sheets read: {1}.", "{0}: hojas leídas: {1}.", "{0}: planilhas lidas: {1}.");
    public static readonly Text Where = new("Where and who", "Dónde y quién", "Onde e quem");
    public static readonly Text SiteOf = new("Site of the sheet “{0}”", "Sitio de la hoja «{0}»", "Local da planilha «{0}»");
    public static readonly Text PersonOf = new("Visits made by, where no column tells", "Visitas hechas por, donde ninguna columna lo dice", "Visitas feitas por, onde nenhuma coluna diz");
    public static readonly Text Kept = new("Kept mapping", "Asignación guardada", "Mapeamento guardado");
    public static readonly Text NoneKept = new("none", "ninguna", "nenhum");
    public static readonly Text KeptFits = new("The kept mapping “{0}” fits this file and is used.", "La asignación guardada «{0}» encaja con este archivo y se usa.", "O mapeamento guardado «{0}» serve para este arquivo e é usado.");
    public static readonly Text Choose = new("choose", "elija", "escolha");
    public static readonly Text Columns = new("Columns", "Columnas", "Colunas");
    public static readonly Text ColumnsMore = new("What each column holds. Guesses are marked: look at them. What is not needed can be left out.", "Lo que contiene cada columna. Las suposiciones están marcadas: mírelas. Lo que no haga falta se puede omitir.", "O que cada coluna contém. As suposições estão marcadas: olhe-as. O que não é preciso pode ser omitido.");
    public static readonly Text Heading = new("Heading", "Encabezado", "Cabeçalho");
    public static readonly Text Example = new("For example", "Por ejemplo", "Por exemplo");
    public static readonly Text Holds = new("Holds", "Contiene", "Contém");
    public static readonly Text Which = new("Which", "Cuál", "Qual");
    public static readonly Text Water = new("Of which water", "De qué agua", "De que água");
    public static readonly Text Unit = new("Unit", "Unidad", "Unidade");
    public static readonly Text Guess = new("guess", "suposición", "suposição");
    public static readonly Text Said = new("said", "dicho", "dito");
    public static readonly Text Questions = new("Questions: {0}", "Preguntas: {0}", "Perguntas: {0}");
    public static readonly Text NoQuestions = new("Nothing is open.", "No queda nada abierto.", "Nada está em aberto.");
    public static readonly Text AnswerColumns = new("Say first what the columns hold; then each doubtful cell is asked.", "Diga primero qué contienen las columnas; después se pregunta por cada celda dudosa.", "Diga primeiro o que as colunas contêm; depois se pergunta por cada célula duvidosa.");
    public static readonly Text Cell = new("Sheet “{0}”, cell {1}, {2}", "Hoja «{0}», celda {1}, {2}", "Planilha «{0}», célula {1}, {2}");
    public static readonly Text AllAlike = new("All {0} alike in this column:", "Las {0} iguales de esta columna:", "As {0} iguais desta coluna:");
    public static readonly Text MoreQuestions = new("{0} more come after these.", "Después de estas vienen {0} más.", "Depois destas vêm mais {0}.");
    public static readonly Text Undo = new("Take the last answer back", "Retirar la última respuesta", "Desfazer a última resposta");
    public static readonly Text Preview = new("What comes in", "Lo que entra", "O que entra");
    public static readonly Text PreviewCounts = new("{0} visits with {1} values, {2} to {3}. {4} rows become no visit.", "{0} visitas con {1} valores, de {2} a {3}. {4} filas no dan visita.", "{0} visitas com {1} valores, de {2} a {3}. {4} linhas não viram visita.");
    public static readonly Text FirstVisits = new("The first {0}", "Las primeras {0}", "As primeiras {0}");
    public static readonly Text Skipped = new("Rows that become no visit", "Filas que no dan visita", "Linhas que não viram visita");
    public static readonly Text RowOf = new("{0}, row {1}: {2}", "{0}, fila {1}: {2}", "{0}, linha {1}: {2}");
    public static readonly Text SheetOf = new("{0}: {1}", "{0}: {1}", "{0}: {1}");
    public static readonly Text Values = new("Values", "Valores", "Valores");
    public static readonly Text KeepAs = new("Keep this mapping as", "Guardar esta asignación como", "Guardar este mapeamento como");
    public static readonly Text Keep = new("Keep", "Guardar", "Guardar");
    public static readonly Text WasKept = new("The mapping “{0}” is kept.", "La asignación «{0}» queda guardada.", "O mapeamento «{0}» está guardado.");
    public static readonly Text Move = new("Move {0} visits in", "Traer {0} visitas", "Trazer {0} visitas");
    public static readonly Text Moving = new("The visits are being moved in and judged. This can take a few minutes; keep the page open.", "Las visitas se están trayendo y juzgando. Puede tardar unos minutos; mantenga la página abierta.", "As visitas estão sendo trazidas e julgadas. Pode levar alguns minutos; mantenha a página aberta.");
    public static readonly Text Moved = new("{0} visits came in, {1} were here before.", "Entraron {0} visitas, {1} ya estaban.", "Entraram {0} visitas, {1} já estavam aqui.");
    public static readonly Text Refused = new("Nothing was written. Your answers are kept on this page:", "No se escribió nada. Sus respuestas siguen en esta página:", "Nada foi escrito. As suas respostas continuam nesta página:");
    public static readonly Text KeepStoredMore = new(
        "These visits stand here already with other values. What is stored is never overwritten by a file; a visit is changed as an amendment, with its reason.",
        "Estas visitas ya constan aquí con otros valores. Un archivo nunca sobrescribe lo guardado; una visita se cambia como enmienda, con su motivo.",
        "Estas visitas já constam aqui com outros valores. Um arquivo nunca sobrescreve o que está guardado; uma visita se altera como emenda, com o motivo.");
    public static readonly Text KeepStored = new("Leave these {0} as stored, move {1} others in", "Dejar estas {0} como constan y traer otras {1}", "Deixar estas {0} como constam e trazer outras {1}");
    public static readonly Text MovedOthers = new("{0} visits came in, {1} were here before, {2} stay as they were stored.", "Entraron {0} visitas, {1} ya estaban, {2} quedan como constaban.", "Entraram {0} visitas, {1} já estavam aqui, {2} ficam como constavam.");
    public static readonly Text NoonNote = new("Where the file tells no time, the visit is set at noon.", "Donde el archivo no da hora, la visita se pone a mediodía.", "Onde o arquivo não dá hora, a visita fica ao meio-dia.");

    private static readonly Dictionary<ColumnKind, Text> Kinds = new()
    {
        [ColumnKind.Unknown] = Choose,
        [ColumnKind.Leave] = new("leave out", "omitir", "omitir"),
        [ColumnKind.Day] = new("day of the visit", "día de la visita", "dia da visita"),
        [ColumnKind.Time] = new("time of the visit", "hora de la visita", "hora da visita"),
        [ColumnKind.Site] = new("site", "sitio", "local"),
        [ColumnKind.System] = new("system", "sistema", "sistema"),
        [ColumnKind.Technician] = new("technician", "técnico", "técnico"),
        [ColumnKind.Test] = new("result of a test", "resultado de un ensayo", "resultado de um ensaio"),
        [ColumnKind.DrumLevel] = new("level of a drum", "nivel de un bidón", "nível de uma bombona"),
        [ColumnKind.DrumAdded] = new("delivered into a drum", "entregado en un bidón", "entregue em uma bombona"),
        [ColumnKind.Dial] = new("dial of a water meter", "registro de un contador de agua", "registro de um hidrômetro"),
        [ColumnKind.Total] = new("total at the controller", "total en el controlador", "total no controlador"),
        [ColumnKind.Hours] = new("hours run of an output", "horas de marcha de una salida", "horas de funcionamento de uma saída"),
        [ColumnKind.Note] = new("notes", "notas", "notas"),
    };

    /// <summary>Name of a kind of column.</summary>
    public static Text NameOf(ColumnKind kind) => Kinds[kind];
}
