using LogBook.Domain.Visits;

namespace LogBook.Entry.Drafts;

/// <summary>A visit made of a draft.</summary>
/// <param name="Visit">Everything that could be read.</param>
/// <param name="Unread">Fields whose text is no value yet.</param>
/// <param name="Unfinished">Records that were begun and are not in the visit.</param>
/// <param name="KeyByPath">Field of the draft for each path of the visit, as in "systems[0].readings[2].value".</param>
public sealed record DraftBuild(Visit Visit, IReadOnlyList<UnreadField> Unread, IReadOnlyList<UnfinishedRecord> Unfinished, IReadOnlyDictionary<string, string> KeyByPath)
{
    /// <summary>The field that an issue is about.</summary>
    /// <param name="path">Path in the visit, or in a document whose first visit it is.</param>
    /// <returns>Key of the field or of its group, or null.</returns>
    public string? KeyOf(string path)
    {
        const string first = "visits[0].";
        var rest = path.StartsWith(first, StringComparison.Ordinal) ? path[first.Length..] : path;
        while (rest.Length > 0)
        {
            if (KeyByPath.TryGetValue(rest, out var key))
            {
                return key;
            }

            rest = rest[..Math.Max(0, rest.LastIndexOf('.'))];
        }

        return null;
    }
}
