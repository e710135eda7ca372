using LogBook.Domain.Languages;
using LogBook.Entry.Plans;

namespace LogBook.Entry.Texts;

/// <summary>Words for the closed lists that the form offers.</summary>
public static class WordsOf
{
    private static readonly Text At25 = new("at 25 °C", "a 25 °C", "a 25 °C");
    private static readonly Text AsProduct = new("as product", "como producto", "como produto");
    private static readonly Text As = new("as {0}", "como {0}", "como {0}");

    /// <summary>How soon an observation wants somebody.</summary>
    /// <param name="severity">The severity.</param>
    /// <returns>Words.</returns>
    public static Text Soon(Domain.Findings.Severity severity) => severity switch
    {
        Domain.Findings.Severity.Act => StepTexts.Act,
        Domain.Findings.Severity.Plan => StepTexts.Plan,
        _ => StepTexts.Watch,
    };

    /// <summary>What became of an action.</summary>
    /// <param name="state">The state.</param>
    /// <returns>Words.</returns>
    public static Text State(Domain.Visits.ActionState state) => state switch
    {
        Domain.Visits.ActionState.Done => new("Done", "Hecho", "Feito"),
        Domain.Visits.ActionState.Dropped => new("No longer needed", "Ya no hace falta", "Não é mais preciso"),
        _ => new("Open", "Pendiente", "Pendente"),
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

    /// <summary>What a result is expressed as.</summary>
    /// <param name="basis">Basis as the record names it, as in "as CaCO3".</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>Words.</returns>
    public static string Basis(string basis, Language language) => basis switch
    {
        "at 25 Cel" => At25.In(language),
        "as product" => AsProduct.In(language),
        _ when basis.StartsWith("as ", StringComparison.Ordinal) => As.In(language, basis[3..]),
        _ => basis,
    };

    /// <summary>Places offered for observations.</summary>
    public static IReadOnlyList<string> Places { get; } = ["basin", "fill", "drift-eliminators", "float-valve", "overflow", "strainer", "pipes", "pumps", "other"];

    /// <summary>Name of a step.</summary>
    /// <param name="step">The step.</param>
    /// <returns>Its name.</returns>
    public static Text Step(EntryStep step) => step switch
    {
        EntryStep.Arrive => EntryTexts.Arrive,
        EntryStep.Controller => EntryTexts.Controller,
        EntryStep.Reference => EntryTexts.Reference,
        EntryStep.Water => EntryTexts.Water,
        EntryStep.Stock => EntryTexts.Stock,
        EntryStep.Tower => EntryTexts.Tower,
        EntryStep.Samples => EntryTexts.Samples,
        EntryStep.Adjust => EntryTexts.Adjust,
        EntryStep.Sheet => EntryTexts.Sheet,
        _ => EntryTexts.Close,
    };
}
