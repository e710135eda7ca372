using LogBook.Domain.Languages;

namespace LogBook.Entry.Drafts;

/// <summary>What reading a draft leaves behind besides the visit.</summary>
internal sealed class DraftTrace(Language language)
{
    public Language Language => language;

    public List<UnreadField> Unread { get; } = [];

    public List<UnfinishedRecord> Unfinished { get; } = [];

    public Dictionary<string, string> KeyByPath { get; } = new(StringComparer.Ordinal);

    public void Note(string path, string key) => KeyByPath[path] = key;
}
