using System.Text.Json;
using System.Text.Json.Nodes;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>
/// What an amendment changed, place by place. Works on the documents, so that nothing which is stored can differ unseen; records in lists
/// are told apart by what identifies them, so that an added reading is one difference and not a shift of all that follow.
/// </summary>
public static class VisitDifferences
{
    private static readonly string[] Identities = ["id", "system", "meter", "drum", "output", "pump", "probe", "name", "product", "bottle", "by"];
    private static readonly HashSet<string> OfTheAmendment = ["version", "amends", "amendedBy", "amendedAt"];

    private static readonly Dictionary<string, Text> Words = new(StringComparer.Ordinal)
    {
        ["readings"] = new("reading", "lectura", "leitura"),
        ["probes"] = new("probe", "sonda", "sonda"),
        ["meters"] = new("water meter", "contador de agua", "hidrômetro"),
        ["drums"] = new("drum", "bidón", "bombona"),
        ["hoursRun"] = new("hours run", "horas de marcha", "horas de funcionamento"),
        ["pumps"] = new("pump", "bomba", "bomba"),
        ["drawdowns"] = new("drawdown", "medición de caudal", "medição de vazão"),
        ["switches"] = new("switch", "selector", "chave"),
        ["settings"] = new("setting", "ajuste", "ajuste"),
        ["additions"] = new("addition", "adición", "adição"),
        ["events"] = new("event", "suceso", "evento"),
        ["alarms"] = new("alarm", "alarma", "alarme"),
        ["observations"] = new("observation", "observación", "observação"),
        ["actions"] = new("action", "acción", "ação"),
        ["photos"] = new("photo", "foto", "foto"),
        ["recommendations"] = new("recommendation", "recomendación", "recomendação"),
        ["signatures"] = new("signature", "firma", "assinatura"),
        ["samples"] = new("sample", "muestra", "amostra"),
        ["value"] = new("value", "valor", "valor"),
        ["unit"] = new("unit", "unidad", "unidade"),
        ["level"] = new("level", "nivel", "nível"),
        ["dial"] = new("dial", "esfera", "mostrador"),
        ["total"] = new("total", "total", "total"),
        ["hours"] = new("hours", "horas", "horas"),
        ["found"] = new("found", "encontrado", "encontrado"),
        ["left"] = new("left", "dejado", "deixado"),
        ["asFound"] = new("as found", "como se encontró", "como encontrado"),
        ["asLeft"] = new("as left", "como se dejó", "como deixado"),
        ["afterCleaning"] = new("after cleaning", "tras limpiar", "após limpar"),
        ["reference"] = new("reference", "referencia", "referência"),
        ["addedL"] = new("added, L", "añadido, L", "adicionado, L"),
        ["lot"] = new("lot", "lote", "lote"),
        ["resultAt"] = new("result came in", "llegada del resultado", "chegada do resultado"),
        ["arrived"] = new("arrived", "llegada", "chegada"),
        ["kind"] = new("kind", "tipo", "tipo"),
        ["technician"] = new("technician", "técnico", "técnico"),
        ["site"] = new("site", "sitio", "local"),
        ["reason"] = new("reason", "motivo", "motivo"),
        ["notes"] = new("notes", "notas", "notas"),
        ["text"] = new("text", "texto", "texto"),
        ["state"] = new("state", "estado", "estado"),
        ["due"] = new("due", "vence", "vence"),
        ["owner"] = new("owner", "responsable", "responsável"),
        ["qualifier"] = new("qualifier", "calificador", "qualificador"),
        ["takenAt"] = new("taken at", "tomada a las", "coletada às"),
        ["running"] = new("running", "en marcha", "em marcha"),
        ["inUse"] = new("in use", "en uso", "em uso"),
    };

    /// <summary>All differences, in the order of the newer document.</summary>
    public static IReadOnlyList<VisitDifference> Between(Visit older, Visit newer)
    {
        var before = Flat(older);
        var after = Flat(newer);
        return
        [
            .. after.Where(place => !before.TryGetValue(place.Key, out var was) || was.Value != place.Value.Value)
                .Select(place => new VisitDifference(place.Value.Where, before.TryGetValue(place.Key, out var was) ? was.Value : null, place.Value.Value)),
            .. before.Where(place => !after.ContainsKey(place.Key)).Select(place => new VisitDifference(place.Value.Where, place.Value.Value, null)),
        ];
    }

    private static Dictionary<string, (Text Where, string Value)> Flat(Visit visit)
    {
        var places = new Dictionary<string, (Text, string)>(StringComparer.Ordinal);
        Walk(JsonSerializer.SerializeToNode(visit, ExchangeJson.Default.Visit)!, "", [], places, top: true);
        return places;
    }

    private static void Walk(JsonNode node, string path, IReadOnlyList<Text> where, Dictionary<string, (Text, string)> places, bool top = false)
    {
        switch (node)
        {
            case JsonObject record:
                foreach (var (name, value) in record.Where(field => field.Value is not null && !(top && OfTheAmendment.Contains(field.Key))))
                {
                    Walk(value!, $"{path}/{name}", name == "systems" ? where : [.. where, Word(name)], places);
                }

                break;
            case JsonArray list:
                var seen = new Dictionary<string, int>(StringComparer.Ordinal);
                foreach (var item in list.OfType<JsonNode>())
                {
                    var (id, name) = item is JsonObject record ? IdentityOf(record) : (item.ToJsonString(), Same(item.ToString()));
                    var count = seen[id] = seen.GetValueOrDefault(id) + 1;
                    Walk(item, $"{path}/{id}#{count}", [.. where, name], places);
                }

                break;
            default:
                places[path] = (Joined(where), node.ToString());
                break;
        }
    }

    private static (string Id, Text Name) IdentityOf(JsonObject record)
    {
        if (record["test"] is { } test && record["at"] is { } at)
        {
            var source = record["source"]?.ToString() ?? "kit";
            var name = TestTexts.NameOf(test.ToString());
            var point = TestTexts.NameOfPoint(at.ToString());
            return ($"{at}|{test}|{source}|{record["phase"]}", new Text($"{name.En} ({point.En})", $"{name.Es} ({point.Es})", $"{name.Pt} ({point.Pt})"));
        }

        foreach (var field in Identities)
        {
            if (record[field] is JsonValue value)
            {
                var text = value.ToString();
                return (text, field switch
                {
                    "id" => record["text"] is { } words ? Same(words.ToString()) : Same(text),
                    "name" => VisitTexts.NameOfSetting(text),
                    _ => Same(text),
                });
            }
        }

        var about = (record["about"] ?? record["type"] ?? record["text"])?.ToString() ?? "";
        return (about, Same(about));
    }

    private static Text Word(string name) => Words.TryGetValue(name, out var word) ? word : Same(name);

    private static Text Joined(IReadOnlyList<Text> parts) => new(
        string.Join(" · ", parts.Select(part => part.En)),
        string.Join(" · ", parts.Select(part => part.Es)),
        string.Join(" · ", parts.Select(part => part.Pt)));

    private static Text Same(string text) => new(text, text, text);
}
