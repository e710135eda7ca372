using LogBook.Application.Tokens;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Tokens;

/// <summary>Words of the page of access tokens.</summary>
public static class TokenTexts
{
    public static readonly Text Title = new("Access tokens", "Claves de acceso", "Chaves de acesso");

    public static readonly Text Intro = new(
        "A token lets another program read or hand in records in your name, through {0}. It may never do more than you, and stops with your account.",
        "Una clave permite a otro programa leer o entregar registros en su nombre, por {0}. Nunca puede más que usted y termina con su cuenta.",
        "Uma chave permite que outro programa leia ou entregue registros em seu nome, por {0}. Ela nunca pode mais que você e termina com sua conta.");

    public static readonly Text Name = new("What it is for", "Para qué es", "Para que serve");

    public static readonly Text May = new("It may", "Puede", "Ela pode");

    public static readonly Text Days = new("Days it lasts", "Días que dura", "Dias que dura");

    public static readonly Text Make = new("Make a token", "Crear una clave", "Criar uma chave");

    public static readonly Text ShownOnce = new(
        "Copy it now: it is shown this once.",
        "Cópiela ahora: se muestra esta única vez.",
        "Copie-a agora: ela é mostrada só desta vez.");

    public static readonly Text Refused = new(
        "A name, at least one thing it may do, and 1 to {0} days are needed.",
        "Hacen falta un nombre, al menos un permiso y de 1 a {0} días.",
        "São precisos um nome, pelo menos uma permissão e de 1 a {0} dias.");

    public static readonly Text None = new("No token yet", "Aún no hay claves", "Ainda não há chaves");

    public static readonly Text Until = new("Lasts until", "Dura hasta", "Dura até");

    public static readonly Text LastUsed = new("Last used", "Último uso", "Último uso");

    public static readonly Text Never = new("never", "nunca", "nunca");

    public static readonly Text Revoke = new("Revoke", "Revocar", "Revogar");

    public static readonly Text RevokeThis = new("Revoke {0}", "Revocar {0}", "Revogar {0}");

    public static readonly Text Revoked = new("revoked", "revocada", "revogada");

    public static readonly Text Tablets = new("Tablets of the firm", "Tabletas de la empresa", "Tablets da empresa");

    public static readonly Text TabletsIntro = new(
        "A tablet that is lost or goes to somebody else: revoke it here. It can then neither read nor send; what waits on it stays on it until its person registers again.",
        "Una tableta perdida o que pasa a otra persona: revóquela aquí. Ya no podrá leer ni enviar; lo que espera en ella sigue ahí hasta que su persona se registre de nuevo.",
        "Um tablet perdido ou que passa a outra pessoa: revogue-o aqui. Ele não poderá mais ler nem enviar; o que espera nele fica lá até que sua pessoa se registre de novo.");

    public static readonly Text Tablet = new("Tablet", "Tableta", "Tablet");

    public static readonly Text Forgot = new("Forgot the PIN", "Olvidó el PIN", "Esqueceu o PIN");

    public static readonly Text ForgotIntro = new(
        "Drafts on a tablet are sealed under its person's PIN, and once more under a key that the server keeps. Release it only when you have seen or heard that it is really this person who asks: whoever holds the tablet then may choose a new PIN and read those drafts, for one hour.",
        "Los borradores de una tableta van sellados con el PIN de su persona, y otra vez con una clave que guarda el servidor. Libérela solo si ha visto u oído que de verdad pide esa persona: quien tenga la tableta podrá elegir un PIN nuevo y leer esos borradores, durante una hora.",
        "Os rascunhos de um tablet são selados com o PIN da pessoa, e mais uma vez com uma chave que o servidor guarda. Libere-a só se viu ou ouviu que é mesmo essa pessoa que pede: quem estiver com o tablet poderá escolher um novo PIN e ler esses rascunhos, durante uma hora.");

    public static readonly Text ForgotBy = new("{0}, tablet “{1}”, asked {2} UTC", "{0}, tableta «{1}», pedido {2} UTC", "{0}, tablet “{1}”, pedido {2} UTC");
    public static readonly Text Release = new("Release for one hour", "Liberar durante una hora", "Liberar por uma hora");
    public static readonly Text ReleaseFor = new("Release for one hour: {0}, tablet “{1}”", "Liberar durante una hora: {0}, tableta «{1}»", "Liberar por uma hora: {0}, tablet “{1}”");
    public static readonly Text Released = new("Released for one hour: {0}, tablet “{1}”. The tablet asks for a new PIN by itself.", "Liberada durante una hora: {0}, tableta «{1}». La tableta pide un PIN nuevo por sí sola.", "Liberada por uma hora: {0}, tablet “{1}”. O tablet pede um novo PIN sozinho.");
    public static readonly Text NoTablets = new("No tablet is registered.", "No hay tabletas registradas.", "Nenhum tablet está registrado.");

    public static readonly Text Account = new("Account", "Cuenta", "Conta");

    public static readonly Text Registered = new("Registered", "Registrada", "Registrado");

    /// <summary>What a scope lets a program do.</summary>
    public static Text Scope(string scope) => scope switch
    {
        TokenScopes.Visits => new("hand in visits and photos", "entregar visitas y fotos", "entregar visitas e fotos"),
        TokenScopes.Tablet => new("as a tablet", "como tableta", "como tablet"),
        TokenScopes.Import => new("import documents (supervisors)", "importar documentos (supervisores)", "importar documentos (supervisores)"),
        _ => new("read round, visits, findings and exports", "leer ronda, visitas, hallazgos y exportaciones", "ler ronda, visitas, constatações e exportações"),
    };
}
