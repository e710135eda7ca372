using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp.People;

/// <summary>Words of the pages for accounts.</summary>
public static class PeopleTexts
{
    public static readonly Text Title = new("People and accounts", "Personas y cuentas", "Pessoas e contas");
    public static readonly Text Intro = new(
        "Who may sign in. People who visit plants also stand in the set-up, since visits are signed with their code.",
        "Quién puede entrar. Quienes visitan plantas constan además en la configuración, pues las visitas se firman con su código.",
        "Quem pode entrar. Quem visita instalações consta também na configuração, pois as visitas são assinadas com o seu código.");
    public static readonly Text AllPeople = new("People of the set-up", "Personas de la configuración", "Pessoas da configuração");
    public static readonly Text NewAccount = new("New account", "Cuenta nueva", "Nova conta");
    public static readonly Text Account = new("Account", "Cuenta", "Conta");
    public static readonly Text AccountMore = new("With an account a person can sign in.", "Con una cuenta la persona puede entrar.", "Com uma conta a pessoa pode entrar.");
    public static readonly Text Without = new("No account yet", "Sin cuenta todavía", "Sem conta ainda");
    public static readonly Text Email = new("E-mail address", "Correo electrónico", "E-mail");
    public static readonly Text Role = new("May work as", "Puede actuar como", "Pode atuar como");
    public static readonly Text Person = new("Person", "Persona", "Pessoa");
    public static readonly Text OfCustomer = new("Sees the records of", "Ve los registros de", "Vê os registros de");
    public static readonly Text Language = new("Language", "Idioma", "Idioma");
    public static readonly Text State = new("State", "Estado", "Estado");
    public static readonly Text Open = new("may sign in", "puede entrar", "pode entrar");
    public static readonly Text Invited = new("no password yet", "sin contraseña todavía", "sem senha ainda");
    public static readonly Text Disabled = new("shut out since {0}", "cerrada desde {0}", "fechada desde {0}");
    public static readonly Text Save = new("Save the account", "Guardar la cuenta", "Salvar a conta");
    public static readonly Text Make = new("Make the account", "Crear la cuenta", "Criar a conta");
    public static readonly Text Saved = new("The account is saved.", "La cuenta se guardó.", "A conta foi salva.");
    public static readonly Text Invite = new("Make a one-time link", "Crear un enlace de un solo uso", "Criar um link de uso único");
    public static readonly Text InviteMore = new(
        "With this link the person sets a password. It works once, within a day, and replaces an earlier one. Hand it over on a way that reaches this person alone; it is shown only now.",
        "Con este enlace la persona pone una contraseña. Sirve una vez, durante un día, y reemplaza a uno anterior. Entréguelo por una vía que llegue solo a esa persona; se muestra solo ahora.",
        "Com este link a pessoa define uma senha. Vale uma vez, durante um dia, e substitui um anterior. Entregue-o por um meio que chegue só a essa pessoa; é mostrado só agora.");
    public static readonly Text Link = new("One-time link", "Enlace de un solo uso", "Link de uso único");
    public static readonly Text Password = new("First password", "Primera contraseña", "Primeira senha");
    public static readonly Text SetPassword = new("Set this password", "Poner esta contraseña", "Definir esta senha");
    public static readonly Text PasswordSet = new("The password is set. Open pages of the account must sign in again.", "La contraseña se puso. Las páginas abiertas de la cuenta deben entrar de nuevo.", "A senha foi definida. As páginas abertas da conta devem entrar de novo.");
    public static readonly Text Disable = new("Shut the account out", "Cerrar la cuenta", "Fechar a conta");
    public static readonly Text DisableSure = new("Shut out: open pages of this account end within a minute. Visits on its tablet stay there.", "Cerrar: las páginas abiertas de esta cuenta terminan en un minuto. Las visitas de su tableta quedan en ella.", "Fechar: as páginas abertas desta conta terminam em um minuto. As visitas no tablet ficam nele.");
    public static readonly Text Enable = new("Let the account in again", "Volver a abrir la cuenta", "Reabrir a conta");
    public static readonly Text DisabledNow = new("The account is shut out.", "La cuenta está cerrada.", "A conta está fechada.");
    public static readonly Text EnabledNow = new("The account may sign in again.", "La cuenta puede entrar de nuevo.", "A conta pode entrar de novo.");
    public static readonly Text NoAccount = new("There is no such account any more.", "Esa cuenta ya no existe.", "Essa conta não existe mais.");
    public static readonly Text EmailNeeded = new("E-mail address: “{0}” was found, expected is an address with @.", "Correo electrónico: se encontró «{0}», se espera una dirección con @.", "E-mail: encontrado “{0}”, esperado um endereço com @.");
    public static readonly Text EmailTaken = new("E-mail address: {0} has an account already.", "Correo electrónico: {0} ya tiene una cuenta.", "E-mail: {0} já tem uma conta.");
    public static readonly Text RoleNeeded = new("May work as: missing.", "Puede actuar como: falta.", "Pode atuar como: falta.");
    public static readonly Text CustomerNeeded = new("Sees the records of: missing; an account of a customer or site staff belongs to one customer.", "Ve los registros de: falta; una cuenta de cliente o de personal del sitio pertenece a un cliente.", "Vê os registros de: falta; uma conta de cliente ou de pessoal do local pertence a um cliente.");
    public static readonly Text LastAdministrator = new("This is the last administrator; make another one first.", "Es el último administrador; cree antes otro.", "É o último administrador; crie outro antes.");
    public static readonly Text NotYourself = new("You cannot shut yourself out.", "No puede cerrar su propia cuenta.", "Você não pode fechar a própria conta.");
    public static readonly Text LinkOver = new("This link was used, is over or is not whole. Ask your administrator for a new one.", "Este enlace ya se usó, venció o no está completo. Pida otro a su administrador.", "Este link já foi usado, venceu ou não está completo. Peça outro ao seu administrador.");
    public static readonly Text Welcome = new("Set your password", "Ponga su contraseña", "Defina sua senha");
    public static readonly Text WelcomeDone = new("The password is set. Sign in with it.", "La contraseña se puso. Entre con ella.", "A senha foi definida. Entre com ela.");
}
