using LogBook.Entry.Drafts;

namespace LogBook.Entry.Plans;

/// <summary>How a test is read: as a number, by drops, by comparing colours, or not at all.</summary>
public static class ReadingMode
{
    /// <summary>Method of the record for a colour comparison.</summary>
    public const string Comparator = "colour comparison";

    /// <summary>The mode in which a test stands: as chosen, else a number where one was typed, else as last time.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="group">Key of the reading.</param>
    /// <param name="usual">How it was read last time.</param>
    /// <returns>"drops", "comparator", "notQuantifiable", "notTaken", or none for a number.</returns>
    public static string Of(VisitDraft draft, string group, string usual) => draft.Text(DraftKey.Under(group, "mode")) switch
    {
        "number" => string.Empty,
        { Length: > 0 } chosen => chosen,
        _ => draft.Text(DraftKey.Under(group, "value")).Length > 0 ? string.Empty : usual,
    };
}
