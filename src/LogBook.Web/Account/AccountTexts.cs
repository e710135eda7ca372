using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Web.Account;

/// <summary>Words of the account pages.</summary>
public static class AccountTexts
{
    public static readonly Text SignIn = new("Sign in", "Iniciar sesión", "Entrar");

    public static readonly Text Notices = new("Told without looking", "Avisos sin tener que mirar", "Avisos sem precisar olhar");

    public static readonly Text NoticesMean = new(
        "LogBook can write to {0}. Nothing is sent that you do not choose here.",
        "LogBook puede escribir a {0}. No se envía nada que no elija aquí.",
        "O LogBook pode escrever para {0}. Nada é enviado sem que você escolha aqui.");

    public static readonly Text NoticeAtOnce = new(
        "At once, when a finding opens that cannot wait",
        "De inmediato, cuando aparece un hallazgo que no puede esperar",
        "Imediatamente, quando surge uma constatação que não pode esperar");

    public static readonly Text NoticeDigest = new(
        "Each morning after six: what is new, open and due; nothing when there is nothing",
        "Cada mañana después de las seis: lo nuevo, lo abierto y lo que toca; nada si no hay nada",
        "Toda manhã depois das seis: o que é novo, está aberto e vence; nada se não houver nada");

    public static readonly Text NoticeOwnSites = new("Only for the sites of my own round", "Solo de los sitios de mi propia ruta", "Só dos locais da minha própria rota");

    public static readonly Text SaveNotices = new("Save the choice", "Guardar la elección", "Guardar a escolha");

    public static readonly Text NoticesChosen = new("What you are told has been set.", "Se ha fijado de qué se le avisa.", "Os avisos foram definidos.");

    public static readonly Text Email = new("E-mail address", "Correo electrónico", "E-mail");

    public static readonly Text Password = new("Password", "Contraseña", "Senha");

    public static readonly Text Remember = new("Stay signed in on this device", "Mantener la sesión en este dispositivo", "Continuar conectado neste dispositivo");

    public static readonly Text WrongSignIn = new(
        "E-mail address or password is not right, or the account is closed for now. After five wrong tries it stays closed for ten minutes.",
        "El correo o la contraseña no son correctos, o la cuenta está cerrada por ahora. Tras cinco intentos fallidos queda cerrada diez minutos.",
        "O e-mail ou a senha não estão certos, ou a conta está fechada por enquanto. Após cinco tentativas erradas ela fica fechada por dez minutos.");

    public static readonly Text TooManyTries = new(
        "Too many tries from this address. Wait a minute.",
        "Demasiados intentos desde esta dirección. Espere un minuto.",
        "Tentativas demais deste endereço. Espere um minuto.");

    public static readonly Text ForgotPassword = new(
        "Password forgotten? An administrator of your firm sets a new one.",
        "¿Olvidó la contraseña? Un administrador de su empresa pone una nueva.",
        "Esqueceu a senha? Um administrador da sua empresa define uma nova.");

    public static readonly Text DemoAccounts = new("Accounts of the demo", "Cuentas de la demostración", "Contas da demonstração");

    public static readonly Text Account = new("Your account", "Su cuenta", "Sua conta");

    public static readonly Text SignedInAs = new("Signed in as {0}, {1}.", "Sesión de {0}, {1}.", "Conectado como {0}, {1}.");

    public static readonly Text Language = new("Language", "Idioma", "Idioma");

    public static readonly Text SaveLanguage = new("Use this language", "Usar este idioma", "Usar este idioma");

    public static readonly Text ChangePassword = new("Change the password", "Cambiar la contraseña", "Mudar a senha");

    public static readonly Text OldPassword = new("Password until now", "Contraseña actual", "Senha atual");

    public static readonly Text NewPassword = new("New password", "Contraseña nueva", "Nova senha");

    public static readonly Text NewPasswordAgain = new("New password once more", "Contraseña nueva otra vez", "Nova senha outra vez");

    public static readonly Text PasswordHint = new(
        "At least 12 characters. A few unrelated words are good; nothing else is asked of it.",
        "Al menos 12 caracteres. Unas palabras sin relación sirven bien; no se exige más.",
        "Pelo menos 12 caracteres. Algumas palavras sem relação servem bem; nada mais é exigido.");

    public static readonly Text PasswordShort = new("The password needs at least 12 characters.", "La contraseña necesita al menos 12 caracteres.", "A senha precisa de pelo menos 12 caracteres.");

    public static readonly Text PasswordLong = new("The password may have 200 characters at most.", "La contraseña puede tener 200 caracteres como máximo.", "A senha pode ter no máximo 200 caracteres.");

    public static readonly Text PasswordCommon = new(
        "This password is one that many people would try first. Take another.",
        "Esta contraseña es de las que muchos probarían primero. Elija otra.",
        "Esta senha é das que muita gente tentaria primeiro. Escolha outra.");

    public static readonly Text PasswordsDiffer = new("The two new passwords differ.", "Las dos contraseñas nuevas no coinciden.", "As duas senhas novas não são iguais.");

    public static readonly Text PasswordWrong = new("The password until now is not right.", "La contraseña actual no es correcta.", "A senha atual não está certa.");

    public static readonly Text PasswordChanged = new(
        "The password is changed. Other devices must sign in again.",
        "La contraseña se cambió. Los demás dispositivos deben iniciar sesión de nuevo.",
        "A senha foi mudada. Os outros dispositivos devem entrar de novo.");

    public static readonly Text LanguageChanged = new("The language is changed.", "El idioma se cambió.", "O idioma foi mudado.");

    public static readonly Text NotAccepted = new("This was not accepted: {0}", "No se aceptó: {0}", "Não foi aceito: {0}");

    public static readonly Text Needed = new("{0}: needed.", "{0}: falta.", "{0}: falta.");

    public static readonly Text SignedOut = new("You are signed out.", "La sesión está cerrada.", "Você saiu.");

    public static readonly Text SignOutNote = new(
        "Visits that wait on this device to be sent stay on it.",
        "Las visitas que esperan en este dispositivo para enviarse se quedan en él.",
        "As visitas que esperam neste dispositivo para serem enviadas ficam nele.");

    /// <summary>Name of a role.</summary>
    public static Text Role(PersonRole role) => role switch
    {
        PersonRole.Technician => new("technician", "técnico", "técnico"),
        PersonRole.Supervisor => new("supervisor", "supervisor", "supervisor"),
        PersonRole.Administrator => new("administrator", "administrador", "administrador"),
        PersonRole.SiteStaff => new("site staff", "personal del sitio", "pessoal do local"),
        _ => new("customer", "cliente", "cliente"),
    };
}
