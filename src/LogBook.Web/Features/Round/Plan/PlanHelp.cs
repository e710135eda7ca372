using LogBook.Web.Features.Help;
using LogBook.Web.Features.Round.Leave;

namespace LogBook.Web.Features.Round.Plan;

/// <summary>Help of the plan and the pack list.</summary>
public sealed class PlanHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "plan",
            PlanPageTexts.Title,
            [
                new(
                    "Who goes where on which day. A supervisor plans sites for a technician, one by one or all that are due on a day; a technician sees the own stops. Both change the order of stops by the buttons beside them. The technician's round, here and on the tablet, follows the plan of the day. Who cannot go hands the day to a colleague, and takes it back as long as the colleague has begun none of its visits (one begun on a tablet is known once it has come in); for a supervisor, one tap hands it to the technician who is there with the fewest minutes planned, and one tap gives it back.",
                    "Quién va a dónde y qué día. Un supervisor planifica sitios para un técnico, uno a uno o todos los que vencen en un día; un técnico ve sus propias paradas. Ambos cambian el orden con los botones de cada parada. La ronda del técnico, aquí y en la tableta, sigue el plan del día. Quien no puede ir pasa el día a un compañero y lo recupera mientras este no haya empezado ninguna de sus visitas (una empezada en una tableta se conoce cuando ha llegado); un supervisor lo pasa con un toque al técnico presente con menos minutos planificados, y otro toque lo devuelve.",
                    "Quem vai aonde e em que dia. Um supervisor planeja locais para um técnico, um a um ou todos os que vencem em um dia; um técnico vê as próprias paradas. Ambos mudam a ordem pelos botões de cada parada. A ronda do técnico, aqui e no tablet, segue o plano do dia. Quem não pode ir passa o dia a um colega e o retoma enquanto este não tiver começado nenhuma das visitas (uma começada em um tablet é conhecida quando chegou); um supervisor o passa com um toque ao técnico presente com menos minutos planejados, e outro toque o devolve."),
                new(
                    "The minutes of a stop are the median of the site's own routine visits that nobody doubts; where there are few, a rule of thumb that says so. They are summed against the length of a day; the way between sites is not in them. Where the visit was made, the minutes spent stand beside them. The plan is kept with its versions: when somebody else was faster, the page shows what stands now.",
                    "Los minutos de una parada son la mediana de las visitas de rutina del propio sitio de las que nadie duda; donde hay pocas, una regla aproximada que lo dice. Se suman frente a la duración de un día; el camino entre sitios no está incluido. Donde se hizo la visita, los minutos empleados están al lado. El plan se guarda con sus versiones: si otra persona fue más rápida, la página muestra lo que vale ahora.",
                    "Os minutos de uma parada são a mediana das visitas de rotina do próprio local das quais ninguém duvida; onde há poucas, uma regra aproximada que o diz. São somados diante da duração de um dia; o caminho entre locais não está incluído. Onde a visita foi feita, os minutos gastos estão ao lado. O plano é guardado com suas versões: se outra pessoa foi mais rápida, a página mostra o que vale agora."),
            ],
            PlanLinks.Plan),
        new(
            "pack-list",
            PlanPageTexts.Pack,
            [
                new(
                    "What to pack for the planned stops of a day: reagents with their lots and which of them expire, bottles and dip slides, product with suggested litres, and instruments whose check in a standard is due. It can be printed.",
                    "Qué preparar para las paradas planificadas de un día: reactivos con sus lotes y cuáles caducan, frascos y láminas de cultivo, producto con litros sugeridos e instrumentos cuya comprobación con patrón vence. Se puede imprimir.",
                    "O que preparar para as paradas planejadas de um dia: reagentes com seus lotes e quais vencem, frascos e lâminas de cultura, produto com litros sugeridos e instrumentos cuja verificação com padrão vence. Pode ser impressa."),
                new(
                    "Suggested litres come from the use and stock that the run-out is worked out with: enough until the visit after the next one, with the uncertainty added. Label, drum and vehicle set the limit; products that must never meet are carried apart.",
                    "Los litros sugeridos salen del consumo y las existencias con que se calcula el agotamiento: bastan hasta la visita siguiente a la próxima, con la incertidumbre sumada. La etiqueta, el bidón y el vehículo ponen el límite; los productos que nunca deben juntarse van separados.",
                    "Os litros sugeridos vêm do consumo e do estoque com que se calcula o esgotamento: bastam até a visita depois da próxima, com a incerteza somada. Rótulo, bombona e veículo põem o limite; produtos que nunca devem se encontrar vão separados."),
            ],
            PlanLinks.Pack),
        new(
            "leave",
            LeaveTexts.Title,
            [
                new(
                    "Who is away from when to when and who stands in; days on which the firm works nowhere; days on which a site cannot be visited; weekdays on which it is always closed are entered once. A technician enters the own leave, a supervisor everything. For those days the sites stand on the round of who stands in, here and on the tablet, and go back by themselves. Taking days back can be undone at once; days that are over stay as they were.",
                    "Quién está ausente, desde cuándo hasta cuándo, y quién sustituye; días en que la empresa no trabaja; días en que un sitio no se puede visitar; los días de la semana en que siempre está cerrado se anotan una sola vez. Un técnico anota sus propias ausencias, un supervisor todo. En esos días los sitios están en la ronda de quien sustituye, aquí y en la tableta, y vuelven solos. Retirar días se puede deshacer enseguida; los días pasados quedan como estaban.",
                    "Quem está ausente, de quando a quando, e quem substitui; dias em que a empresa não trabalha; dias em que um local não pode ser visitado; os dias da semana em que está sempre fechado são anotados uma só vez. Um técnico anota as próprias ausências, um supervisor tudo. Nesses dias os locais ficam na ronda de quem substitui, aqui e no tablet, e voltam sozinhos. Retirar dias pode ser desfeito logo; dias passados ficam como estavam."),
                new(
                    "The day of a clock never moves. What falls due on a closed day is proposed for the last open day before it; where none is left, the plan names the day on which it opens, and the clock is late then. Visits that were planned before for somebody who is away need somebody: one tap hands that day to who stands in. A reason is a word like leave or course, never anything about somebody's health.",
                    "El día de un plazo nunca se mueve. Lo que vence en un día cerrado se propone para el último día abierto anterior; si no queda ninguno, el plan nombra el día en que abre, y entonces el plazo llega tarde. Las visitas ya planificadas para quien está ausente necesitan a alguien: un toque pasa ese día a quien sustituye. El motivo es una palabra como permiso o curso, nunca algo sobre la salud de alguien.",
                    "O dia de um prazo nunca muda. O que vence em um dia fechado é proposto para o último dia aberto antes dele; se não resta nenhum, o plano diz o dia em que abre, e então o prazo está atrasado. Visitas já planejadas para quem está ausente precisam de alguém: um toque passa esse dia a quem substitui. O motivo é uma palavra como licença ou curso, nunca algo sobre a saúde de alguém."),
            ],
            LeaveLinks.Leave),
        new(
            "patch",
            LeaveTexts.PatchTitle,
            [
                new(
                    "Hands all or some sites of a technician to another for good: the own technician changes in the set-up of each site, all of them or none, the technician with the fewest sites is proposed, one tap hands them over and one tap gives them back; the take-over pack of a site offers the same. For some days, all or chosen sites stand on the colleague's round, here and on the tablet, and go back by themselves; they are listed under leave and closed days. Somebody who has left keeps standing here with the sites until they are handed over; the plan marks them meanwhile.",
                    "Pasa todos o algunos sitios de un técnico a otro para siempre: el técnico propio cambia en la ficha de cada sitio, todos o ninguno, se propone el técnico con menos sitios, un toque los pasa y otro los devuelve; el paquete de relevo de un sitio ofrece lo mismo. Para unos días, todos los sitios o los elegidos están en la ronda del compañero, aquí y en la tableta, y vuelven solos; figuran en ausencias y días cerrados. Quien se fue sigue aquí con sus sitios hasta que se pasen; mientras tanto el plan los marca.",
                    "Passa todos ou alguns locais de um técnico a outro para sempre: o técnico próprio muda no cadastro de cada local, todos ou nenhum, propõe-se o técnico com menos locais, um toque os passa e outro os devolve; o pacote de passagem de um local oferece o mesmo. Para alguns dias, todos os locais ou os escolhidos ficam na ronda do colega, aqui e no tablet, e voltam sozinhos; constam em ausências e dias fechados. Quem saiu continua aqui com os locais até que sejam passados; enquanto isso o plano os marca."),
            ],
            LeaveLinks.Patch),
    ];
}
