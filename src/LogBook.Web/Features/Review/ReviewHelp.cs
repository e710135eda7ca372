using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Review;

/// <summary>Help of Visits to review.</summary>
public sealed class ReviewHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "review",
            ReviewPageTexts.Title,
            [
                new(
                    "Visits of the last sixty days that no supervisor has looked at, oldest first, with what asks for reading: drawn by chance, amended after they were handed in, a second look at the records, findings that began with the visit, actions left open and the technician's note on what stays open and why. Visits without a mark can be chosen together and marked as reviewed.",
                    "Visitas de los últimos sesenta días que ningún supervisor ha mirado, las más antiguas primero, con lo que pide leerlas: sorteadas, corregidas después de entregarse, una segunda revisión de los registros, hallazgos que empezaron con la visita, acciones pendientes y la nota del técnico sobre lo que queda pendiente y por qué. Las visitas sin marca se pueden elegir juntas y marcar como revisadas.",
                    "Visitas dos últimos sessenta dias que nenhum supervisor olhou, as mais antigas primeiro, com o que pede leitura: sorteadas, corrigidas depois de entregues, uma segunda verificação dos registros, constatações que começaram com a visita, ações pendentes e a nota do técnico sobre o que fica pendente e por quê. As visitas sem marca podem ser escolhidas juntas e marcadas como revisadas."),
                new(
                    "The sampling plan says how many of each technician's visits were drawn and looked at over a year, and how large a share of faulty visits these looks still leave room for. A look that shows that something did not hold is recorded on the visit itself, with a note.",
                    "El plan de muestreo dice cuántas visitas de cada técnico se sortearon y miraron en un año, y para qué proporción de visitas con fallos dejan todavía margen. Si al mirar algo no se sostiene, se registra en la propia visita, con una nota.",
                    "O plano de amostragem diz quantas visitas de cada técnico foram sorteadas e olhadas em um ano, e para que proporção de visitas com falha ainda deixam margem. Quando um olhar mostra que algo não se sustentou, registra-se na própria visita, com uma nota."),
            ],
            "/review"),
    ];
}
