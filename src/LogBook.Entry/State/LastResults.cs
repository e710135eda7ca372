using LogBook.Domain.Programmes;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.Texts;

namespace LogBook.Entry.State;

/// <summary>What a test read last time, in words; shown once today's result stands, so that it leads nobody.</summary>
internal static class LastResults
{
    /// <summary>The last result of a test.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <param name="test">The test.</param>
    /// <returns>As in "95 mg/L", or null where it was never read.</returns>
    public static string? Words(FormState state, SystemPlan plan, ReadingKey test) => plan.LastOf(test) is not { Reading: var last }
        ? null
        : RangeJudgement.NumberOf(last) is { } value
            ? state.Shows(value, last.Unit, last.Qualifier)
            : state.T(StepTexts.ModeNotQuantifiable);
}
