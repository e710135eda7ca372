using LogBook.Domain.Languages;

namespace LogBook.Application.MoveIn;

/// <summary>Asks, unless it is answered already: for the place itself, or for all alike in its column.</summary>
internal sealed class MoveInOpen(MoveInSource source)
{
    public const string Leave = "leave";
    public const string Take = "take";

    private readonly List<MoveInQuestion> _questions = [];

    public IReadOnlyList<MoveInQuestion> Questions => _questions;

    public Language Language => source.Language;

    /// <summary>The answer; null where it is asked now.</summary>
    public string? Ask(string kind, MoveInPlace at, string says, IReadOnlyList<MoveInChoice> choices, bool byColumn = true, bool isFault = false)
    {
        var id = $"{kind}|{at.Sheet}|{at.Address}";
        var columnId = byColumn ? ColumnId(kind, at) : null;
        if (Answered(id, choices) is { } own)
        {
            return own;
        }

        if (columnId is not null && Answered(columnId, choices) is { } all)
        {
            return all;
        }

        _questions.Add(new MoveInQuestion(id, columnId, at.Sheet, at.Address, at.Heading, at.Value, says, choices, isFault));
        return null;
    }

    /// <summary>Asks once for a value that stands in many rows, or for a column as a whole.</summary>
    public string? AskOnce(string id, MoveInPlace at, string address, string says, IReadOnlyList<MoveInChoice> choices)
    {
        if (Answered(id, choices) is { } answer)
        {
            return answer;
        }

        if (!_questions.Exists(question => question.Id == id))
        {
            _questions.Add(new MoveInQuestion(id, null, at.Sheet, address, at.Heading, at.Value, says, choices));
        }

        return null;
    }

    public static string ColumnId(string kind, MoveInPlace at) => $"{kind}|*|{Headings.KeyOf(at.Heading)}";

    public MoveInChoice LeaveChoice => new(Leave, MoveInTexts.LeaveOut.In(source.Language));

    // An answer that the question does not offer any more, after the mapping was changed, is none.
    private string? Answered(string id, IReadOnlyList<MoveInChoice> choices) =>
        source.Answers.TryGetValue(id, out var answer) && choices.Any(choice => choice.Key == answer) ? answer : null;
}
