using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>What is said about fields of set-up forms.</summary>
public static class FormTexts
{
    public static readonly Text NotANumber = new(
        "{0}: “{1}” is not a number; expected are digits, as {2}.",
        "{0}: «{1}» no es un número; se esperan cifras, como {2}.",
        "{0}: “{1}” não é um número; esperados algarismos, como {2}.");

    public static readonly Text NotWhole = new(
        "{0}: “{1}” is not a whole number; expected are digits alone, as 14.",
        "{0}: «{1}» no es un número entero; se esperan solo cifras, como 14.",
        "{0}: “{1}” não é um número inteiro; esperados só algarismos, como 14.");

    public static readonly Text NotNumbers = new(
        "{0}: “{1}” is not a number; expected are numbers with semicolons between, as 1; 3.",
        "{0}: «{1}» no es un número; se esperan números separados por punto y coma, como 1; 3.",
        "{0}: “{1}” não é um número; esperados números separados por ponto e vírgula, como 1; 3.");

    public static readonly Text TooManyDigits = new(
        "{0}: “{1}” has too many digits; expected are at most 15.",
        "{0}: «{1}» tiene demasiadas cifras; se esperan 15 como máximo.",
        "{0}: “{1}” tem algarismos demais; esperados no máximo 15.");

    public static readonly Text NoQualifier = new(
        "{0}: “{1}” has a sign before the number; expected is the number alone.",
        "{0}: «{1}» lleva un signo delante; se espera solo el número.",
        "{0}: “{1}” tem um sinal antes do número; esperado só o número.");

    public static readonly Text WhichNumber = new(
        "{0}: “{1}” can be read in two ways; say which number is meant.",
        "{0}: «{1}» se puede leer de dos maneras; diga cuál es.",
        "{0}: “{1}” pode ser lido de dois modos; diga qual é.");

    public static readonly Text Missing = new("{0}: missing.", "{0}: falta.", "{0}: falta.");

    public static readonly Text Found = new("{0}: “{1}” was found, expected is {2}.", "{0}: se encontró «{1}», se espera {2}.", "{0}: encontrado “{1}”, esperado {2}.");

    public static readonly Text At = new("{0} ({1}): {2}", "{0} ({1}): {2}", "{0} ({1}): {2}");

    public static readonly Text Needed = new("needed", "necesario", "necessário");

    public static readonly Text NotUsed = new("Not used with what is chosen above; it is kept until it is cleared.", "No se usa con lo elegido arriba; se conserva hasta que se borre.", "Não é usado com o que foi escolhido acima; fica até ser apagado.");

    public static readonly Text NotSaid = new("– not said –", "– sin indicar –", "– não informado –");

    public static readonly Text Yes = new("Yes", "Sí", "Sim");

    public static readonly Text No = new("No", "No", "Não");

    public static readonly Text UnitOf = new("Unit of {0}", "Unidad de {0}", "Unidade de {0}");

    public static readonly Text Add = new("Add: {0}", "Añadir: {0}", "Adicionar: {0}");

    public static readonly Text Remove = new("Remove {0} {1}", "Quitar {0} {1}", "Remover {0} {1}");

    public static readonly Text None = new("none", "ninguno", "nenhum");

    public static readonly Text ApartByCommas = new("Several with commas between.", "Varios separados por comas.", "Vários separados por vírgulas.");

    public static readonly Text CodeHint = new(
        "Short, as it is said on the telephone. It cannot be changed after it was saved.",
        "Corto, como se dice por teléfono. No se puede cambiar una vez guardado.",
        "Curto, como se diz ao telefone. Não pode ser mudado depois de salvo.");

    public static readonly Text CodeFixed = new("Stays as it was saved.", "Queda como se guardó.", "Fica como foi salvo.");
}
