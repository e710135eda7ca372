using System.Globalization;
using LogBook.Domain.Languages;

namespace LogBook.Application.Mail;

/// <summary>
/// What the queue itself notes on a message. It is kept as a code and worded for whoever reads it, because the reader's
/// language is not known when it is written; words of a mail server are kept as they came.
/// </summary>
public static class MailNotes
{
    public static readonly Text Replaced = new("replaced by version {0}", "sustituido por la versión {0}", "substituído pela versão {0}");
    public static readonly Text NoAddress = new("'{0}' is not one mail address", "'{0}' no es una dirección de correo", "'{0}' não é um endereço de correio");
    public static readonly Text NoVisit = new("the visit is no longer there", "la visita ya no existe", "a visita já não existe");
    public static readonly Text Withdrawn = new(
        "not sent: the finding no longer waits for anybody",
        "no enviado: el hallazgo ya no espera a nadie",
        "não enviado: a constatação já não espera por ninguém");
    public static readonly Text Fault = new(
        "the message could not be made; the server's log tells why",
        "no se pudo preparar el mensaje; el registro del servidor dice por qué",
        "não foi possível preparar a mensagem; o registro do servidor diz por quê");

    internal const string NoVisitCode = Prefix + "no-visit";
    internal const string WithdrawnCode = Prefix + "withdrawn";
    internal const string FaultCode = Prefix + "fault";

    private const string Prefix = "logbook:";
    internal const string ReplacedCode = Prefix + "replaced:";
    private const string NoAddressCode = Prefix + "no-address:";

    internal static string ReplacedBy(int version) => string.Create(CultureInfo.InvariantCulture, $"{ReplacedCode}{version}");

    internal static string NotAnAddress(string recipient) => NoAddressCode + recipient;

    /// <summary>Whether a notice was given up because nobody waited for it any more.</summary>
    internal static bool IsWithdrawn(string? kept) => kept == WithdrawnCode;

    /// <summary>Whether a message was given up only because a newer one took its place.</summary>
    internal static bool IsReplaced(string? kept) => kept?.StartsWith(ReplacedCode, StringComparison.Ordinal) == true;

    /// <summary>A note for people.</summary>
    /// <param name="kept">As it is kept in the outbox.</param>
    /// <param name="language">Language of the reader.</param>
    /// <returns>The words; those of a mail server as they came.</returns>
    public static string? In(string? kept, Language language) => kept switch
    {
        null => null,
        NoVisitCode => NoVisit.In(language),
        FaultCode => Fault.In(language),
        WithdrawnCode => Withdrawn.In(language),
        _ when kept.StartsWith(ReplacedCode, StringComparison.Ordinal) => Replaced.In(language, kept[ReplacedCode.Length..]),
        _ when kept.StartsWith(NoAddressCode, StringComparison.Ordinal) => NoAddress.In(language, kept[NoAddressCode.Length..]),
        _ => kept,
    };
}
