using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Meters;

/// <summary>Why two counts give no amount.</summary>
public static class MeterReasons
{
    /// <summary>A count is missing.</summary>
    public static readonly Reason NotRead = new("meter-not-read", new Text(
        "The meter was not read at both visits.",
        "El contador no se leyó en ambas visitas.",
        "O hidrômetro não foi lido nas duas visitas."));

    /// <summary>The count fell, with no rollover, reset or replacement.</summary>
    public static readonly Reason Fell = new("meter-fell", new Text(
        "The count fell with no rollover, reset or replacement that would explain it.",
        "El conteo bajó sin vuelta a cero, reinicio ni cambio que lo explique.",
        "A contagem caiu sem volta a zero, reinício ou troca que explique."));

    /// <summary>The total was reset between the visits.</summary>
    public static readonly Reason Reset = new("total-reset", new Text(
        "The total was reset between the visits: what was counted before is unknown.",
        "El total se reinició entre las visitas: no se sabe lo contado antes.",
        "O total foi reiniciado entre as visitas: não se sabe o que foi contado antes."));

    /// <summary>The meter was replaced, and its last or first count is not known.</summary>
    public static readonly Reason Replaced = new("meter-replaced", new Text(
        "The meter was replaced and the old final or new first count is not known.",
        "Se cambió el contador y no se conoce el último conteo del viejo o el primero del nuevo.",
        "O hidrômetro foi trocado e não se conhece a última contagem do velho ou a primeira do novo."));

    /// <summary>The register cannot show such a count.</summary>
    public static readonly Reason BeyondRegister = new("count-beyond-register", new Text(
        "The count has more digits than the register, or is negative.",
        "El conteo tiene más dígitos que el registro, o es negativo.",
        "A contagem tem mais dígitos que o registro, ou é negativa."));

    /// <summary>No time between the readings, or a factor that cannot be.</summary>
    public static readonly Reason Impossible = new("meter-value-impossible", new Text(
        "A number of this meter cannot occur.",
        "Un número de este contador no es posible.",
        "Um número deste hidrômetro não é possível."));
}
