using LogBook.Domain.Languages;

namespace LogBook.Application.Clocks;

/// <summary>What is asked for when a template is taken over.</summary>
internal static class AdoptTexts
{
    public static readonly Text CheckNeeded = new(
        "Write who checked it with the authority, and when.",
        "Escriba quién lo comprobó con la autoridad y cuándo.",
        "Escreva quem conferiu com a autoridade e quando.");

    public static readonly Text OutsideFrom = new(
        "This rule is in force from {0}. Take it over from a day on or after that.",
        "Esta norma está vigente desde el {0}. Adóptela desde ese día o después.",
        "Esta regra vigora desde {0}. Adote-a desse dia em diante.");

    public static readonly Text OutsideFromTo = new(
        "This rule is in force from {0} to {1}. Take it over from a day within these dates.",
        "Esta norma está vigente del {0} al {1}. Adóptela desde un día entre esas fechas.",
        "Esta regra vigora de {0} a {1}. Adote-a de um dia entre essas datas.");

    public static readonly Text NotBackwards = new(
        "A version of this rule begins on that day or later. A new version needs a later day, so that records keep the rule of their date.",
        "Una versión de esta norma empieza ese día o después. Una versión nueva necesita un día posterior, para que los registros conserven la norma de su fecha.",
        "Uma versão desta regra começa nesse dia ou depois. Uma versão nova precisa de um dia posterior, para que os registros mantenham a regra da sua data.");
}
