using System.Text.Json;
using System.Text.Json.Nodes;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>
/// What differs between two texts of a visit, place by place. Works on the documents, so that nothing which is stored can differ unseen;
/// records in lists are told apart by what identifies them, so that an added reading is one record and not a shift of all that follow.
/// </summary>
public static class VisitDifferences
{
    private static readonly string[] Identities = ["id", "system", "meter", "drum", "output", "pump", "probe", "name", "product", "bottle", "by"];
    private static readonly HashSet<string> OfTheAmendment = ["version", "amends", "amendedBy", "amendedAt"];

    /// <summary>All differences, in the order of the newer document.</summary>
    /// <param name="older">One text.</param>
    /// <param name="newer">The other.</param>
    /// <param name="zone">Zone of the site, for moments.</param>
    public static IReadOnlyList<VisitDifference> Between(Visit older, Visit newer, TimeZoneInfo zone)
    {
        var before = Flat(older, zone);
        var after = Flat(newer, zone);
        return
        [
            .. after.Where(place => !before.TryGetValue(place.Key, out var was) || was.Raw != place.Value.Raw)
                .Select(place => new VisitDifference(place.Value.Where, before.TryGetValue(place.Key, out var was) ? was.Shown : null, place.Value.Shown)),
            .. before.Where(place => !after.ContainsKey(place.Key)).Select(place => new VisitDifference(place.Value.Where, place.Value.Shown, null)),
        ];
    }

    private static Dictionary<string, Place> Flat(Visit visit, TimeZoneInfo zone)
    {
        var places = new Dictionary<string, Place>(StringComparer.Ordinal);
        WalkRecord((JsonObject)JsonSerializer.SerializeToNode(visit, ExchangeJson.Default.Visit)!, OfTheAmendment, "", [], places, zone);
        return places;
    }

    private static void WalkRecord(
        JsonObject record, IReadOnlySet<string> said, string path, IReadOnlyList<Text> where, Dictionary<string, Place> places, TimeZoneInfo zone)
    {
        foreach (var (name, value) in record)
        {
            if (value is null || said.Contains(name) || (name == "unit" && VisitDifferenceValues.CarriesUnit(record)))
            {
                continue;
            }

            var here = $"{path}/{name}";
            IReadOnlyList<Text> named = name == "systems" ? where : [.. where, VisitDifferenceWords.NameOf(name)];
            switch (value)
            {
                case JsonObject inner:
                    WalkRecord(inner, new HashSet<string>(), here, named, places, zone);
                    break;
                case JsonArray list:
                    WalkList(list, here, named, places, zone);
                    break;
                default:
                    places[here] = new Place(VisitDifferenceWords.Joined(named), VisitDifferenceValues.Raw(record, name), VisitDifferenceValues.Of(record, name, zone));
                    break;
            }
        }
    }

    private static void WalkList(JsonArray list, string path, IReadOnlyList<Text> where, Dictionary<string, Place> places, TimeZoneInfo zone)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var item in list.OfType<JsonNode>())
        {
            var (id, name, said) = item is JsonObject known ? IdentityOf(known) : (item.ToJsonString(), Same(item.ToString()), []);
            var count = seen[id] = seen.GetValueOrDefault(id) + 1;
            var here = $"{path}/{id}#{count}";
            IReadOnlyList<Text> named = [.. where, name];
            if (item is JsonObject record)
            {
                // A record of which nothing is left to say stands as itself.
                var before = places.Count;
                WalkRecord(record, said, here, named, places, zone);
                if (places.Count == before)
                {
                    places[here] = new Place(VisitDifferenceWords.Joined(where), id, name);
                }
            }
            else
            {
                places[here] = new Place(VisitDifferenceWords.Joined(where), item.ToJsonString(), Same(item.ToString()));
            }
        }
    }

    // What tells a record from its neighbours, its name for people, and the fields that the name has said already.
    private static (string Id, Text Name, HashSet<string> Said) IdentityOf(JsonObject record)
    {
        if (record["test"] is { } test && record["at"] is { } at)
        {
            return ($"{at}|{test}|{record["source"]?.ToString() ?? "kit"}|{record["phase"]}", VisitDifferenceWords.NameOfReading(record), ["at", "test"]);
        }

        foreach (var field in Identities)
        {
            if (record[field] is JsonValue value)
            {
                var text = value.ToString();
                return field switch
                {
                    "id" => (text, Same((record["text"] ?? record["of"])?.ToString() ?? text), ["id"]),
                    "name" => (text, VisitTexts.NameOfSetting(text), ["name"]),
                    _ => (text, VisitDifferenceValues.Of(record, field, TimeZoneInfo.Utc), [field]),
                };
            }
        }

        var naming = new[] { "about", "type", "text" }.FirstOrDefault(field => record[field] is not null);
        return naming is null ? ("", Same(""), []) : (record[naming]!.ToString(), VisitDifferenceValues.Of(record, naming, TimeZoneInfo.Utc), [naming]);
    }

    private static Text Same(string text) => new(text, text, text);

    private sealed record Place(Text Where, string Raw, Text Shown);
}
