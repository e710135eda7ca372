using LogBook.Domain.Languages;

namespace LogBook.Web.Features.FirstRun;

/// <summary>Words of the first-run page.</summary>
public static class FirstRunTexts
{
    public static readonly Text Title = new("First run", "Primer inicio", "Primeiro início");

    public static readonly Text Intro = new(
        "This installation has no firm yet. Name it, and its first administrator, who then adds people, customers and sites.",
        "Esta instalación aún no tiene empresa. Póngale nombre, y nombre a su primer administrador, quien después añade personas, clientes y sitios.",
        "Esta instalação ainda não tem empresa. Dê o nome dela e o do primeiro administrador, que depois acrescenta pessoas, clientes e locais.");

    public static readonly Text Code = new("Code from the console", "Código de la consola", "Código do console");

    public static readonly Text CodeHint = new(
        "The program printed it when it was started. It works once.",
        "El programa lo escribió al iniciarse. Sirve una vez.",
        "O programa o escreveu ao ser iniciado. Serve uma vez.");

    public static readonly Text CodeWrong = new("This is not the code of this start.", "Este no es el código de este inicio.", "Este não é o código deste início.");

    public static readonly Text Firm = new("Name of the firm", "Nombre de la empresa", "Nome da empresa");

    public static readonly Text Create = new("Create the firm", "Crear la empresa", "Criar a empresa");

    public static readonly Text Done = new(
        "This installation has its firm already.",
        "Esta instalación ya tiene su empresa.",
        "Esta instalação já tem sua empresa.");
}
