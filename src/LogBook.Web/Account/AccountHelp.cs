using LogBook.Web.Features.Help;

namespace LogBook.Web.Account;

/// <summary>Help of the account pages.</summary>
public sealed class AccountHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "account",
            AccountTexts.Account,
            [
                new(
                    "Sign in with your e-mail address and your password. After five wrong tries the account stays closed for ten minutes. An administrator of your firm sets a new password when it is forgotten.",
                    "Inicie sesión con su correo y su contraseña. Tras cinco intentos fallidos la cuenta queda cerrada diez minutos. Si olvidó la contraseña, un administrador de su empresa pone una nueva.",
                    "Entre com seu e-mail e sua senha. Após cinco tentativas erradas a conta fica fechada por dez minutos. Se a senha foi esquecida, um administrador da sua empresa define uma nova."),
                new(
                    "Under Your account you choose the language of all pages and change the password. A new password signs out every other device. Light or dark is chosen at your name, for each device.",
                    "En Su cuenta se elige el idioma de todas las páginas y se cambia la contraseña. Una contraseña nueva cierra la sesión en los demás dispositivos. El aspecto claro u oscuro se elige junto a su nombre, en cada dispositivo.",
                    "Em Sua conta escolhe-se o idioma de todas as páginas e muda-se a senha. Uma senha nova encerra a sessão nos outros dispositivos. A aparência clara ou escura é escolhida junto ao seu nome, em cada dispositivo."),
                new(
                    "Under Told without looking people of the firm choose e-mail for each finding that cannot wait, and one message each morning. The first leaves two minutes after the finding opened, unless it was answered or taken back by then; neither is sent twice.",
                    "En Avisos sin tener que mirar las personas de la empresa eligen un correo por cada hallazgo que no puede esperar y un mensaje cada mañana. El primero sale dos minutos después de aparecer el hallazgo, salvo que ya se haya respondido o retirado; ninguno se envía dos veces.",
                    "Em Avisos sem precisar olhar as pessoas da empresa escolhem um e-mail para cada constatação que não pode esperar e uma mensagem toda manhã. O primeiro sai dois minutos depois de a constatação surgir, salvo se já foi respondida ou retirada; nenhum é enviado duas vezes."),
                new(
                    "Signing out leaves visits that wait on this device to be sent where they are. Send them first if others use the device.",
                    "Al cerrar la sesión, las visitas que esperan en este dispositivo se quedan en él. Envíelas antes si otras personas usan el dispositivo.",
                    "Ao sair, as visitas que esperam neste dispositivo ficam nele. Envie-as antes se outras pessoas usam o dispositivo."),
            ],
            "/account",
            "/account/sign-in",
            "/account/sign-out",
            "/account/not-here",
            "/account/fault"),
    ];
}
