using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>Values of a visit's document as people read them: numbers with their unit, moments in the time of the site, listed values in words.</summary>
internal static class VisitDifferenceValues
{
    private static readonly string[] InUnit = ["value", "perDrop", "firstValue", "asFound", "reference", "afterCleaning", "asLeft", "level", "firstLevel", "amount", "found", "left"];

    private static readonly Text Yes = new("yes", "sí", "sim");
    private static readonly Text No = new("no", "no", "não");

    private static readonly Dictionary<(string Field, string Value), Text> Listed = new()
    {
        [("phase", "found")] = new("as found", "como se encontró", "como encontrado"),
        [("phase", "again")] = new("read again", "leída de nuevo", "lida de novo"),
        [("phase", "left")] = new("as left", "como se dejó", "como deixado"),
        [("state", "open")] = new("open", "pendiente", "pendente"),
        [("state", "done")] = new("done", "hecha", "feita"),
        [("state", "dropped")] = new("dropped", "descartada", "descartada"),
        [("state", "asked")] = new("asked", "propuesta", "proposta"),
        [("state", "accepted")] = new("accepted", "aceptada", "aceita"),
        [("state", "declined")] = new("declined", "rechazada", "recusada"),
        [("by", "technician")] = new("technician", "técnico", "técnico"),
        [("by", "customer")] = new("customer", "cliente", "cliente"),
        [("of", "conductivity")] = new("conductivity", "conductividad", "condutividade"),
        [("of", "pH")] = Same("pH"),
        [("of", "orp")] = Same("ORP"),
        [("against", "hand-meter")] = new("hand meter", "medidor portátil", "medidor portátil"),
        [("against", "standard")] = new("standard", "patrón", "padrão"),
    };

    /// <summary>Whether a record's unit stands behind its numbers and needs no line of its own.</summary>
    public static bool CarriesUnit(JsonObject record) => Array.Exists(InUnit, field => IsNumber(record[field]));

    /// <summary>What is compared: the value as written, with the unit where it has one.</summary>
    public static string Raw(JsonObject record, string field) =>
        IsNumber(record[field]) && UnitOf(record, field) is { } unit ? $"{record[field]!.ToJsonString()} {unit}" : record[field]!.ToJsonString();

    /// <summary>What is shown.</summary>
    public static Text Of(JsonObject record, string field, TimeZoneInfo zone)
    {
        var node = (JsonValue)record[field]!;
        switch (node.GetValueKind())
        {
            case JsonValueKind.True:
                return Yes;
            case JsonValueKind.False:
                return No;
            case JsonValueKind.Number:
                var number = node.GetValue<JsonElement>().GetDouble();
                return UnitOf(record, field) is { } unit
                    ? InEach(language => Shown.Entered(number, unit, language))
                    : InEach(language => Shown.Entered(number, language));
        }

        var text = node.ToString();
        if (field == "unit")
        {
            return InEach(language => Shown.Unit(text, language) is { Length: > 0 } shown ? shown : text);
        }

        if (Moment.TryParse(text, out var moment))
        {
            return InEach(language => Shown.DayAndTime(moment.Utc, zone, language));
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return InEach(language => Shown.Day(day, language));
        }

        return Words(field, node, text) ?? (Listed.TryGetValue((field, text), out var words) ? words : Same(text));
    }

    private static Text? Words(string field, JsonValue node, string text) => field switch
    {
        "test" => TestTexts.NameOf(text),
        "at" or "point" => TestTexts.NameOfPoint(text),
        "kind" => Listing(node, ExchangeJson.Default.VisitKind) is { } kind ? VisitTexts.NameOf(kind) : null,
        "source" => Listing(node, ExchangeJson.Default.ReadingSource) is { } source ? VisitTexts.NameOf(source) : null,
        "type" => Listing(node, ExchangeJson.Default.EventType) is { } type ? VisitTexts.NameOf(type) : null,
        "severity" => Listing(node, ExchangeJson.Default.Severity) is { } severity ? FindingTexts.NameOf(severity) : null,

        // A switch or a setting; a setting's text is whatever the controller shows.
        "found" or "left" => Listing(node, ExchangeJson.Default.SwitchPosition) is { } position ? VisitTexts.NameOf(position) : null,
        _ => null,
    };

    private static T? Listing<T>(JsonValue node, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type)
        where T : struct, Enum
    {
        try
        {
            return node.Deserialize(type);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static string? UnitOf(JsonObject record, string field) => InUnit.Contains(field) ? record["unit"]?.ToString() : null;

    private static bool IsNumber(JsonNode? node) => node is JsonValue value && value.GetValueKind() == JsonValueKind.Number;

    private static Text InEach(Func<Language, string> words) => new(words(Language.English), words(Language.Spanish), words(Language.Portuguese));

    private static Text Same(string text) => new(text, text, text);
}
