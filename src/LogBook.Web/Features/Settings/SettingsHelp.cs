using LogBook.Domain.Languages;
using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Settings;

/// <summary>Help of settings and re-entry.</summary>
public sealed class SettingsHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "settings-then-and-now",
            SettingsTexts.Title,
            [
                new(
                    "Every setting of the controller as found and as left at the visits, up to the day you choose. What was found otherwise than it was left stands first: it changed while nobody was here. What was not read is not taken as unchanged.",
                    "Cada ajuste del controlador como se encontró y como se dejó en las visitas, hasta el día que elija. Lo que se encontró distinto de como se dejó va primero: cambió mientras no había nadie. Lo que no se leyó no se toma como igual.",
                    "Cada ajuste do controlador como encontrado e como deixado nas visitas, até o dia que escolher. O que foi encontrado diferente de como foi deixado vem primeiro: mudou enquanto não havia ninguém. O que não foi lido não é tomado como igual."),
                new(
                    "“Target, setting, measured” puts side by side what is aimed at, what is set, what this setting gives by the balance with its uncertainty, and what was measured last. Where the first three agree and the last does not, look at pump, drum and test.",
                    "«Objetivo, ajuste, medido» pone lado a lado lo que se busca, lo que está ajustado, lo que ese ajuste da según el balance con su incertidumbre y lo último medido. Si los tres primeros concuerdan y el último no, mire bomba, bidón y ensayo.",
                    "“Alvo, ajuste, medido” põe lado a lado o que se busca, o que está ajustado, o que esse ajuste dá pelo balanço com sua incerteza e o último medido. Se os três primeiros concordam e o último não, veja bomba, bombona e teste."),
            ],
            "/sites/{Code}/systems/{System}/settings"),
        new(
            "re-entry-sheet",
            SettingsTexts.ReEntry,
            [
                new(
                    "One page to enter all settings again after a controller lost them: as they were last left by the day you choose, grouped by what they are for, in the controller's units. A line that was never read stands as the programme asks and says so. Print it, tick each line, have a supervisor sign it.",
                    "Una página para volver a ingresar todos los ajustes cuando un controlador los perdió: como se dejaron hasta el día que elija, agrupados según para qué son, en las unidades del controlador. Una línea nunca leída está como pide el programa y lo dice. Imprímala, marque cada línea y hágala firmar por un supervisor.",
                    "Uma página para reinserir todos os ajustes quando um controlador os perdeu: como foram deixados até o dia escolhido, agrupados pelo que servem, nas unidades do controlador. Uma linha nunca lida está como o programa pede e diz isso. Imprima, marque cada linha e peça a assinatura de um supervisor."),
                new(
                    "Beside the lines stands what changed since then: pump, stroke, drum, product, label, valve, probe, meter, a newer programme. An old run with a new pump can be another dose. Open findings stand beside the feed or bleed they are about; those about none stand on top. Where today's label does not allow it, the sheet says stop, and nothing overrides that.",
                    "Junto a las líneas está lo que cambió desde entonces: bomba, carrera, bidón, producto, etiqueta, válvula, sonda, contador, un programa más nuevo. Una marcha vieja con bomba nueva puede ser otra dosis. Los hallazgos abiertos están junto a la dosificación o la purga de que tratan; los demás, arriba. Donde la etiqueta de hoy no lo permite, la hoja dice alto y nada lo anula.",
                    "Junto às linhas está o que mudou desde então: bomba, curso, bombona, produto, rótulo, válvula, sonda, hidrômetro, um programa mais novo. Uma marcha antiga com bomba nova pode ser outra dose. As constatações abertas ficam junto à dosagem ou à purga de que tratam; as demais, no topo. Onde o rótulo de hoje não permite, a folha diz pare e nada anula isso."),
                new(
                    "After entering, read every setting back from the controller and type it beside its line: LogBook tells what differs. The next visit that read settings is compared by itself.",
                    "Después de ingresar, lea cada ajuste en el controlador y escríbalo junto a su línea: LogBook dice qué difiere. La siguiente visita que leyó ajustes se compara sola.",
                    "Depois de inserir, leia cada ajuste no controlador e digite junto à linha: o LogBook diz o que difere. A próxima visita que leu ajustes é comparada sozinha."),
            ],
            "/sites/{Code}/systems/{System}/re-entry"),
    ];
}
