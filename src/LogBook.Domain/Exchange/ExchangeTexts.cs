using LogBook.Domain.Languages;

namespace LogBook.Domain.Exchange;

/// <summary>Wording of what is wrong with a document.</summary>
internal static class ExchangeTexts
{
    /// <summary>Field, value, expectation.</summary>
    public static readonly Text Expected = new(
        "{0}: {1} was found, expected is {2}",
        "{0}: se encontró {1}, se espera {2}",
        "{0}: encontrado {1}, esperado {2}");

    public static readonly Text Missing = new("{0} is missing, expected is {1}", "falta {0}, se espera {1}", "falta {0}, esperado {1}");

    public static readonly Text MissingFor = new(
        "{0} is missing, needed where {1} is {2}; expected is {3}",
        "falta {0}, necesario cuando {1} es {2}; se espera {3}",
        "falta {0}, necessário quando {1} é {2}; esperado {3}");

    public static readonly Text MissingBeside = new(
        "{0} is missing, needed beside {1}; expected is {2}",
        "falta {0}, necesario junto a {1}; se espera {2}",
        "falta {0}, necessário junto a {1}; esperado {2}");

    public static readonly Text MissingOneOf = new(
        "nothing was recorded, expected is one of {0}",
        "no se registró nada, se espera uno de {0}",
        "nada foi registrado, esperado um de {0}");

    public static readonly Text Excluded = new(
        "{0} cannot stand beside {1}, expected is one of both",
        "{0} no puede estar junto a {1}, se espera uno de los dos",
        "{0} não pode estar junto a {1}, esperado um dos dois");

    public static readonly Text Unknown = new(
        "{0} is not a field here, expected is one of {1}",
        "{0} no es un campo aquí, se espera uno de {1}",
        "{0} não é um campo aqui, esperado um de {1}");

    public static readonly Text Twice = new(
        "{0} stands twice in one object, expected is once",
        "{0} está dos veces en un objeto, se espera una vez",
        "{0} aparece duas vezes em um objeto, esperado uma vez");

    public static readonly Text NotJson = new(
        "line {0}, byte {1}: this is not JSON",
        "línea {0}, byte {1}: esto no es JSON",
        "linha {0}, byte {1}: isto não é JSON");

    public static readonly Text NotUtf8 = new("the file is not UTF-8", "el archivo no es UTF-8", "o arquivo não é UTF-8");

    public static readonly Text Newer = new(
        "minor: {0} was written by a newer LogBook, expected is at most {1}",
        "minor: {0} fue escrito por un LogBook más nuevo, se espera como máximo {1}",
        "minor: {0} foi escrito por um LogBook mais novo, esperado no máximo {1}");

    public static readonly Text AText = new("a text", "un texto", "um texto");
    public static readonly Text ANumber = new("a number", "un número", "um número");
    public static readonly Text NumberFrom = new("a number from {0}", "un número desde {0}", "um número a partir de {0}");
    public static readonly Text NumberAbove = new("a number above {0}", "un número mayor que {0}", "um número acima de {0}");
    public static readonly Text NumberFromTo = new("a number from {0} to {1}", "un número de {0} a {1}", "um número de {0} a {1}");
    public static readonly Text AWhole = new("a whole number", "un número entero", "um número inteiro");
    public static readonly Text WholeFrom = new("a whole number from {0}", "un número entero desde {0}", "um número inteiro a partir de {0}");
    public static readonly Text WholeFromTo = new("a whole number from {0} to {1}", "un número entero de {0} a {1}", "um número inteiro de {0} a {1}");
    public static readonly Text AFlag = new("true or false", "true o false", "true ou false");
    public static readonly Text ADate = new("a date YYYY-MM-DD", "una fecha YYYY-MM-DD", "uma data YYYY-MM-DD");
    public static readonly Text AMoment = new("a time with offset, as 2025-03-03T09:05:00+00:00", "una hora con desfase, como 2025-03-03T09:05:00+00:00", "uma hora com deslocamento, como 2025-03-03T09:05:00+00:00");
    public static readonly Text AClockTime = new("a time HH:MM", "una hora HH:MM", "uma hora HH:MM");
    public static readonly Text AMonthDay = new("a day MM-DD", "un día MM-DD", "um dia MM-DD");
    public static readonly Text AnIdentity = new("a Guid, as 01955b40-5e60-7c77-9a57-0a6f8a0d2a11", "un Guid, como 01955b40-5e60-7c77-9a57-0a6f8a0d2a11", "um Guid, como 01955b40-5e60-7c77-9a57-0a6f8a0d2a11");
    public static readonly Text AMail = new("a mail address", "una dirección de correo", "um endereço de e-mail");
    public static readonly Text AUnit = new("one of the units {0}", "una de las unidades {0}", "uma das unidades {0}");
    public static readonly Text OneOf = new("one of {0}", "uno de {0}", "um de {0}");
    public static readonly Text ASetting = new("a number or a text", "un número o un texto", "um número ou um texto");
    public static readonly Text AnObject = new("an object", "un objeto", "um objeto");
    public static readonly Text AList = new("a list", "una lista", "uma lista");
    public static readonly Text ListOf = new("a list with {0} entries", "una lista con {0} entradas", "uma lista com {0} entradas");
    public static readonly Text ListUpTo = new("a list with at most {0} entries", "una lista con {0} entradas como máximo", "uma lista com no máximo {0} entradas");
    public static readonly Text NonEmptyList = new("a list with at least one entry", "una lista con al menos una entrada", "uma lista com pelo menos uma entrada");
}
