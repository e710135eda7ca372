using LogBook.Domain.Languages;

namespace LogBook.Domain.Phrases;

/// <summary>What is said about quick phrases that cannot be used.</summary>
internal static class PhraseTexts
{
    public static readonly Text Missing = new("Missing.", "Falta.", "Falta.");

    public static readonly Text TooLong = new(
        "{0} characters were found, expected is a phrase of at most {1}",
        "Se encontraron {0} caracteres, se espera una frase de {1} como máximo",
        "Encontrados {0} caracteres, esperado no máximo uma frase de {1}");

    public static readonly Text TooMany = new(
        "{0} phrases were found, expected is at most {1} for one place",
        "Se encontraron {0} frases, se espera un máximo de {1} por lugar",
        "Encontradas {0} frases, esperado no máximo {1} por lugar");

    public static readonly Text Semicolon = new(
        "“{0}” was found, expected is one phrase without a semicolon",
        "Se encontró «{0}», se espera una frase sin punto y coma",
        "Encontrado “{0}”, esperado uma frase sem ponto e vírgula");

    public static readonly Text Twice = new(
        "“{0}” was found twice, expected is each phrase once",
        "Se encontró «{0}» dos veces, se espera cada frase una vez",
        "Encontrado “{0}” duas vezes, esperado cada frase uma vez");
}
