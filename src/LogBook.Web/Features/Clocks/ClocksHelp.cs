using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Clocks;

/// <summary>Help of the pages about clocks.</summary>
public sealed class ClocksHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "clocks",
            ClocksTexts.Title,
            [
                new(
                    "All duties that run, most urgent first: what is asked for, by which rule and in which version, since when, until when, what would meet it, and when it was last met. “Missed” means that the time is over and nothing on record meets it; “Unknown” that nothing of the kind is on record yet. Clocks that count days of operation pass over known stops and days out of season.",
                    "Todos los plazos que corren, primero los más urgentes: qué se pide, por qué norma y versión, desde cuándo, hasta cuándo, qué lo cumple y cuándo se cumplió por última vez. «No cumplido» significa que el plazo acabó y nada registrado lo cumple; «Sin registro», que aún no hay nada de ese tipo. Los plazos en días de operación saltan paradas conocidas y días fuera de temporada.",
                    "Todos os prazos que correm, primeiro os mais urgentes: o que se pede, por qual regra e versão, desde quando, até quando, o que o cumpre e quando foi cumprido pela última vez. “Não cumprido” quer dizer que o prazo acabou e nada registrado o cumpre; “Sem registro”, que ainda não há nada desse tipo. Prazos em dias de operação pulam paradas conhecidas e dias fora da temporada."),
                new(
                    "A record is judged by the version of the rule that was in force on its date. Whether a rule holds for a plant and says what LogBook was told is for a person to check with the authority.",
                    "Un registro se juzga por la versión de la norma vigente en su fecha. Si una norma rige para una instalación y dice lo que se le indicó a LogBook lo comprueba una persona con la autoridad.",
                    "Um registro é julgado pela versão da regra em vigor na sua data. Se uma regra vale para uma instalação e diz o que foi informado ao LogBook é coisa que uma pessoa confere com a autoridade."),
            ],
            "/clocks"),
        new(
            "site-clocks",
            ClocksTexts.SiteClocks,
            [
                new(
                    "The clocks of one site, and under them the newest count of each kind: the number as entered and in the three usual units, the band of the rule in force on the day of the sample, what the rule says, what is open and what is on record since. Treatment, cleaning and samples are recorded at a visit.",
                    "Los plazos de un sitio y, debajo, el último recuento de cada tipo: el número como se introdujo y en las tres unidades usuales, la banda de la norma vigente el día de la muestra, lo que dice la norma, lo que queda abierto y lo registrado desde entonces. Tratamiento, limpieza y muestras se registran en una visita.",
                    "Os prazos de um local e, abaixo, a última contagem de cada tipo: o número como foi informado e nas três unidades usuais, a faixa da regra em vigor no dia da amostra, o que a regra diz, o que está aberto e o que foi registrado desde então. Tratamento, limpeza e amostras são registrados numa visita."),
                new(
                    "Where a rule wants the authority told, the time counts from receipt of the result. LogBook tells nobody: a person does, and writes down who told whom, when and how. A supervisor may take back what was written by mistake; both stay in the audit trail.",
                    "Donde una norma pide avisar a la autoridad, el plazo cuenta desde la recepción del resultado. LogBook no avisa a nadie: lo hace una persona y registra quién avisó a quién, cuándo y cómo. Un supervisor puede retirar lo escrito por error; todo queda en el registro de cambios.",
                    "Onde uma regra pede avisar a autoridade, o prazo conta do recebimento do resultado. O LogBook não avisa ninguém: uma pessoa avisa e registra quem avisou a quem, quando e como. Um supervisor pode retirar o que foi escrito por engano; tudo fica na trilha de auditoria."),
            ],
            "/sites/{Code}/clocks"),
    ];
}
