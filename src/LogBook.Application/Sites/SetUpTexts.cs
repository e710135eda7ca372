using LogBook.Domain.Languages;

namespace LogBook.Application.Sites;

/// <summary>What is said about set-up that cannot be saved.</summary>
internal static class SetUpTexts
{
    public static readonly Text CustomerStays = new(
        "A site stays with its customer. Retire it and set up a new one.",
        "Un sitio se queda con su cliente. Retírelo y cree uno nuevo.",
        "Um local permanece com o seu cliente. Retire-o e crie um novo.");

    public static readonly Text CodeTaken = new(
        "The code {0} is taken.",
        "El código {0} ya está en uso.",
        "O código {0} já está em uso.");

    public static readonly Text NoSuchOwner = new(
        "Owner: {0} was found; expected is a person of the firm who is in use.",
        "Encargado: se encontró {0}; se espera una persona de la empresa en uso.",
        "Responsável: encontrado {0}; esperada uma pessoa da empresa em uso.");

    public static readonly Text ReasonNeeded = new("A reason is needed.", "Se necesita un motivo.", "É necessário um motivo.");
}
