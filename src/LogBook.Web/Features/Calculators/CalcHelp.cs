using LogBook.Domain.Languages;
using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Calculators;

/// <summary>Help of the dose plan's page.</summary>
public sealed class CalcHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "dose-plan",
            CalcTexts.Title,
            [
                new(
                    "Four weeks ahead: the programme as the controller was last left, run on a plant as the set-up tells it. Faults stand first: what the label does not allow, doses that meet, holds that pass the high alarm, contact without circulation, a change of the clocks. Change a dose, hold, start or set point to see it beside today; nothing is stored.",
                    "Cuatro semanas por delante: el programa como se dejó el controlador, corrido en una planta como dice la ficha. Primero los fallos: lo que la etiqueta no permite, dosis que coinciden, cierres que superan la alarma alta, contacto sin circulación, un cambio de hora. Cambie dosis, cierre, inicio o consigna para verlo junto a hoy; no se guarda nada.",
                    "Quatro semanas à frente: o programa como o controlador foi deixado, rodado numa planta como diz o cadastro. Primeiro as falhas: o que o rótulo não permite, doses que se encontram, fechamentos que passam do alarme alto, contato sem circulação, uma mudança de hora. Mude dose, fechamento, início ou ponto de ajuste para ver ao lado de hoje; nada é guardado."),
                new(
                    "Each number of a calculation says where it comes from and may be changed. The set point follows from the target cycles or from the scarcest ion, which is named; conductivity reads cycles low and is corrected for that. A feed gives its setting for a level, and the level at the setting now, both with uncertainty.",
                    "Cada número de un cálculo dice de dónde viene y se puede cambiar. La consigna sale de los ciclos objetivo o del ion más escaso, que se nombra; la conductividad lee los ciclos de menos y se corrige. Una dosificación da su ajuste para un nivel, y el nivel con el ajuste actual, ambos con incertidumbre.",
                    "Cada número de um cálculo diz de onde vem e pode ser mudado. O ponto de ajuste vem dos ciclos alvo ou do íon mais escasso, que é nomeado; a condutividade lê os ciclos a menos e é corrigida. Uma dosagem dá seu ajuste para um nível, e o nível com o ajuste atual, ambos com incerteza."),
                new(
                    "Where the label on file does not allow a dose, the page says stop and gives no setting. A hold shorter than the label's contact is never proposed. A competent person approves what is entered into a controller.",
                    "Donde la etiqueta en la ficha no permite una dosis, la página dice alto y no da ajuste. Nunca se propone un cierre más corto que el contacto de la etiqueta. Lo que se ingresa en un controlador lo aprueba una persona competente.",
                    "Onde o rótulo no cadastro não permite uma dose, a página diz pare e não dá ajuste. Nunca se propõe um fechamento mais curto que o contato do rótulo. O que se insere num controlador é aprovado por uma pessoa competente."),
            ],
            "/sites/{Code}/systems/{System}/dose-plan"),
    ];
}
