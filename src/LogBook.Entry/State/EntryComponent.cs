using LogBook.Domain.Languages;
using LogBook.Entry.Drafts;
using Microsoft.AspNetCore.Components;

namespace LogBook.Entry.State;

/// <summary>A part of the form.</summary>
public abstract class EntryComponent : ComponentBase
{
    /// <summary>What the parts share.</summary>
    [CascadingParameter]
    public FormState State { get; set; } = default!;

    /// <summary>A wording in the form's language.</summary>
    /// <param name="text">The wording.</param>
    /// <param name="values">Values for its places.</param>
    /// <returns>The finished text.</returns>
    protected string T(Text text, params object?[] values) => State.T(text, values);

    /// <summary>Identifier of a field on the page.</summary>
    /// <param name="key">Key of the field.</param>
    /// <returns>The identifier.</returns>
    protected static string Id(string key) => DraftKey.ElementId(key);
}
