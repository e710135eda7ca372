using System.Globalization;
using System.Text.Json.Nodes;
using LogBook.Domain.Languages;
using LogBook.Domain.Quantities;
using LogBook.Domain.Numbers;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>Makes a record of the exchange format out of a form. What cannot be read stays as typed and is told.</summary>
public sealed class FormWriter
{
    private readonly Language _language;
    private readonly List<FormIssue> _issues = [];

    private FormWriter(Language language) => _language = language;

    /// <summary>The record of a form.</summary>
    /// <param name="fields">Fields of the form.</param>
    /// <param name="group">What stands in it.</param>
    /// <param name="language">Language of the person.</param>
    /// <returns>The record without what cannot be read, and an issue for each of that.</returns>
    public static (JsonObject Json, IReadOnlyList<FormIssue> Issues) Write(IReadOnlyList<FormField> fields, FormGroup group, Language language)
    {
        var writer = new FormWriter(language);
        return (writer.Of(fields, group), writer._issues);
    }

    /// <summary>What is understood of a number as typed.</summary>
    public static NumberReading Reading(FormGroup group, string name, Language language) => NumberEntry.Parse(group.Text(name), language);

    /// <summary>The number of a field, or null while it cannot be read.</summary>
    public static double? Number(FormGroup group, string name, Language language)
    {
        if (group.Origins.TryGetValue(name, out var origin) && origin.Text == group.Text(name) && group.Answers.TryGetValue(name, out var known))
        {
            return known;
        }

        var reading = Reading(group, name, language);
        return reading.Qualifier is null ? reading.Settled(group.Answers.TryGetValue(name, out var answer) ? answer : null) : null;
    }

    /// <summary>What is wrong with a number as typed; null when it can be read or nothing stands there.</summary>
    public static string? Problem(FormField field, FormGroup group, Language language)
    {
        var text = group.Text(field.Name).Trim();
        if (text.Length == 0 || field.Kind is not (FormKind.Number or FormKind.Whole))
        {
            return null;
        }

        if (field.Kind == FormKind.Whole)
        {
            return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out _) ? null : FormTexts.NotWhole.In(language, field.Label, text);
        }

        if (Number(group, field.Name, language) is not null)
        {
            return null;
        }

        var reading = Reading(group, field.Name, language);
        return reading.Kind switch
        {
            _ when reading.Qualifier is not null => FormTexts.NoQualifier.In(language, field.Label, text),
            NumberReadingKind.Ask => FormTexts.WhichNumber.In(language, field.Label, text),
            NumberReadingKind.TooManyDigits => FormTexts.TooManyDigits.In(language, field.Label, text),
            _ => FormTexts.NotANumber.In(language, field.Label, text, Example(language)),
        };
    }

    private static string Example(Language language) => 2.5.ToString("0.0", Cultures.Of(language));

    private JsonObject Of(IReadOnlyList<FormField> fields, FormGroup group)
    {
        var json = (JsonObject)group.Rest.DeepClone();
        foreach (var field in fields)
        {
            switch (field.Kind)
            {
                case FormKind.Group:
                    if (group.Has(field))
                    {
                        json[field.Name] = Of(field.Fields, group.Only(field.Name));
                    }

                    break;
                case FormKind.Rows:
                    if (group.Has(field))
                    {
                        json[field.Name] = new JsonArray([.. group.Rows(field.Name).Select(row => Of(field.Fields, row))]);
                    }

                    break;
                case FormKind.Pairs:
                    if (group.Has(field))
                    {
                        json[field.Name] = new JsonArray([.. group.Rows(field.Name).Select(row => Pair(field, row))]);
                    }

                    break;
                default:
                    WriteField(json, field, group);
                    break;
            }
        }

        return json;
    }

    private JsonArray Pair(FormField field, FormGroup row)
    {
        var pair = new JsonArray();
        foreach (var part in field.Fields)
        {
            if (row.Text(part.Name).Trim().Length == 0)
            {
                _issues.Add(new FormIssue(row.Place(part.Name), FormTexts.Missing.In(_language, part.Label)));
            }
            else if (Problem(part, row, _language) is { } problem)
            {
                _issues.Add(new FormIssue(row.Place(part.Name), problem));
            }
            else
            {
                pair.Add(Number(row, part.Name, _language)!.Value);
            }
        }

        return pair;
    }

    private void WriteField(JsonObject json, FormField field, FormGroup group)
    {
        var text = group.Text(field.Name).Trim();
        if (group.Origins.TryGetValue(field.Name, out var origin) && origin.Text.Trim() == text
            && (field.Units.Count == 0 || origin.Unit == group.Units.GetValueOrDefault(field.Name, origin.Unit)))
        {
            json[field.Name] = origin.Value.DeepClone();
            if (origin.Entered is not null)
            {
                json[field.Name + "Entered"] = origin.Entered.DeepClone();
            }

            return;
        }

        if (text.Length == 0)
        {
            return;
        }

        if (Problem(field, group, _language) is { } problem)
        {
            _issues.Add(new FormIssue(group.Place(field.Name), problem));
            return;
        }

        switch (field.Kind)
        {
            case FormKind.Number:
                WriteNumber(json, field, group);
                break;
            case FormKind.Whole:
                json[field.Name] = int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
                break;
            case FormKind.Flag or FormKind.YesNo:
                json[field.Name] = text == "yes";
                break;
            case FormKind.Picks:
                json[field.Name] = new JsonArray([.. text.Split('\n').Select(item => (JsonNode)item)]);
                break;
            case FormKind.Words:
                json[field.Name] = new JsonArray([.. text.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(item => (JsonNode)item)]);
                break;
            case FormKind.Numbers:
                WriteNumbers(json, field, group, text);
                break;
            case FormKind.Moment:
                json[field.Name] = text + ":00Z";
                break;
            default:
                json[field.Name] = text;
                break;
        }
    }

    private void WriteNumber(JsonObject json, FormField field, FormGroup group)
    {
        var typed = Number(group, field.Name, _language)!.Value;
        if (field.Units.Count == 0 || group.Units.GetValueOrDefault(field.Name, FirstUnit(field)) is not { Length: > 0 } unit || (unit == field.Units[0] && field.Divisor == 1))
        {
            json[field.Name] = typed;
            return;
        }

        // What people entered stands beside what is reckoned with; units of one field are of one dimension, so this cannot fail.
        json[field.Name] = Units.Convert(typed, unit, field.Units[0]).Value / field.Divisor;
        json[field.Name + "Entered"] = new JsonObject { ["value"] = typed, ["unit"] = unit };
    }

    /// <summary>Unit a number begins with.</summary>
    public static string FirstUnit(FormField field) => field.Divisor != 1 ? "" : field.Units[0];

    private void WriteNumbers(JsonObject json, FormField field, FormGroup group, string text)
    {
        var list = new JsonArray();
        foreach (var part in text.Split([';', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).SelectMany(Parts))
        {
            var reading = NumberEntry.Parse(part, _language);
            if (reading.Kind != NumberReadingKind.Understood || reading.Qualifier is not null)
            {
                _issues.Add(new FormIssue(group.Place(field.Name), FormTexts.NotNumbers.In(_language, field.Label, part)));
                return;
            }

            list.Add(reading.Value!.Value);
        }

        json[field.Name] = list;
    }

    // "1,3" are weeks one and three, "2,5;7" are numbers with a decimal comma.
    private static IEnumerable<string> Parts(string text) => text.EndsWith(',') ? [text[..^1]] : [text];
}
