using LogBook.Application.History;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.History;

/// <summary>Words of Site history and the sheet.</summary>
public static class HistoryPageTexts
{
    public static readonly Text Title = new("Site history", "Historial del sitio", "Histórico do local");
    public static readonly Text Sheet = new("Sheet of the last twelve visits", "Hoja de las últimas doce visitas", "Folha das últimas doze visitas");
    public static readonly Text Download = new("Table for a spreadsheet (CSV)", "Tabla para hoja de cálculo (CSV)", "Tabela para planilha (CSV)");
    public static readonly Text Note = new("Note", "Nota", "Nota");
    public static readonly Text Period = new("Period", "Periodo", "Período");
    public static readonly Text Months3 = new("3 months", "3 meses", "3 meses");
    public static readonly Text Months6 = new("6 months", "6 meses", "6 meses");
    public static readonly Text Year = new("1 year", "1 año", "1 ano");
    public static readonly Text Year2 = new("2 years", "2 años", "2 anos");
    public static readonly Text Shown = new("Shown: {0} of {1}", "Se muestran {0} de {1}", "Mostrados: {0} de {1}");
    public static readonly Text Empty = new("Nothing was read in this period", "No se leyó nada en este periodo", "Nada foi lido neste período");
    public static readonly Text EmptyMore = new("Choose a longer period, or another system of the site.", "Elija un periodo más largo u otro sistema del sitio.", "Escolha um período mais longo ou outro sistema do local.");
    public static readonly Text OtherSystems = new("Other systems of this site", "Otros sistemas de este sitio", "Outros sistemas deste local");
    public static readonly Text ZoomIn = new("Closer", "Acercar", "Aproximar");
    public static readonly Text ZoomOut = new("Wider", "Alejar", "Afastar");
    public static readonly Text Earlier = new("Earlier", "Antes", "Antes");
    public static readonly Text Later = new("Later", "Después", "Depois");
    public static readonly Text Whole = new("Whole period", "Todo el periodo", "Todo o período");
    public static readonly Text Previous = new("Previous visit", "Visita anterior", "Visita anterior");
    public static readonly Text Next = new("Next visit", "Visita siguiente", "Próxima visita");
    public static readonly Text Keys = new(
        "Arrow keys move, + and − change the scale, Home shows all, Page Up and Page Down go from visit to visit, Enter opens it.",
        "Las flechas desplazan, + y − cambian la escala, Inicio muestra todo, Re Pág y Av Pág van de visita en visita, Intro la abre.",
        "As setas deslocam, + e − mudam a escala, Home mostra tudo, Page Up e Page Down vão de visita em visita, Enter abre.");
    public static readonly Text Plot = new("Chart of the readings over time", "Gráfico de las lecturas en el tiempo", "Gráfico das leituras no tempo");
    public static readonly Text AsTable = new("Show as table", "Mostrar como tabla", "Mostrar como tabela");
    public static readonly Text InRange = new("range in force", "rango en vigor", "faixa em vigor");
    public static readonly Text SetPoint = new("set point", "punto de consigna", "ponto de ajuste");
    public static readonly Text OutsideMark = new("large open mark: outside its range", "marca grande abierta: fuera de su rango", "marca grande aberta: fora da faixa");
    public static readonly Text CensoredMark = new("triangle: less than (▼) or more than (▲)", "triángulo: menor que (▼) o mayor que (▲)", "triângulo: menor que (▼) ou maior que (▲)");
    public static readonly Text DisplayMark = new("broken line, open marks: controller display", "línea discontinua, marcas abiertas: pantalla del controlador", "linha tracejada, marcas abertas: visor do controlador");
    public static readonly Text GapMark = new("no line where visits are missing", "sin línea donde faltan visitas", "sem linha onde faltam visitas");
    public static readonly Text InOtherUnits = new("{0}: {1} readings in a unit that cannot be put into this one are not drawn; they are in the table.", "{0}: {1} lecturas en una unidad no convertible no se dibujan; están en la tabla.", "{0}: {1} leituras em unidade não conversível não são desenhadas; estão na tabela.");
    public static readonly Text NotDrawn = new(
        "{0}: {1} values are not drawn, because the part is not in the set-up, the unit does not fit it, or the level lies outside it. They are in the table for a spreadsheet.",
        "{0}: {1} valores no se dibujan, porque la pieza no está en la configuración, la unidad no le corresponde o el nivel queda fuera de ella. Están en la tabla para hoja de cálculo.",
        "{0}: {1} valores não são desenhados, porque a peça não está na configuração, a unidade não lhe cabe ou o nível fica fora dela. Estão na tabela para planilha.");
    public static readonly Text Moment = new("Moment", "Momento", "Momento");
    public static readonly Text Figures = new("Worked out between visits", "Calculado entre visitas", "Calculado entre visitas");
    public static readonly Text FiguresMore = new(
        "Each figure with its expanded uncertainty (k = 2). A dash says that it could not be worked out; open it to see why.",
        "Cada cifra con su incertidumbre expandida (k = 2). Una raya indica que no se pudo calcular; ábrala para ver por qué.",
        "Cada cifra com sua incerteza expandida (k = 2). Um traço diz que não pôde ser calculada; abra para ver por quê.");
    public static readonly Text NoFigures = new("Nothing has been worked out for this period yet.", "Todavía no se ha calculado nada para este periodo.", "Ainda não há nada calculado para este período.");
    public static readonly Text How = new("How was this worked out?", "¿Cómo se calculó?", "Como isto foi calculado?");
    public static readonly Text Formula = new("Formula", "Fórmula", "Fórmula");
    public static readonly Text Inputs = new("What went in", "Datos de entrada", "O que entrou");
    public static readonly Text Source = new("Source", "Fuente", "Fonte");
    public static readonly Text Uncertainty = new("Uncertainty", "Incertidumbre", "Incerteza");
    public static readonly Text UncertaintySays = new(
        "Standard uncertainty {0}; expanded (k = 2) {1}: about 95 % of such intervals hold the true value.",
        "Incertidumbre típica {0}; expandida (k = 2) {1}: cerca del 95 % de tales intervalos contiene el valor verdadero.",
        "Incerteza padrão {0}; expandida (k = 2) {1}: cerca de 95 % de tais intervalos contêm o valor verdadeiro.");
    public static readonly Text WhyNot = new("Could not be worked out: {0}", "No se pudo calcular: {0}", "Não pôde ser calculado: {0}");
    public static readonly Text Interval = new("From {0} to {1}", "De {0} a {1}", "De {0} a {1}");
    public static readonly Text ShowEarlier = new("Show earlier intervals ({0})", "Mostrar intervalos anteriores ({0})", "Mostrar intervalos anteriores ({0})");
    public static readonly Text EarlierFindings = new("Show earlier findings ({0})", "Mostrar hallazgos anteriores ({0})", "Mostrar constatações anteriores ({0})");
    public static readonly Text Close = new("Close", "Cerrar", "Fechar");
    public static readonly Text NoFindings = new("No finding in this period", "Ningún hallazgo en este periodo", "Nenhuma constatação neste período");
    public static readonly Text SummaryVisits = new("{0} to {1}, {2} visits.", "{0} a {1}, {2} visitas.", "{0} a {1}, {2} visitas.");
    public static readonly Text SummaryPeriod = new("{0} to {1}.", "{0} a {1}.", "{0} a {1}.");
    public static readonly Text SummarySeries = new("{0}: {1} values, {2}, last {3}.", "{0}: {1} valores, {2}, último {3}.", "{0}: {1} valores, {2}, último {3}.");
    public static readonly Text SummarySeriesOne = new("{0}: one value, {1}.", "{0}: un valor, {1}.", "{0}: um valor, {1}.");
    public static readonly Text UncertaintyMark = new("upright line: expanded uncertainty (k = 2) of a figure", "línea vertical: incertidumbre expandida (k = 2) de una cifra", "linha vertical: incerteza expandida (k = 2) de uma cifra");
    public static readonly Text SeriesOf = new("{0}:", "{0}:", "{0}:");
    public static readonly Text Picture = new("Picture (PNG)", "Imagen (PNG)", "Imagem (PNG)");
    public static readonly Text ShowAll = new("Show everything", "Mostrar todo", "Mostrar tudo");
    public static readonly Text ShowUsual = new("Show the usual ones", "Mostrar lo habitual", "Mostrar o habitual");
    public static readonly Text Compare = new("Compare systems", "Comparar sistemas", "Comparar sistemas");
    public static readonly Text SystemNumber = new("System {0}", "Sistema {0}", "Sistema {0}");
    public static readonly Text NoSystem = new("none", "ninguno", "nenhum");
    public static readonly Text ReadingOrFigure = new("Reading or figure", "Lectura o cifra", "Leitura ou cifra");
    public static readonly Text Readings = new("Readings", "Lecturas", "Leituras");
    public static readonly Text Figure = new("Figure", "Cifra", "Cifra");
    public static readonly Text LatestFigures = new("Figures side by side", "Cifras lado a lado", "Cifras lado a lado");
    public static readonly Text LatestFiguresMore = new(
        "The latest of the period in each system, with its expanded uncertainty (k = 2) and the visit that ends its interval. Intervals and loads differ. A product is compared with the same product.",
        "La última del periodo en cada sistema, con su incertidumbre expandida (k = 2) y la visita que cierra su intervalo. Los intervalos y las cargas difieren. Un producto se compara con el mismo producto.",
        "A última do período em cada sistema, com sua incerteza expandida (k = 2) e a visita que fecha seu intervalo. Os intervalos e as cargas diferem. Um produto é comparado com o mesmo produto.");
    public static readonly Text Difference = new("First minus second", "Primero menos segundo", "Primeiro menos segundo");
    public static readonly Text Larger = new("larger than its uncertainty", "mayor que su incertidumbre", "maior que sua incerteza");
    public static readonly Text NotLarger = new("not larger than its uncertainty", "no mayor que su incertidumbre", "não maior que sua incerteza");
    public static readonly Text ChooseTwo = new("Choose two or three systems", "Elija dos o tres sistemas", "Escolha dois ou três sistemas");
    public static readonly Text ChooseTwoMore = new("Their readings or figures are then drawn on one axis, each with a shape of its own.", "Sus lecturas o cifras se dibujan entonces en un mismo eje, cada una con su propia forma.", "Suas leituras ou cifras são então desenhadas em um mesmo eixo, cada uma com a sua forma.");
    public static readonly Text RangesNow = new("Ranges in force on the last day", "Rangos en vigor el último día", "Faixas em vigor no último dia");
    public static readonly Text CompareSays = new(
        "Readings of the water; the controller's display only where nobody read anything else. Times are wall times of each site. Different water and load explain many differences.",
        "Lecturas del agua; la pantalla del controlador solo donde nadie leyó otra cosa. Las horas son las locales de cada sitio. Agua y carga distintas explican muchas diferencias.",
        "Leituras da água; o visor do controlador só onde ninguém leu outra coisa. Os horários são os locais de cada local. Água e carga diferentes explicam muitas diferenças.");
    public static readonly Text SummaryPanel = new("{0}: {1} readings, {2}, last {3}.", "{0}: {1} lecturas, {2}, última {3}.", "{0}: {1} leituras, {2}, última {3}.");
    public static readonly Text SummaryPanelSame = new("{0}: {1} readings, all {2}.", "{0}: {1} lecturas, todas {2}.", "{0}: {1} leituras, todas {2}.");
    public static readonly Text SummaryPanelOne = new("{0}: one reading, {1}.", "{0}: una lectura, {1}.", "{0}: uma leitura, {1}.");
    public static readonly Text SummaryOutside = new("{0} outside the range in force.", "{0} fuera del rango en vigor.", "{0} fora da faixa em vigor.");
    public static readonly Text SheetEmpty = new("No visit with readings yet", "Todavía no hay visitas con lecturas", "Ainda não há visitas com leituras");
    public static readonly Text Test = new("Test", "Ensayo", "Ensaio");
    public static readonly Text Range = new("Range", "Rango", "Faixa");
    public static readonly Text BelowMark = new("▼ below the range in force on the day", "▼ por debajo del rango en vigor ese día", "▼ abaixo da faixa em vigor no dia");
    public static readonly Text AboveMark = new("▲ above it", "▲ por encima", "▲ acima");
    public static readonly Text NotReadMark = new("– not read", "– no leído", "– não lido");
    public static readonly Text Print = new("Print", "Imprimir", "Imprimir");
    public static readonly Text Initials = new("By", "Por", "Por");

    /// <summary>Name of a row of marks.</summary>
    public static Text NameOf(HistoryMarkKind kind) => kind switch
    {
        HistoryMarkKind.Settings => new("Settings changed", "Ajustes cambiados", "Ajustes alterados"),
        HistoryMarkKind.Delivery => new("Deliveries", "Entregas", "Entregas"),
        HistoryMarkKind.Cleaning => new("Cleaning", "Limpieza", "Limpeza"),
        HistoryMarkKind.Calibration => new("Probe work", "Trabajo en sondas", "Trabalho nas sondas"),
        HistoryMarkKind.Result => new("Results", "Resultados", "Resultados"),
        HistoryMarkKind.Photo => new("Photos", "Fotos", "Fotos"),
        HistoryMarkKind.Finding => new("Findings", "Hallazgos", "Constatações"),
        _ => new("Other events", "Otros sucesos", "Outros eventos"),
    };
}
