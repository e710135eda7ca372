using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Rescue;

/// <summary>Words of the page that takes a tablet's rescue file in.</summary>
public static class RescueTexts
{
    public static readonly Text Title = new("Rescue file of a tablet", "Archivo de rescate de una tableta", "Arquivo de resgate de um tablet");
    public static readonly Text Intro = new(
        "A tablet that cannot send any more writes what it holds into a rescue file (at the end of its first page). Choose the file: you first see what is in it, then take it in. Visits come in as if the tablet had sent them, each once; drafts become drafts of yours, in the name of who entered them.",
        "Una tableta que ya no puede enviar escribe lo que guarda en un archivo de rescate (al final de su primera página). Elija el archivo: primero ve lo que contiene, luego lo recibe. Las visitas entran como si las hubiera enviado la tableta, cada una una vez; los borradores pasan a ser suyos, a nombre de quien los anotó.",
        "Um tablet que não consegue mais enviar escreve o que guarda em um arquivo de resgate (no fim da sua primeira página). Escolha o arquivo: primeiro você vê o que há nele, depois o recebe. As visitas entram como se o tablet as tivesse enviado, cada uma uma vez; os rascunhos passam a ser seus, em nome de quem os anotou.");

    public static readonly Text File = new("Rescue file (.json)", "Archivo de rescate (.json)", "Arquivo de resgate (.json)");
    public static readonly Text Reading = new("The file is being read …", "Se está leyendo el archivo …", "O arquivo está sendo lido …");
    public static readonly Text Taking = new("It is being taken in …", "Se está recibiendo …", "Está sendo recebido …");
    public static readonly Text WrittenBy = new("Tablet “{0}”, written {1} UTC", "Tableta «{0}», escrito {1} UTC", "Tablet “{0}”, escrito {1} UTC");
    public static readonly Text Unknown = new("unknown", "desconocido", "desconhecido");
    public static readonly Text AtTheTablet = new("At the tablet: {0}", "En la tableta: {0}", "No tablet: {0}");
    public static readonly Text WithoutPin = new(
        "Written without a PIN: it holds sealed drafts only. Not in it, but still on the tablet: closed visits {0}, photos {1}. Whoever opens the tablet with a PIN, also a supervisor who registers there, writes them too.",
        "Escrito sin PIN: solo contiene borradores sellados. No van en él y siguen en la tableta: visitas cerradas {0}, fotos {1}. Quien abra la tableta con un PIN, también un supervisor que se registre en ella, las escribe también.",
        "Escrito sem PIN: contém só rascunhos selados. Não vão nele e ficam no tablet: visitas fechadas {0}, fotos {1}. Quem abrir o tablet com um PIN, também um supervisor que se registre nele, as escreve também.");

    public static readonly Text PartOf = new(
        "This is file {0} of {1}, which belong together. Not taken in yet: {2}",
        "Este es el archivo {0} de {1}, que van juntos. Faltan por recibir: {2}",
        "Este é o arquivo {0} de {1}, que vão juntos. Ainda não recebidos: {2}");

    public static readonly Text AllParts = new("All {0} files that belong together are taken in.", "Los {0} archivos que van juntos están recibidos.", "Os {0} arquivos que vão juntos estão recebidos.");
    public static readonly Text Unreadable = new("The tablet itself could not read what it holds of: {0}", "La propia tableta no pudo leer lo que guarda de: {0}", "O próprio tablet não conseguiu ler o que guarda de: {0}");
    public static readonly Text Holds = new("Visits: {0}, drafts: {1}, photos: {2}", "Visitas: {0}, borradores: {1}, fotos: {2}", "Visitas: {0}, rascunhos: {1}, fotos: {2}");
    public static readonly Text Visits = new("Closed visits", "Visitas cerradas", "Visitas fechadas");
    public static readonly Text Drafts = new("Drafts", "Borradores", "Rascunhos");
    public static readonly Text VisitLine = new("{0} {1}: closed {2} UTC by {3}; photos: {4}", "{0} {1}: cerrada {2} UTC por {3}; fotos: {4}", "{0} {1}: fechada {2} UTC por {3}; fotos: {4}");
    public static readonly Text DraftLine = new("{0} {1}: entered by {2}, last kept {3} UTC; photos: {4}", "{0} {1}: anotado por {2}, guardado por última vez {3} UTC; fotos: {4}", "{0} {1}: anotado por {2}, guardado pela última vez {3} UTC; fotos: {4}");
    public static readonly Text Take = new("Take in visits and open drafts", "Recibir visitas y borradores abiertos", "Receber visitas e rascunhos abertos");
    public static readonly Text Nothing = new("There is nothing in this file.", "No hay nada en este archivo.", "Não há nada neste arquivo.");
    public static readonly Text Done = new("Done. What became of each stands beside it; the file can be taken in again at any time, nothing comes in twice.", "Listo. Al lado de cada uno está lo que resultó; el archivo se puede recibir otra vez, nada entra dos veces.", "Pronto. Ao lado de cada um está o que resultou; o arquivo pode ser recebido de novo, nada entra duas vezes.");
    public static readonly Text Failed = new("It was interrupted. What is marked came in; take the file in again for the rest.", "Se interrumpió. Lo marcado entró; reciba el archivo otra vez para lo demás.", "Foi interrompido. O que está marcado entrou; receba o arquivo de novo para o resto.");

    public static readonly Text Sealed = new(
        "Sealed: its person's PIN was not given. The server keeps a second key, of the account {0}. Open it only for a reason that can be told to that person.",
        "Sellado: no se dio el PIN de su persona. El servidor guarda una segunda clave, de la cuenta {0}. Ábralo solo por un motivo que se le pueda decir a esa persona.",
        "Selado: o PIN da pessoa não foi dado. O servidor guarda uma segunda chave, da conta {0}. Abra-o só por um motivo que se possa dizer a essa pessoa.");

    public static readonly Text SealedForGood = new(
        "Sealed, and this server keeps no key for it: only its person can open it, by the PIN on the tablet.",
        "Sellado, y este servidor no guarda clave para él: solo puede abrirlo su persona, con el PIN en la tableta.",
        "Selado, e este servidor não guarda chave para ele: só a própria pessoa pode abri-lo, com o PIN no tablet.");

    public static readonly Text Reason = new("Reason (stands in the audit trail)", "Motivo (queda en la auditoría)", "Motivo (fica na auditoria)");
    public static readonly Text ReasonNeeded = new("A reason is needed.", "Hace falta un motivo.", "É preciso um motivo.");
    public static readonly Text OpenSealed = new("Open and take in", "Abrir y recibir", "Abrir e receber");
    public static readonly Text OpenSealedOf = new("Open and take in: {0}, {1}", "Abrir y recibir: {0}, {1}", "Abrir e receber: {0}, {1}");

    public static readonly Text VisitTaken = new("On the server", "En el servidor", "No servidor");
    public static readonly Text VisitBefore = new("Was on the server already", "Ya estaba en el servidor", "Já estava no servidor");
    public static readonly Text VisitConflict = new("Stands on the server with another content: this one is kept beside it, settle it", "Está en el servidor con otro contenido: este se guarda al lado, decida", "Está no servidor com outro conteúdo: este fica ao lado, decida");
    public static readonly Text VisitRefused = new("Refused; to be corrected:", "Rechazada; hay que corregir:", "Recusada; a corrigir:");
    public static readonly Text NoSite = new("The server knows no such site or system", "El servidor no conoce ese sitio o sistema", "O servidor não conhece esse local ou sistema");
    public static readonly Text NotAllowed = new("Only supervisors and administrators take rescue files in", "Solo supervisores y administradores reciben archivos de rescate", "Só supervisores e administradores recebem arquivos de resgate");
    public static readonly Text Receipt = new("Receipt: SHA-256 {0}", "Recibo: SHA-256 {0}", "Recibo: SHA-256 {0}");
    public static readonly Text PhotosLeft = new("Photos not taken: {0}. The site allows none, or they are not those that were noted", "Fotos no aceptadas: {0}. El sitio no las permite o no son las anotadas", "Fotos não aceitas: {0}. O local não as permite ou não são as anotadas");
    public static readonly Text DraftTaken = new("Taken in as your draft", "Recibido como borrador suyo", "Recebido como rascunho seu");
    public static readonly Text DraftBefore = new("Was taken in before; that draft stays as it is", "Ya se había recibido; ese borrador queda como está", "Já tinha sido recebido; esse rascunho fica como está");
    public static readonly Text DraftNotNeeded = new("Its visit is on the server: the draft is not needed", "Su visita está en el servidor: el borrador no hace falta", "A visita está no servidor: o rascunho não é preciso");
    public static readonly Text OwnDraft = new("You have a draft of this visit yourself: finish it or throw it away, then take this one in", "Usted tiene un borrador de esta visita: termínelo o descártelo y reciba este después", "Você tem um rascunho desta visita: termine-o ou descarte-o e receba este depois");
    public static readonly Text NothingToAmend = new("It amends a visit that is not on the server yet: take that one in first", "Corrige una visita que aún no está en el servidor: reciba esa primero", "Corrige uma visita que ainda não está no servidor: receba essa primeiro");
    public static readonly Text StillSealed = new("Sealed", "Sellado", "Selado");
    public static readonly Text NoKey = new("The key that the server keeps does not open this draft", "La clave que guarda el servidor no abre este borrador", "A chave que o servidor guarda não abre este rascunho");
    public static readonly Text DraftUnreadable = new("This draft cannot be read by this server", "Este servidor no puede leer este borrador", "Este servidor não consegue ler este rascunho");
    public static readonly Text See = new("Open", "Abrir", "Abrir");
    public static readonly Text SeeOf = new("Open {0}, entered by {1}", "Abrir {0}, anotado por {1}", "Abrir {0}, anotado por {1}");

    public static readonly Text Pending = new("Taken in, not finished", "Recibidos, sin terminar", "Recebidos, não terminados");
    public static readonly Text PendingNone = new("No draft out of a rescue file waits to be finished.", "Ningún borrador de un archivo de rescate espera ser terminado.", "Nenhum rascunho de um arquivo de resgate espera ser terminado.");
    public static readonly Text PendingLine = new("{0} {1}: entered by {2}, tablet “{3}”; taken in {4} UTC, draft of {5}", "{0} {1}: anotado por {2}, tableta «{3}»; recibido {4} UTC, borrador de {5}", "{0} {1}: anotado por {2}, tablet “{3}”; recebido {4} UTC, rascunho de {5}");
    public static readonly Text Discard = new("Throw away …", "Descartar …", "Descartar …");
    public static readonly Text DiscardOf = new("Throw away {0}, entered by {1} …", "Descartar {0}, anotado por {1} …", "Descartar {0}, anotado por {1} …");
    public static readonly Text DiscardAsk = new("Throw this draft away? No visit comes of it. Its text stays in the audit trail; its photos are deleted.", "¿Descartar este borrador? No resultará ninguna visita. Su texto queda en la auditoría; sus fotos se borran.", "Descartar este rascunho? Nenhuma visita resultará dele. O texto fica na auditoria; as fotos são apagadas.");
    public static readonly Text DiscardYes = new("Throw it away", "Descartarlo", "Descartá-lo");
    public static readonly Text Keep = new("Keep it", "Conservarlo", "Mantê-lo");
    public static readonly Text Discarded = new("Thrown away.", "Descartado.", "Descartado.");
    public static readonly Text NotDiscarded = new("It was not thrown away: it is finished or gone.", "No se descartó: está terminado o ya no está.", "Não foi descartado: está terminado ou não existe mais.");
    public static readonly Text EnteredBy = new("This draft was entered on tablet “{1}” by {0} and taken in by {2}. The visit will stand in the name of {0}.", "Este borrador lo anotó {0} en la tableta «{1}» y lo recibió {2}. La visita quedará a nombre de {0}.", "Este rascunho foi anotado por {0} no tablet “{1}” e recebido por {2}. A visita ficará em nome de {0}.");

    public static readonly Text HelpFile = new(
        "The file is read whole or not at all: one that is cut off, changed or of another kind is named as such, and nothing is taken in. Visits show the receipt (the hash of the stored text), what is to be corrected, or that another text stands under the same identity.",
        "El archivo se lee entero o nada: si está cortado, cambiado o es de otra clase se dice, y no se recibe nada. Las visitas muestran el recibo (el hash del texto guardado), lo que hay que corregir, o que bajo la misma identidad hay otro texto.",
        "O arquivo é lido inteiro ou nada: se está cortado, mudado ou é de outro tipo isso é dito, e nada é recebido. As visitas mostram o recibo (o hash do texto guardado), o que corrigir, ou que há outro texto sob a mesma identidade.");

    public static readonly Text HelpSealed = new(
        "Drafts of people who did not give their PIN, also of somebody who has left, are sealed. The server keeps a second key for each person and tablet; with a reason, a supervisor opens the draft here. Account, tablet, supervisor and reason stand in the audit trail. A tablet that never had signal after its person registered has no such key.",
        "Los borradores de quienes no dieron su PIN, también de alguien que se fue, están sellados. El servidor guarda una segunda clave por persona y tableta; con un motivo, un supervisor abre aquí el borrador. Cuenta, tableta, supervisor y motivo quedan en la auditoría. Una tableta que nunca tuvo señal después del registro no tiene esa clave.",
        "Rascunhos de quem não deu o PIN, também de alguém que saiu, estão selados. O servidor guarda uma segunda chave por pessoa e tablet; com um motivo, um supervisor abre aqui o rascunho. Conta, tablet, supervisor e motivo ficam na auditoria. Um tablet que nunca teve sinal depois do registro não tem essa chave.");
}
