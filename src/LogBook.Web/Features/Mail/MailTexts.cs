using LogBook.Application.Mail;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Mail;

/// <summary>Words of the mail pages.</summary>
public static class MailTexts
{
    public static readonly Text Title = new("Mail", "Correo", "Correio");
    public static readonly Text Message = new("Message", "Mensaje", "Mensagem");
    public static readonly Text OnlyOpen = new("Only what has not left yet", "Solo lo que aún no ha salido", "Somente o que ainda não saiu");
    public static readonly Text None = new("No mail yet", "Aún no hay correo", "Ainda não há correio");
    public static readonly Text NoneMeans = new(
        "A visit summary is queued here when a visit is closed and its customer has a contact who gets summaries.",
        "Un resumen se pone aquí en cola cuando se cierra una visita y su cliente tiene un contacto que recibe resúmenes.",
        "Um resumo entra nesta fila quando uma visita é encerrada e seu cliente tem um contato que recebe resumos.");

    public static readonly Text Standing = new("Where it stands", "Estado", "Situação");
    public static readonly Text To = new("To", "Para", "Para");
    public static readonly Text About = new("About", "Sobre", "Sobre");
    public static readonly Text Queued = new("Queued", "En cola desde", "Na fila desde");
    public static readonly Text Waiting = new("○ waiting to be sent", "○ a la espera de envío", "○ aguardando envio");
    public static readonly Text Accepted = new("● taken by the mail server {0}", "● aceptado por el servidor de correo {0}", "● aceito pelo servidor de correio {0}");
    public static readonly Text GivenUp = new("▲ given up {0}", "▲ abandonado {0}", "▲ abandonado {0}");
    public static readonly Text Tries = new("{0} tries; next {1}", "{0} intentos; próximo {1}", "{0} tentativas; próxima {1}");
    public static readonly Text TryAgain = new("Try again", "Intentar de nuevo", "Tentar de novo");
    public static readonly Text TriedAgain = new("Back in the queue.", "De nuevo en la cola.", "De volta à fila.");
    public static readonly Text NotDone = new("That was not possible; the message may have left meanwhile.", "No fue posible; puede que el mensaje ya haya salido.", "Não foi possível; a mensagem pode já ter saído.");
    public static readonly Text ServerSaid = new("The other side said", "El otro lado dijo", "O outro lado disse");
    public static readonly Text PlainPart = new("Plain text", "Texto sin formato", "Texto simples");
    public static readonly Text HtmlPart = new("As mail programs show it", "Como lo muestran los programas de correo", "Como os programas de correio mostram");
    public static readonly Text NotWorded = new("It is worded when its turn comes.", "Se redacta cuando llega su turno.", "É redigida quando chega a sua vez.");
    public static readonly Text Opened = new(
        "“Taken” means that the mail server accepted responsibility; it does not prove that anybody has read it.",
        "«Aceptado» significa que el servidor de correo asumió la responsabilidad; no prueba que alguien lo haya leído.",
        "“Aceito” significa que o servidor de correio assumiu a responsabilidade; não prova que alguém tenha lido.");

    /// <summary>Where a message stands, in words.</summary>
    public static Text NameOf(MailStanding standing) => standing switch
    {
        MailStanding.Accepted => Accepted,
        MailStanding.GivenUp => GivenUp,
        _ => Waiting,
    };
}
