using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>Puts a record of the exchange format into a form.</summary>
public static class FormReader
{
    private const string Entered = "Entered";

    /// <summary>The form of a record.</summary>
    /// <param name="fields">Fields of the form.</param>
    /// <param name="json">The record; null for a new one.</param>
    /// <param name="language">Whose decimal sign is used.</param>
    public static FormGroup Read(IReadOnlyList<FormField> fields, JsonObject? json, Language language)
    {
        var group = new FormGroup(null, "f");
        Fill(group, fields, json ?? [], language);
        return group;
    }

    private static void Fill(FormGroup group, IReadOnlyList<FormField> fields, JsonObject json, Language language)
    {
        var known = fields.Select(field => field.Name).ToHashSet(StringComparer.Ordinal);
        known.UnionWith(fields.Where(field => field.Units.Count > 0).Select(field => field.Name + Entered));
        foreach (var (name, value) in json)
        {
            if (!known.Contains(name))
            {
                group.Rest[name] = value?.DeepClone();
            }
        }

        foreach (var field in fields)
        {
            if (json[field.Name] is { } value)
            {
                FillField(group, field, value, json[field.Name + Entered] as JsonObject, language);
            }
        }
    }

    private static void FillField(FormGroup group, FormField field, JsonNode value, JsonObject? entered, Language language)
    {
        switch (field.Kind)
        {
            case FormKind.Group:
                Fill(group.Only(field.Name), field.Fields, value.AsObject(), language);
                return;
            case FormKind.Rows:
                foreach (var row in value.AsArray())
                {
                    Fill(group.Add(field.Name), field.Fields, row!.AsObject(), language);
                }

                return;
            case FormKind.Pairs:
                foreach (var pair in value.AsArray())
                {
                    var numbers = new JsonObject();
                    for (var i = 0; i < field.Fields.Count && i < pair!.AsArray().Count; i++)
                    {
                        numbers[field.Fields[i].Name] = pair[i]!.DeepClone();
                    }

                    Fill(group.Add(field.Name), field.Fields, numbers, language);
                }

                return;
            default:
                break;
        }

        var unit = field.Units.Count > 0 ? field.Units[0] : "";
        var shown = value;
        if (entered?["value"] is { } enteredValue && entered["unit"]?.GetValue<string>() is { } enteredUnit && field.Units.Contains(enteredUnit, StringComparer.Ordinal))
        {
            (shown, unit) = (enteredValue, enteredUnit);
        }
        else if (field.Divisor != 1 && field.Units.Count > 0)
        {
            unit = "";
        }

        var text = Text(field, shown, language);
        group.Set(field.Name, text);
        if (field.Kind == FormKind.Number)
        {
            // A number of the record has one meaning, however it would be read if it were typed.
            group.Answers[field.Name] = shown.GetValue<double>();
            group.Units[field.Name] = unit;
        }

        group.Origins[field.Name] = new FormOrigin(text, unit, value.DeepClone(), entered?.DeepClone());
    }

    private static string Text(FormField field, JsonNode value, Language language) => field.Kind switch
    {
        FormKind.Flag or FormKind.YesNo => value.GetValueKind() == JsonValueKind.True ? "yes" : field.Kind == FormKind.YesNo ? "no" : "",
        FormKind.Number => value.GetValue<double>().ToString("R", Cultures.Of(language)),
        FormKind.Whole => value.GetValue<double>().ToString("0", CultureInfo.InvariantCulture),
        FormKind.Picks => string.Join('\n', value.AsArray().Select(Plain)),
        FormKind.Words => string.Join(", ", value.AsArray().Select(Plain)),
        FormKind.Numbers => string.Join("; ", value.AsArray().Select(number => number!.GetValue<double>().ToString("R", Cultures.Of(language)))),
        FormKind.Moment => DateTimeOffset.Parse(value.GetValue<string>(), CultureInfo.InvariantCulture).UtcDateTime.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture),
        _ => Plain(value),
    };

    private static string Plain(JsonNode? node) => node is JsonValue value && value.TryGetValue<string>(out var text) ? text : node?.ToJsonString() ?? "";
}
