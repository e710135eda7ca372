using LogBook.Domain.Languages;

namespace LogBook.Web.Features.VisitForms;

/// <summary>Words around the visit form.</summary>
public static class VisitTexts
{
    public static readonly Text Title = new("Visit: {0}", "Visita: {0}", "Visita: {0}");

    public static readonly Text Amend = new("Amend the visit: {0}", "Corregir la visita: {0}", "Corrigir a visita: {0}");

    public static readonly Text SavedAt = new("Draft on the server, {0}", "Borrador en el servidor, {0}", "Rascunho no servidor, {0}");

    public static readonly Text NotSaved = new(
        "The draft could not be kept on the server. Do not close this page; it tries again with your next entry.",
        "No se pudo guardar el borrador en el servidor. No cierre esta página; lo intentará con su próxima anotación.",
        "Não foi possível guardar o rascunho no servidor. Não feche esta página; ela tenta de novo na sua próxima anotação.");

    public static readonly Text ChangedElsewhere = new(
        "This draft was changed on another page meanwhile. Load this page again to see what stands; what was typed here since is not kept.",
        "Este borrador se cambió en otra página mientras tanto. Cargue de nuevo esta página para ver lo que vale; lo escrito aquí desde entonces no se guarda.",
        "Este rascunho foi mudado em outra página nesse meio-tempo. Carregue esta página de novo para ver o que vale; o que foi escrito aqui desde então não é guardado.");

    public static readonly Text Conflict = new(
        "The visit is on the server already with another content. What you sent is kept beside it for a supervisor to settle; the draft stays here.",
        "La visita ya está en el servidor con otro contenido. Lo que envió se conserva al lado para que un supervisor decida; el borrador sigue aquí.",
        "A visita já está no servidor com outro conteúdo. O que você enviou fica ao lado para um supervisor decidir; o rascunho continua aqui.");

    public static readonly Text Outdated = new(
        "You began this amendment on a version of the visit that has been replaced meanwhile. Below is what you entered. Closed as it is, it is kept beside the version that stands, and a supervisor settles it; or throw it away and amend the version that stands.",
        "Empezó esta corrección sobre una versión de la visita que entretanto fue reemplazada. Abajo está lo que anotó. Si la cierra así, se conserva junto a la versión que vale y un supervisor decide; o descártela y corrija la versión que vale.",
        "Você começou esta correção sobre uma versão da visita que foi substituída nesse meio-tempo. Abaixo está o que você anotou. Fechada assim, ela fica ao lado da versão que vale, e um supervisor decide; ou descarte-a e corrija a versão que vale.");

    public static readonly Text StartOver = new(
        "Throw away what I entered and amend the version that stands",
        "Descartar lo que anoté y corregir la versión que vale",
        "Descartar o que anotei e corrigir a versão que vale");

    public static readonly Text NotAllowed = new(
        "This account may not hand in visits here. The draft stays.",
        "Esta cuenta no puede entregar visitas aquí. El borrador se conserva.",
        "Esta conta não pode entregar visitas aqui. O rascunho fica.");

    public static readonly Text SendFailed = new(
        "The visit could not be sent just now. The draft is kept; close it again in a moment.",
        "La visita no se pudo enviar ahora. El borrador se conserva; ciérrela de nuevo en un momento.",
        "Não foi possível enviar a visita agora. O rascunho está guardado; feche-a de novo em um momento.");

    public static readonly Text HelpTitle = new("The visit", "La visita", "A visita");

    public static readonly Text HelpForm = new(
        "Work from the top: look first, then the controller, the reference meter, the water, stock and counters, the tower, what you adjusted, and close. Every entry is kept on the server within a second; a lost line or a closed tab loses nothing.",
        "Siga el orden: primero mirar, luego el controlador, el medidor de referencia, el agua, existencias y contadores, la torre, lo ajustado y cerrar. Cada anotación queda en el servidor en un segundo; perder la conexión o cerrar la pestaña no pierde nada.",
        "Siga a ordem: primeiro olhar, depois o controlador, o medidor de referência, a água, estoque e contadores, a torre, o que foi ajustado, e fechar. Cada anotação fica no servidor em um segundo; perder a conexão ou fechar a aba não perde nada.");

    public static readonly Text HelpNumbers = new(
        "Comma and point both count as the decimal separator; a number that can be read two ways is asked about. An unusual value is never blocked: read it again and confirm it.",
        "La coma y el punto sirven de separador decimal; si un número se puede leer de dos maneras, se pregunta. Un valor raro nunca se bloquea: léalo otra vez y confírmelo.",
        "A vírgula e o ponto servem de separador decimal; se um número pode ser lido de duas maneiras, pergunta-se. Um valor incomum nunca é bloqueado: leia-o outra vez e confirme.");

    public static readonly Text HelpCaution = new(
        "The form asks for nothing that needs a lock opened, a cover taken off or a product handled beyond your own permit. Labels, site rules and licensed persons go first. LogBook gives the controller no orders.",
        "El formulario no pide nada que exija abrir un bloqueo, quitar una tapa o manipular un producto más allá de su propia autorización. Las etiquetas, las normas del sitio y las personas habilitadas van primero. LogBook no da órdenes al controlador.",
        "O formulário não pede nada que exija abrir um bloqueio, tirar uma tampa ou manusear um produto além da sua própria autorização. Rótulos, regras do local e pessoas habilitadas vêm primeiro. O LogBook não dá ordens ao controlador.");

    public static readonly Text HelpAmend = new(
        "Amending keeps the first version: who changed what, when and why stays readable. Say why before you close it.",
        "Corregir conserva la primera versión: quién cambió qué, cuándo y por qué queda legible. Diga por qué antes de cerrar.",
        "Corrigir mantém a primeira versão: quem mudou o quê, quando e por quê continua legível. Diga por que antes de fechar.");
}
