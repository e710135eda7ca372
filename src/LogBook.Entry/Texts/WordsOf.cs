using LogBook.Domain.Languages;

namespace LogBook.Entry.Texts;

/// <summary>Words for the closed lists that the form offers.</summary>
public static class WordsOf
{
    /// <summary>How soon an observation wants somebody.</summary>
    /// <param name="severity">The severity.</param>
    /// <returns>Words.</returns>
    public static Text Soon(Domain.Findings.Severity severity) => severity switch
    {
        Domain.Findings.Severity.Act => StepTexts.Act,
        Domain.Findings.Severity.Plan => StepTexts.Plan,
        _ => StepTexts.Watch,
    };

    /// <summary>A place the observations speak of.</summary>
    /// <param name="place">Code of the place.</param>
    /// <returns>Its name.</returns>
    public static Text Place(string place) => place switch
    {
        "basin" => new("Basin", "Balsa", "Bacia"),
        "fill" => new("Fill", "Relleno", "Enchimento"),
        "drift-eliminators" => new("Drift eliminators", "Separadores de gotas", "Eliminadores de gotas"),
        "float-valve" => new("Float valve", "Válvula de flotador", "Válvula de boia"),
        "overflow" => new("Overflow", "Rebosadero", "Extravasor"),
        "strainer" => new("Strainer", "Filtro", "Filtro"),
        "pipes" => new("Pipes and leaks", "Tuberías y fugas", "Tubulação e vazamentos"),
        "pumps" => new("Pumps and lines", "Bombas y líneas", "Bombas e linhas"),
        _ => new("Other", "Otro", "Outro"),
    };

    /// <summary>Places offered for observations.</summary>
    public static IReadOnlyList<string> Places { get; } = ["basin", "fill", "drift-eliminators", "float-valve", "overflow", "strainer", "pipes", "pumps", "other"];
}
