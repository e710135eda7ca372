using LogBook.Domain.Languages;

namespace LogBook.Domain.Settings;

/// <summary>Words for the closed lists among the settings, by their codes in the exchange format.</summary>
public static class SettingChoices
{
    /// <summary>How a feed is paced.</summary>
    public static readonly IReadOnlyDictionary<string, Text> Modes = new Dictionary<string, Text>
    {
        ["by-make-up-volume"] = new("By make-up volume", "Por volumen de reposición", "Por volume de reposição"),
        ["alongside-bleed"] = new("Alongside the bleed", "Junto con la purga", "Junto com a purga"),
        ["fixed-share"] = new("Fixed share of time", "Parte fija del tiempo", "Parte fixa do tempo"),
        ["share-of-last-bleed"] = new("Share of the last bleed", "Parte de la última purga", "Parte da última purga"),
        ["dose-plan"] = new("By dose plan", "Según plan de dosis", "Por plano de doses"),
        ["by-orp"] = new("By ORP", "Por ORP", "Por ORP"),
        ["by-ph"] = new("By pH", "Por pH", "Por pH"),
        ["by-residual"] = new("By measured residual", "Por residual medido", "Por residual medido"),
        ["by-hand"] = new("By hand", "A mano", "À mão"),
        ["feeder"] = new("Solid feeder", "Dosificador de sólidos", "Dosador de sólidos"),
    };

    /// <summary>When the bleed opens.</summary>
    public static readonly IReadOnlyDictionary<string, Text> BleedActs = new Dictionary<string, Text>
    {
        ["on-rise"] = new("Opens at the set point, shuts below it", "Abre en la consigna, cierra por debajo", "Abre no ponto de ajuste, fecha abaixo"),
        ["on-fall"] = new("Opens when the reading falls", "Abre cuando la lectura baja", "Abre quando a leitura cai"),
    };

    /// <summary>Which way feeding moves the reading.</summary>
    public static readonly IReadOnlyDictionary<string, Text> Directions = new Dictionary<string, Text>
    {
        ["up"] = new("Feeding raises the reading", "Dosificar sube la lectura", "Dosar eleva a leitura"),
        ["down"] = new("Feeding lowers the reading", "Dosificar baja la lectura", "Dosar baixa a leitura"),
    };

    /// <summary>What the inhibitor does during a biocide dose.</summary>
    public static readonly IReadOnlyDictionary<string, Text> Meanwhile = new Dictionary<string, Text>
    {
        ["feeds"] = new("Keeps feeding", "Sigue dosificando", "Continua dosando"),
        ["waits"] = new("Waits", "Espera", "Espera"),
        ["skips"] = new("Misses its turn", "Pierde su turno", "Perde a vez"),
    };

    /// <summary>Days of the week.</summary>
    public static readonly IReadOnlyDictionary<string, Text> Days = new Dictionary<string, Text>
    {
        ["mon"] = new("Mon", "lun", "seg"),
        ["tue"] = new("Tue", "mar", "ter"),
        ["wed"] = new("Wed", "mié", "qua"),
        ["thu"] = new("Thu", "jue", "qui"),
        ["fri"] = new("Fri", "vie", "sex"),
        ["sat"] = new("Sat", "sáb", "sáb"),
        ["sun"] = new("Sun", "dom", "dom"),
    };

    /// <summary>The closed list of a setting that takes one of it.</summary>
    /// <param name="name">Name of the setting in the exchange format, with or without its output.</param>
    /// <returns>Words by code; null for a number, free text or a list of several.</returns>
    public static IReadOnlyDictionary<string, Text>? Of(string name) => SettingNames.FieldOf(name) switch
    {
        "mode" => Modes,
        "bleedActs" => BleedActs,
        "direction" => Directions,
        "inhibitorMeanwhile" => Meanwhile,
        _ => null,
    };
}
