using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Exchange;

/// <summary>Issues being collected, with their paths and in one language.</summary>
internal sealed class IssueList(Language language)
{
    private readonly List<Issue> _issues = [];

    /// <summary>Language of the messages.</summary>
    public Language Language => language;

    /// <summary>What was collected.</summary>
    public IReadOnlyList<Issue> Issues => _issues;

    /// <summary>Something that must be corrected.</summary>
    public void Block(string path, string code, Text text, params object?[] values) => _issues.Add(new Issue(path, code, text.In(language, values)));

    /// <summary>Something to be read again.</summary>
    public void Ask(string path, Text text, params object?[] values) =>
        _issues.Add(new Issue(path, "value-suspect", text.In(language, values), Blocks: false));

    /// <summary>A code that nothing in the document or the known set-up has.</summary>
    public void Unknown(string path, string code, Text expected) =>
        Block(path, "unknown-code", CheckTexts.UnknownCode, Leaf(path), code, expected);

    /// <summary>Adds issues found elsewhere.</summary>
    public void AddRange(IEnumerable<Issue> issues) => _issues.AddRange(issues);

    /// <summary>Last name of a path, for messages.</summary>
    public static string Leaf(string path) => path[(path.LastIndexOf('.') + 1)..];
}
