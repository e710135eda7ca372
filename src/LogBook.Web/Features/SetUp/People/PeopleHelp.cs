using LogBook.Domain.Languages;
using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.SetUp.People;

/// <summary>Help of the pages for accounts.</summary>
public sealed class PeopleHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "people",
            PeopleTexts.Title,
            [
                PeopleTexts.Intro,
                new(
                    "A technician enters visits; a supervisor also reviews them and keeps the set-up; an administrator also keeps accounts. An account of a customer or of site staff sees the records of one customer and nothing else.",
                    "Un técnico anota visitas; un supervisor además las revisa y cuida la configuración; un administrador además cuida las cuentas. Una cuenta de cliente o de personal del sitio ve los registros de un cliente y nada más.",
                    "Um técnico anota visitas; um supervisor também as revisa e cuida da configuração; um administrador também cuida das contas. Uma conta de cliente ou de pessoal do local vê os registros de um cliente e nada mais."),
                PeopleTexts.InviteMore,
            ],
            "/people",
            "/people/account"),
        new("invited", PeopleTexts.Welcome, [InvitedHow], "/account/invited"),
    ];

    private static Text InvitedHow => new(
        "The link from your administrator lets you set a password once. Afterwards sign in with your e-mail address and that password.",
        "El enlace de su administrador le deja poner una contraseña una vez. Después entre con su correo y esa contraseña.",
        "O link do seu administrador permite definir uma senha uma vez. Depois entre com seu e-mail e essa senha.");
}
