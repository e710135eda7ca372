using LogBook.Domain.Languages;
using LogBook.Web.Features.Attention;
using LogBook.Web.Features.Help;
using LogBook.Web.Features.Round;
using LogBook.Web.Features.Search;
using LogBook.Web.Features.Sites;
using LogBook.Web.Features.Visits;

namespace LogBook.Web.Features.History;

/// <summary>Help of the pages that are read.</summary>
public sealed class HistoryHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "todays-round",
            RoundPageTexts.Title,
            [
                new(
                    "The sites of your round, by the most urgent of their clocks, with the reason: the interval agreed since the last visit (a delivery or a late result is no visit), tests and tasks of authorities and contracts, retests in their window, drums by the earliest day on which they may run out, promised days, and findings to act on from the day they were seen until somebody answers them. What lies more than a week ahead is folded away. The buttons ▲ and ▼ put the stops of a heading into your own order for today. A supervisor sees all sites.",
                    "Los sitios de su ronda, por el más urgente de sus plazos, con el motivo: el intervalo acordado desde la última visita (una entrega o un resultado tardío no es visita), ensayos y tareas de autoridades y contratos, repeticiones en su plazo, bidones por el primer día en que pueden agotarse, días prometidos y hallazgos de actuar desde el día en que se vieron hasta que alguien responda. Lo que queda a más de una semana está plegado. Los botones ▲ y ▼ ponen las paradas de un apartado en su propio orden para hoy. Un supervisor ve todos los sitios.",
                    "Os locais da sua ronda, pelo mais urgente dos seus prazos, com o motivo: o intervalo combinado desde a última visita (uma entrega ou um resultado tardio não é visita), testes e tarefas de autoridades e contratos, repetições no seu prazo, bombonas pelo primeiro dia em que podem acabar, dias prometidos e constatações de agir desde o dia em que foram vistas até alguém responder. O que está a mais de uma semana fica recolhido. Os botões ▲ e ▼ põem as paradas de um título na sua própria ordem para hoje. Um supervisor vê todos os locais."),
                new(
                    "“Since you were here” tells what is on record since your own last visit: settings changed, results that came in, findings opened, visits by others, amendments.",
                    "«Desde que estuvo aquí» cuenta lo registrado desde su propia última visita: ajustes cambiados, resultados llegados, hallazgos abiertos, visitas de otros, correcciones.",
                    "“Desde que você esteve aqui” conta o que foi registrado desde a sua própria última visita: ajustes alterados, resultados recebidos, constatações abertas, visitas de outros, correções."),
            ],
            "/"),
        new(
            "needs-attention",
            AttentionTexts.Title,
            [
                new(
                    "Open findings, most urgent first, then oldest first. “Act” means before leaving or today, “Plan” by the next visit, “Watch” keep an eye on it. Filters stay in the address, so a list can be bookmarked; one of them is who looks after a finding. Where a kind has a clock of its own (a rule, a retest, an authority to be told, a drum), the finding says when it ends.",
                    "Hallazgos abiertos, primero los más urgentes y después los más antiguos. «Actuar» significa antes de irse u hoy, «Planificar» para la próxima visita, «Vigilar» no perderlo de vista. Los filtros quedan en la dirección y la lista puede guardarse como favorito; uno de ellos es quién se encarga. Donde un tipo tiene plazo propio (una norma, una repetición, una autoridad que avisar, un bidón), el hallazgo dice cuándo acaba.",
                    "Constatações abertas, primeiro as mais urgentes, depois as mais antigas. “Agir” quer dizer antes de sair ou hoje, “Planejar” até a próxima visita, “Observar” ficar de olho. Os filtros ficam no endereço, e a lista pode ser guardada; um deles é quem cuida da constatação. Onde um tipo tem prazo próprio (uma regra, uma repetição, uma autoridade a avisar, uma bombona), a constatação diz quando acaba."),
                new(
                    "A finding shows its evidence: the value, the interval in which the true value lies with 95 % confidence, and the limit used. It suggests causes and what to look at next; a person decides.",
                    "Un hallazgo muestra su evidencia: el valor, el intervalo en que está el valor verdadero con un 95 % de confianza y el límite usado. Sugiere causas y qué mirar a continuación; decide una persona.",
                    "Uma constatação mostra sua evidência: o valor, o intervalo em que está o valor verdadeiro com 95 % de confiança e o limite usado. Ela sugere causas e o que olhar a seguir; uma pessoa decide."),
                new(
                    "A supervisor answers a finding: takes it on or hands it to somebody of the firm, puts it to sleep until a day, or closes it with a reason. What sleeps leaves the list and is counted above it; it comes back on its day, or earlier when it gets worse. Any answer can be taken back on the finding's own page.",
                    "Un supervisor responde a un hallazgo: se encarga o lo encarga a alguien de la empresa, lo aplaza hasta un día o lo cierra con un motivo. Lo aplazado sale de la lista y se cuenta encima de ella; vuelve en su día, o antes si empeora. Toda respuesta se puede retirar en la página del hallazgo.",
                    "Um supervisor responde a uma constatação: assume-a ou passa-a a alguém da empresa, adia até um dia ou encerra com um motivo. O que está adiado sai da lista e é contado acima dela; volta no seu dia, ou antes se piorar. Qualquer resposta pode ser retirada na página da constatação."),
                new(
                    "Several findings can be chosen and answered together, with one reason. What is suspected of instruments, reagent lots and records stands apart under Second look, for supervisors alone: it is about the records, not about a plant and not about a person. The page of a finding leads to the very line in which its cause stands: the row of the probe, meter or pump, the setting that was changed, the visits that a meter, a lot or a record was compared by.",
                    "Se pueden elegir varios hallazgos y responderlos juntos, con un solo motivo. Lo que se sospecha de instrumentos, lotes de reactivos y registros está aparte, en Segunda revisión, para supervisores: trata de los registros, no de una planta ni de una persona. La página de un hallazgo lleva a la línea misma en que está su causa: la fila de la sonda, el contador o la bomba, el ajuste que cambió, las visitas con que se comparó un medidor, un lote o un registro.",
                    "Várias constatações podem ser escolhidas e respondidas juntas, com um só motivo. O que se suspeita de instrumentos, lotes de reagentes e registros fica à parte, em Segunda verificação, para supervisores: trata dos registros, não de uma planta nem de uma pessoa. A página de uma constatação leva à própria linha em que está sua causa: a linha da sonda, do hidrômetro ou da bomba, o ajuste que mudou, as visitas com que se comparou um medidor, um lote ou um registro."),
            ],
            "/attention",
            "/attention/second-look",
            "/attention/finding"),
        new(
            "sites",
            SitesTexts.Title,
            [
                new(
                    "All sites that you may see, with the last visit, the day the next one is due and open findings. The card of a site holds its systems, open actions, recommendations without an answer, last visits and contacts.",
                    "Todos los sitios que usted puede ver, con la última visita, el día de la próxima y los hallazgos abiertos. La ficha de un sitio contiene sus sistemas, acciones abiertas, recomendaciones sin respuesta, últimas visitas y contactos.",
                    "Todos os locais que você pode ver, com a última visita, o dia da próxima e as constatações abertas. A ficha de um local contém seus sistemas, ações abertas, recomendações sem resposta, últimas visitas e contatos."),
            ],
            "/sites",
            "/sites/{Code}"),
        new(
            "site-history",
            HistoryPageTexts.Title,
            [
                new(
                    "Readings of one system over time on one axis, with the ranges that were in force, and below them what happened: settings, deliveries, cleaning, probe work, results, photos, findings. Choose more readings, figures by interval with their uncertainty, drum levels, hours run and meter dials above the chart. Drag to move, pinch or use the wheel (after a click on the chart) to change the scale; the keys are told under the chart. A click on a mark opens its visit.",
                    "Lecturas de un sistema en el tiempo sobre un mismo eje, con los rangos que estaban en vigor, y debajo lo que ocurrió: ajustes, entregas, limpieza, sondas, resultados, fotos, hallazgos. Encima del gráfico puede elegir más lecturas, cifras por intervalo con su incertidumbre, niveles de bidones, horas de marcha y contadores de agua. Arrastre para mover; pellizque o use la rueda (tras pulsar el gráfico) para cambiar la escala; las teclas se indican bajo el gráfico. Pulsar una marca abre su visita.",
                    "Leituras de um sistema no tempo sobre um mesmo eixo, com as faixas que estavam em vigor e, abaixo, o que aconteceu: ajustes, entregas, limpeza, sondas, resultados, fotos, constatações. Acima do gráfico você pode escolher mais leituras, cifras por intervalo com sua incerteza, níveis de bombonas, horas de funcionamento e hidrômetros. Arraste para mover; use pinça ou a roda (após clicar no gráfico) para mudar a escala; as teclas estão indicadas sob o gráfico. Um clique em uma marca abre sua visita."),
                new(
                    "Under the chart stand the figures worked out between visits, each with its uncertainty. Press a figure to see formula, inputs and source, or why it could not be worked out. The table can be taken along as a CSV file.",
                    "Bajo el gráfico están las cifras calculadas entre visitas, cada una con su incertidumbre. Pulse una cifra para ver fórmula, datos y fuente, o por qué no se pudo calcular. La tabla se puede descargar como archivo CSV.",
                    "Sob o gráfico estão as cifras calculadas entre visitas, cada uma com sua incerteza. Toque em uma cifra para ver fórmula, dados e fonte, ou por que não pôde ser calculada. A tabela pode ser levada como arquivo CSV."),
            ],
            "/sites/{Code}/systems/{System}",
            "/sites/{Code}/systems/{System}/sheet"),
        new(
            "compare-systems",
            HistoryPageTexts.Compare,
            [
                new(
                    "The same reading, or the same figure with its uncertainty, of two or three systems on one axis, each with its own shape. You are offered the systems that you may see. Ranges differ from system to system, so they stand in the table below, not in the chart.",
                    "La misma lectura, o la misma cifra con su incertidumbre, de dos o tres sistemas sobre un mismo eje, cada uno con su propia forma. Se le ofrecen los sistemas que usted puede ver. Los rangos difieren de un sistema a otro; por eso están en la tabla de abajo y no en el gráfico.",
                    "A mesma leitura, ou a mesma cifra com sua incerteza, de dois ou três sistemas sobre um mesmo eixo, cada um com a sua forma. São oferecidos os sistemas que você pode ver. As faixas diferem de um sistema para outro; por isso estão na tabela abaixo, e não no gráfico."),
                new(
                    "The chart can be printed with its page or saved as a picture. The picture is drawn by your browser; nothing is sent anywhere.",
                    "El gráfico se puede imprimir con su página o guardar como imagen. La imagen la dibuja su navegador; no se envía nada.",
                    "O gráfico pode ser impresso com a sua página ou salvo como imagem. A imagem é desenhada pelo seu navegador; nada é enviado."),
            ],
            "/history/compare"),
        new(
            "visits",
            VisitsTexts.Title,
            [
                new(
                    "Visits that were handed in, latest first. A visit is closed when it comes in, reviewed when a supervisor has looked at it, reissued when it was amended; every version stays and the differences are told in words.",
                    "Visitas entregadas, primero las últimas. Una visita queda cerrada al llegar, revisada cuando un supervisor la ha mirado, reemitida cuando se corrigió; todas las versiones se conservan y las diferencias se dicen con palabras.",
                    "Visitas entregues, primeiro as últimas. Uma visita fica encerrada ao chegar, revisada quando um supervisor a olhou, reemitida quando foi corrigida; todas as versões permanecem e as diferenças são ditas em palavras."),
                new(
                    "A supervisor may declare a visit void, let it count again, or move one that was entered at the wrong site, each with a reason. Nothing is deleted.",
                    "Un supervisor puede anular una visita, volver a contarla o mover una que se introdujo en el sitio equivocado, siempre con un motivo. Nada se borra.",
                    "Um supervisor pode anular uma visita, fazê-la contar de novo ou mover uma que foi informada no local errado, sempre com um motivo. Nada é apagado."),
            ],
            "/visits",
            "/visits/{Id:guid}"),
        new(
            "conflicts",
            VisitsTexts.Conflicts,
            [
                VisitsTexts.ConflictsMore,
                new(
                    "Both contents are shown side by side, only where they differ. Keeping what stands changes nothing; taking the other makes it the next version. Either way both stay in the records, and a reason is asked for.",
                    "Ambos contenidos se muestran lado a lado, solo donde difieren. Conservar lo que consta no cambia nada; tomar el otro lo convierte en la versión siguiente. En ambos casos los dos permanecen en los registros y se pide un motivo.",
                    "Os dois conteúdos são mostrados lado a lado, só onde diferem. Manter o que consta não muda nada; adotar o outro faz dele a próxima versão. Nos dois casos ambos permanecem nos registros e pede-se um motivo."),
            ],
            "/visits/conflicts",
            "/visits/conflicts/{Id:int}"),
        new(
            "search",
            SearchTexts.Title,
            [
                new(
                    "Finds sites, systems, customers, products and people by a part of their code or name, and visits by a day written as 2025-03-03 or by their id. Only what your account may see is found.",
                    "Busca sitios, sistemas, clientes, productos y personas por una parte de su código o nombre, y visitas por un día escrito como 2025-03-03 o por su identificador. Solo se encuentra lo que su cuenta puede ver.",
                    "Encontra locais, sistemas, clientes, produtos e pessoas por uma parte do código ou nome, e visitas por um dia escrito como 2025-03-03 ou por seu identificador. Só se encontra o que a sua conta pode ver."),
            ],
            "/search"),
    ];
}
