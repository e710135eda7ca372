using LogBook.Domain.Summaries;
using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Mail;

/// <summary>Help of the visit summary and the mail pages.</summary>
public sealed class MailHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "visit-summary",
            SummaryTexts.Title,
            [
                new(
                    "What the customer is told of a visit: what we need from them, what we found, what we did. Page and mail are written from the same text. A late result or a correction makes a new version, which is sent again and says why.",
                    "Lo que se dice al cliente de una visita: lo que necesitamos, lo que encontramos, lo que hicimos. La página y el correo salen del mismo texto. Un resultado tardío o una corrección produce una nueva versión, que se envía de nuevo y dice el motivo.",
                    "O que se diz ao cliente sobre uma visita: o que precisamos, o que constatamos, o que fizemos. A página e o correio saem do mesmo texto. Um resultado tardio ou uma correção gera uma nova versão, que é enviada de novo e diz o motivo."),
                new(
                    "Results are marked in or out of the range that was in force on the day. Figures that were worked out carry ±, the interval that holds about 95 % of the possible true values. It can be read in each of the three languages and printed.",
                    "Los resultados se marcan dentro o fuera del intervalo vigente ese día. Las cifras calculadas llevan ±, el intervalo que contiene cerca del 95 % de los valores verdaderos posibles. Puede leerse en los tres idiomas e imprimirse.",
                    "Os resultados são marcados dentro ou fora da faixa em vigor no dia. Os números calculados trazem ±, o intervalo que contém cerca de 95 % dos valores verdadeiros possíveis. Pode ser lido nos três idiomas e impresso."),
            ],
            "/visits/{Id:guid}/summary"),
        new(
            "mail",
            MailTexts.Title,
            [
                new(
                    "Summaries on their way to customers. “Waiting” has not left, “taken” was accepted by the mail server, “given up” was refused for good or could not be sent for three days: a supervisor can put it back into the queue after the address was corrected.",
                    "Resúmenes en camino a los clientes. «A la espera» no ha salido, «aceptado» lo tomó el servidor de correo, «abandonado» fue rechazado o no pudo enviarse durante tres días: un supervisor puede devolverlo a la cola tras corregir la dirección.",
                    "Resumos a caminho dos clientes. “Aguardando” ainda não saiu, “aceito” foi tomado pelo servidor de correio, “abandonado” foi recusado ou não pôde ser enviado por três dias: um supervisor pode devolvê-lo à fila depois de corrigir o endereço."),
                MailTexts.Opened,
            ],
            "/mail",
            "/mail/{Id:int}"),
    ];
}
