using System.Globalization;
using System.Text.RegularExpressions;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>Finds the field that an issue of the exchange format speaks of, and says it in the words of the form.</summary>
public static partial class FormPlaces
{
    /// <summary>The issue as the person sees it.</summary>
    /// <param name="fields">Fields of the form.</param>
    /// <param name="group">What stands in it.</param>
    /// <param name="issue">Issue with the path within the record.</param>
    /// <param name="language">Language of the person.</param>
    public static FormIssue Of(IReadOnlyList<FormField> fields, FormGroup group, Issue issue, Language language)
    {
        string? place = null;
        var where = "";
        FormField? field = null;
        var here = group;
        var level = fields;
        foreach (Match step in Steps().Matches(issue.Path))
        {
            if (field is { IsDeep: true, Kind: not FormKind.Group } && step.Groups["index"].Success)
            {
                var index = int.Parse(step.Groups["index"].Value, CultureInfo.InvariantCulture);
                if (index >= here.Rows(field.Name).Count)
                {
                    break;
                }

                where = $"{(field.RowName ?? field.Label).In(language)} {NameOf(here.Rows(field.Name)[index], index)}";
                here = here.Rows(field.Name)[index];
                level = field.Fields;
                place = here.Id;
                field = null;
                continue;
            }

            if (step.Groups["index"].Success)
            {
                // One item of a plain list, or of a pair: the field itself is where it is corrected.
                continue;
            }

            if (field is { Kind: FormKind.Group })
            {
                where = field.Label.In(language);
                here = here.Only(field.Name);
                level = field.Fields;
            }

            field = level.FirstOrDefault(candidate => candidate.Name == step.Groups["name"].Value);
            if (field is null)
            {
                break;
            }

            place = here.Place(field.Name);
        }

        return new FormIssue(place, Say(field, here, level, where, issue, language));
    }

    /// <summary>Issues in the order of the form, those of no field last.</summary>
    public static IReadOnlyList<FormIssue> InOrder(IReadOnlyList<FormField> fields, FormGroup group, IEnumerable<FormIssue> issues)
    {
        var places = Places(fields, group).Select((place, index) => (place, index)).ToDictionary(pair => pair.place, pair => pair.index, StringComparer.Ordinal);
        return [.. issues.DistinctBy(issue => (issue.Place, issue.Message)).OrderBy(issue => issue.Place is { } place && places.TryGetValue(place, out var index) ? index : int.MaxValue)];
    }

    private static IEnumerable<string> Places(IReadOnlyList<FormField> fields, FormGroup group)
    {
        foreach (var field in fields)
        {
            yield return group.Place(field.Name);
            foreach (var row in group.Rows(field.Name))
            {
                yield return row.Id;
                foreach (var place in Places(field.Fields, row))
                {
                    yield return place;
                }
            }
        }
    }

    private static string NameOf(FormGroup row, int index)
    {
        var name = row.Text("code") is { Length: > 0 } code ? code : row.Text("test") is { Length: > 0 } test ? test : row.Text("name");
        return name.Length > 0 ? name : (index + 1).ToString(CultureInfo.InvariantCulture);
    }

    private static string Say(FormField? field, FormGroup group, IReadOnlyList<FormField> level, string where, Issue issue, Language language)
    {
        var label = field?.Label.In(language) ?? "";
        string message;
        if (field is not null && issue.Code is "required" && !issue.Message.StartsWith("output", StringComparison.Ordinal))
        {
            message = FormTexts.Missing.In(language, label);
        }
        else if (field is { Kind: FormKind.Number or FormKind.Whole or FormKind.Date or FormKind.Text or FormKind.Mail or FormKind.Lookup } && issue.Code is not ("unknown-code" or "code-taken" or "duplicate-code")
            && Expectation(issue.Message, language) is { } expected && group.Text(field.Name).Length > 0)
        {
            message = FormTexts.Found.In(language, label, group.Text(field.Name), expected);
        }
        else
        {
            // The check speaks of members of the exchange format; the person sees the labels of the form.
            message = Names().Replace(issue.Message, match => level.FirstOrDefault(candidate => candidate.Name == match.Value)?.Label.In(language) ?? match.Value);
        }

        return where.Length == 0 ? message : $"{where}: {message}";
    }

    private static string? Expectation(string message, Language language)
    {
        var mark = language switch
        {
            Language.Spanish => ", se espera ",
            Language.Portuguese => ", esperado ",
            _ => ", expected is ",
        };
        var at = message.LastIndexOf(mark, StringComparison.Ordinal);
        return at < 0 ? null : message[(at + mark.Length)..];
    }

    [GeneratedRegex(@"\[(?<index>\d+)\]|(?<name>[A-Za-z][A-Za-z0-9]*)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Steps();

    // Only at the beginning of the message or where the format's own spelling shows that a member is meant.
    [GeneratedRegex(@"^[a-zA-Z0-9]+(?=:)|\b[a-z]+[A-Z][A-Za-z0-9]*\b|(?<=^falta )[a-z]+|^[a-z]+(?= is missing)", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Names();
}
