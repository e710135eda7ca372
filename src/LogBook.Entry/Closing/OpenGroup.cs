using System.Globalization;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>What a step of one system still waits for of what each visit reads: one line with its number, left open by one reason.</summary>
/// <param name="System">Index of the system.</param>
/// <param name="Step">The step.</param>
/// <param name="Points">Its points, in the order of the form.</param>
public sealed record OpenGroup(int System, EntryStep Step, IReadOnlyList<OpenPoint> Points)
{
    // Two lines are read as fast as one that stands for them.
    private const int Least = 3;

    /// <summary>Groups among what is open.</summary>
    /// <param name="state">The form.</param>
    /// <param name="open">What is open.</param>
    /// <returns>Groups of three points or more, and smaller ones that have their reason, in the order of the form.</returns>
    public static IReadOnlyList<OpenGroup> Of(FormState state, IEnumerable<OpenPoint> open) =>
    [
        .. open.Where(p => p.OfEachVisit).GroupBy(p => (p.System, p.Step))
            .Select(g => new OpenGroup(g.Key.System, g.Key.Step, [.. g]))
            .Where(g => g.Points.Count >= Least || g.Reason(state).Length > 0)
            .OrderBy(g => g.System).ThenBy(g => g.Step),
    ];

    /// <summary>Field of the reason why it stays open.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Its key.</returns>
    public string ReasonKey(FormState state) => DraftKey.Of(DraftKey.Systems, state.Plans[System].System.Code, "leftOpen", Step.ToString(), "reason");

    /// <summary>Why it stays open.</summary>
    /// <param name="state">The form.</param>
    /// <returns>The reason; empty where none was given.</returns>
    public string Reason(FormState state) => state.Draft.Text(ReasonKey(state)).Trim();

    /// <summary>The group in one line.</summary>
    /// <param name="state">The form.</param>
    /// <returns>As in "Controller as found: 14 open".</returns>
    public string Words(FormState state) => $"{state.T(WordsOf.Step(Step))}: {state.T(EntryTexts.OpenCount, Points.Count.ToString(CultureInfo.InvariantCulture))}";
}
