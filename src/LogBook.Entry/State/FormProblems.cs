using LogBook.Domain.Programmes;
using LogBook.Entry.Drafts;
using LogBook.Domain.Numbers;
using LogBook.Entry.Texts;

namespace LogBook.Entry.State;

/// <summary>Puts together what is wrong: texts that are no values, the domain's checks, and what came back after sending.</summary>
internal static class FormProblems
{
    public static List<FieldProblem> Of(FormState state)
    {
        var problems = new List<FieldProblem>();
        foreach (var unread in state.Build.Unread)
        {
            problems.Add(new FieldProblem(unread.Key, Code(unread), Message(state, unread), true));
        }

        problems.AddRange(Numbers(state));
        foreach (var issue in state.Checked())
        {
            var key = state.Build.KeyOf(issue.Path);

            // One message at a field is enough; the form's own names the text as it was typed.
            if (!problems.Exists(p => p.Key == key && (p.Message == issue.Message || (key is not null && p.Blocks))))
            {
                problems.Add(new FieldProblem(key, issue.Code, issue.Message, issue.Blocks));
            }
        }

        // What the form finds itself comes first: a refusal that still holds here must not pass for one that was corrected.
        foreach (var issue in state.Refusals)
        {
            var key = state.Build.KeyOf(issue.Path);
            if (!problems.Exists(p => p.Key == key && p.Message == issue.Message))
            {
                problems.Add(new FieldProblem(key, issue.Code, issue.Message, issue.Blocks, CameBack: true));
            }
        }

        return problems;
    }

    // A sign where none belongs would vanish from the record without a word.
    private static IEnumerable<FieldProblem> Numbers(FormState state)
    {
        foreach (var key in state.Build.KeyByPath.Values.Distinct(StringComparer.Ordinal))
        {
            if (state.Draft.Field(key) is not { Text.Length: > 0, Unit: not null } field)
            {
                continue;
            }

            var reading = NumberEntry.Parse(field.Text, state.Language);
            if (reading.Settled(field.Choice) is not { } value)
            {
                continue;
            }

            var parts = DraftKey.Parts(key);
            if (reading.Qualifier is { } sign && !(parts.Count > 4 && parts[2] == "readings" && parts[^1] == "value"))
            {
                yield return new FieldProblem(key, "no-qualifier", state.T(EntryTexts.NoQualifier, state.Name(key), field.Text, sign), true);
            }

            if (value < 0 && !MayBeNegative(parts, state))
            {
                yield return new FieldProblem(key, "negative", state.T(EntryTexts.Negative, state.Name(key), field.Text), true);
            }

            if (parts[^1] == "programmeWeek" && value != Math.Truncate(value))
            {
                yield return new FieldProblem(key, "not-whole", state.T(EntryTexts.NotAWholeNumber, state.Name(key), field.Text), true);
            }
        }
    }

    private static bool MayBeNegative(IReadOnlyList<string> parts, FormState state) => parts.Count > 2 && parts[2] switch
    {
        "clockOffByMin" => true,
        "settings" => true,
        "readings" => parts[^1] == "value" && ReadingKey.Parse(parts[3]) is { } key && TestCatalogue.Find(key.Test, state.Firm)?.MayBeNegative == true,
        "probes" => state.Firm.System(state.Site.Code, parts[1])?.Probes.FirstOrDefault(p => p.Code == parts[3])?.Of == Domain.Sites.ProbeKind.Orp,
        _ => false,
    };

    private static string Code(UnreadField unread) => unread.Reading?.Kind switch
    {
        NumberReadingKind.Ask => "ask-number",
        NumberReadingKind.TooManyDigits => "too-many-digits",
        null => "not-a-time",
        _ => "not-a-number",
    };

    private static string Message(FormState state, UnreadField unread) => state.T(
        unread.Reading?.Kind switch
        {
            NumberReadingKind.Ask => EntryTexts.Answer,
            NumberReadingKind.TooManyDigits => EntryTexts.TooManyDigits,
            null => EntryTexts.NotATime,
            _ => EntryTexts.NotANumber,
        },
        state.Name(unread.Key),
        unread.Text);
}
