using LogBook.Domain.Languages;

namespace LogBook.Application.Clocks;

/// <summary>What is asked for when a notification is written down.</summary>
internal static class NoticeTexts
{
    public static readonly Text ToNeeded = new("Write whom you told.", "Escriba a quién avisó.", "Escreva a quem avisou.");
    public static readonly Text HowNeeded = new(
        "Write how, and what proves it: a reference number, the name of who took the call.",
        "Escriba cómo y qué lo prueba: un número de referencia, el nombre de quien atendió.",
        "Escreva como e o que o prova: um número de referência, o nome de quem atendeu.");

    public static readonly Text ByNeeded = new("Write who told it.", "Escriba quién avisó.", "Escreva quem avisou.");
    public static readonly Text NotAhead = new("This moment is still to come.", "Ese momento aún no ha llegado.", "Esse momento ainda não chegou.");
    public static readonly Text NotBefore = new("This is before the sample was taken.", "Es anterior a la toma de la muestra.", "É anterior à coleta da amostra.");
    public static readonly Text NotBeforeReceipt = new(
        "Told at {0}, before the result came in at {1} (both UTC). Correct the moment, or the receipt of the result in its visit.",
        "Avisado el {0}, antes de recibir el resultado el {1} (ambos UTC). Corrija el momento, o la recepción del resultado en su visita.",
        "Avisado em {0}, antes de receber o resultado em {1} (ambos UTC). Corrija o momento, ou o recebimento do resultado na visita.");
}
