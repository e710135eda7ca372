using LogBook.Domain.Languages;

namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>Says what stands in a field in one line, to compare two versions of a record.</summary>
public static class FormWords
{
    /// <summary>The words of a field; "–" where nothing stands.</summary>
    public static string Of(FormField field, FormGroup group, FormScope scope)
    {
        var words = Inside(field, group, scope);
        return words.Length == 0 ? "–" : words;
    }

    private static string Inside(FormField field, FormGroup group, FormScope scope)
    {
        switch (field.Kind)
        {
            case FormKind.Group or FormKind.Rows or FormKind.Pairs:
                return string.Join(" / ", group.Rows(field.Name).Select(row => string.Join(", ", field.Fields
                    .Select(part => (part, Words: Inside(part, row, scope)))
                    .Where(pair => pair.Words.Length > 0)
                    .Select(pair => $"{pair.part.Label.In(scope.Language)}: {pair.Words}"))));
            case FormKind.Flag or FormKind.YesNo:
                return group.Text(field.Name) switch
                {
                    "yes" => FormTexts.Yes.In(scope.Language),
                    "no" => FormTexts.No.In(scope.Language),
                    _ => "",
                };
            case FormKind.Choice or FormKind.Picks:
                var options = field.Options(scope, group).ToList();
                return string.Join(", ", group.Text(field.Name).Split('\n', StringSplitOptions.RemoveEmptyEntries)
                    .Select(value => options.FirstOrDefault(option => option.Value.Equals(value, StringComparison.OrdinalIgnoreCase))?.Words ?? value));
            case FormKind.Number:
                var text = group.Text(field.Name);
                var unit = field.Units.Count == 0 ? "" : group.Units.GetValueOrDefault(field.Name, FormWriter.FirstUnit(field));
                var shown = unit.Length > 0 ? Shown.Unit(unit, scope.Language) : field.Unit;
                return text.Length == 0 || shown.Length == 0 ? text : $"{text} {shown}";
            default:
                return group.Text(field.Name);
        }
    }
}
