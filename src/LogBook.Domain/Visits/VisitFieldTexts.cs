using LogBook.Domain.Languages;

namespace LogBook.Domain.Visits;

/// <summary>Names of the fields of a visit within a message: who reads it stands at the field and knows no path.</summary>
internal static class VisitFieldTexts
{
    private static readonly Dictionary<string, Text> Names = new(StringComparer.Ordinal)
    {
        ["dial"] = new("dial", "contador", "medidor"),
        ["total"] = new("total", "total del controlador", "total do controlador"),
        ["oldFinal"] = new("final reading of the old meter", "lectura final del contador antiguo", "leitura final do medidor antigo"),
        ["newStart"] = new("first reading of the new meter", "lectura inicial del contador nuevo", "leitura inicial do medidor novo"),
        ["hours"] = new("hours", "horas", "horas"),
        ["level"] = new("level", "nivel", "nível"),
        ["left"] = new("left", "al irse", "ao sair"),
        ["addedL"] = new("added", "añadido", "adicionado"),
        ["removedL"] = new("taken out", "retirado", "retirado"),
        ["asFound"] = new("as found", "como se encontró", "como encontrado"),
        ["asLeft"] = new("as left", "como se dejó", "como deixado"),
        ["reference"] = new("reference", "referencia", "referência"),
        ["arrived"] = new("arrived", "llegada", "chegada"),
        ["takenAt"] = new("taken", "toma", "coleta"),
        ["resultAt"] = new("result", "resultado", "resultado"),
        ["receivedAt"] = new("received", "recepción", "recebimento"),
        ["enteredAt"] = new("entered", "anotado", "anotado"),
        ["amendedAt"] = new("amended", "corregido", "corrigido"),
    };

    /// <summary>Name of the field at the end of a path.</summary>
    /// <param name="path">Path or name of the field.</param>
    /// <returns>Its name; the field's own where it has none for people.</returns>
    public static Text NameOf(string path)
    {
        var field = path[(path.LastIndexOf('.') + 1)..];
        return Names.GetValueOrDefault(field) ?? new Text(field, field, field);
    }
}
