using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Tokens;

/// <summary>Help of the page of access tokens.</summary>
public sealed class TokensHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "tokens",
            TokenTexts.Title,
            [
                new(
                    "A token lets another program read or hand in records in your name. It may never do more than you, and stops with your account.",
                    "Una clave permite a otro programa leer o entregar registros en su nombre. Nunca puede más que usted y termina con su cuenta.",
                    "Uma chave permite que outro programa leia ou entregue registros em seu nome. Ela nunca pode mais que você e termina com sua conta."),
                new(
                    "The program sends it as Authorization: Bearer, followed by the token. What there is to call stands in /api/v1/openapi.json. The token itself is shown once and kept nowhere in readable form: revoke one that may have been seen by others.",
                    "El programa la envía como Authorization: Bearer, seguido de la clave. Lo que se puede llamar está en /api/v1/openapi.json. La clave se muestra una vez y no se guarda en forma legible: revoque la que otros hayan podido ver.",
                    "O programa a envia como Authorization: Bearer, seguido da chave. O que se pode chamar está em /api/v1/openapi.json. A chave é mostrada uma vez e não é guardada de forma legível: revogue a que outros possam ter visto."),
                TokenTexts.ForgotIntro,
            ],
            "/tokens"),
    ];
}
