using LogBook.Domain.Languages;

namespace LogBook.Web.Features.VisitForms;

/// <summary>Words around the visit form.</summary>
public static class VisitTexts
{
    public static readonly Text Title = new("Visit: {0}", "Visita: {0}", "Visita: {0}");

    public static readonly Text Amend = new("Amend the visit: {0}", "Corregir la visita: {0}", "Corrigir a visita: {0}");

    public static readonly Text SavedAt = new("Draft on the server, {0}", "Borrador en el servidor, {0}", "Rascunho no servidor, {0}");

    public static readonly Text NotSaved = new(
        "The draft could not be kept on the server. Do not close this page; it tries again by itself.",
        "No se pudo guardar el borrador en el servidor. No cierre esta página; lo vuelve a intentar por sí sola.",
        "Não foi possível guardar o rascunho no servidor. Não feche esta página; ela tenta de novo sozinha.");

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

    public static readonly Text Begun = new("Begun and not finished", "Empezadas y sin terminar", "Começadas e não terminadas");

    public static readonly Text BegunAsk = new(
        "You began a visit here and did not finish it. Go on with it if it is the same visit: its arrival and all that was entered stay. Or begin a new one: the old one is kept here until you throw it away.",
        "Usted empezó aquí una visita y no la terminó. Continúela si es la misma visita: la llegada y todo lo anotado se conservan. O empiece una nueva: la anterior se guarda aquí hasta que usted la descarte.",
        "Você começou uma visita aqui e não a terminou. Continue-a se for a mesma visita: a chegada e tudo o que foi anotado ficam. Ou comece uma nova: a anterior fica guardada aqui até você descartá-la.");

    public static readonly Text BegunLine = new("Arrival {0}, last kept {1}", "Llegada {0}, guardado por última vez {1}", "Chegada {0}, guardado pela última vez {1}");

    public static readonly Text BegunMore = new("{0}; and {1} more", "{0}; y {1} más", "{0}; e mais {1}");

    public static readonly Text GoOn = new("Go on with the visit of {0}", "Continuar la visita del {0}", "Continuar a visita de {0}");

    public static readonly Text Anew = new("Begin a new visit", "Empezar una visita nueva", "Começar uma visita nova");

    public static readonly Text ThrowAway = new("Throw away …", "Descartar …", "Descartar …");

    public static readonly Text ThrowAwayOf = new("Throw away the visit of {0}", "Descartar la visita del {0}", "Descartar a visita de {0}");

    public static readonly Text ThrowAwayAsk = new(
        "Throw this away? No visit comes of it. Its text stays in the audit trail, its photos are deleted; it cannot be taken back.",
        "¿Descartar esto? No resultará ninguna visita. Su texto queda en la auditoría, sus fotos se borran; no se puede deshacer.",
        "Descartar isto? Nenhuma visita resultará disso. O texto fica na auditoria, as fotos são apagadas; não dá para desfazer.");

    public static readonly Text ThrowAwayYes = new("Throw it away", "Descartarla", "Descartá-la");

    public static readonly Text Keep = new("Keep it", "Conservarla", "Mantê-la");

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
        "Work from the top: look first, then the controller, the reference meter, the water, stock and counters, the tower, what you adjusted, and close. Every entry is kept on the server within a second; a lost line or a closed tab loses nothing. Before it is closed, the form lists what every visit reads and this one does not have yet, results that want an action or a reason, and switches whose end nobody told; a reason leaves it open for the supervisor to see. A visit that you began on another day is shown with its first values: you go on with it, or begin a new one and keep or throw away the old.",
        "Siga el orden: primero mirar, luego el controlador, el medidor de referencia, el agua, existencias y contadores, la torre, lo ajustado y cerrar. Cada anotación queda en el servidor en un segundo; perder la conexión o cerrar la pestaña no pierde nada. Antes de cerrar, el formulario enumera lo que toda visita lee y a esta le falta, los resultados que piden una acción o un motivo y los interruptores de los que no se dijo cómo quedaron; con un motivo queda pendiente y el supervisor lo ve. Una visita que empezó otro día se muestra con sus primeros valores: usted la continúa, o empieza una nueva y conserva o descarta la anterior.",
        "Siga a ordem: primeiro olhar, depois o controlador, o medidor de referência, a água, estoque e contadores, a torre, o que foi ajustado, e fechar. Cada anotação fica no servidor em um segundo; perder a conexão ou fechar a aba não perde nada. Antes de fechar, o formulário lista o que toda visita lê e falta nesta, os resultados que pedem uma ação ou um motivo e as chaves de que não se disse como ficaram; com um motivo fica em aberto e o supervisor vê. Uma visita que você começou em outro dia aparece com seus primeiros valores: você a continua, ou começa uma nova e mantém ou descarta a anterior.");

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
