using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>A result that asks for action: it lies outside its range or reaches a limit of counts.</summary>
/// <param name="About">Sample point and test, as actions and reasons name it.</param>
/// <param name="Reading">The result.</param>
/// <param name="Place">Above or below.</param>
/// <param name="Range">The range that it lies outside of; null where it only reaches the limit.</param>
/// <param name="Limit">The limit of counts that it reaches, or null.</param>
public sealed record OutsideRange(string About, Reading Reading, RangePlace Place, TestRange? Range, CountLimit? Limit)
{
    /// <summary>Asks whether a result calls for action.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <param name="reading">The result.</param>
    /// <param name="visit">The visit that it belongs to.</param>
    /// <returns>Where it lies; null inside its range and below every limit.</returns>
    public static OutsideRange? Of(FormState state, SystemPlan plan, Reading reading, Visit visit)
    {
        var range = plan.Programme?.Ranges.FirstOrDefault(r => r.At == reading.At && r.Test == reading.Test);
        var place = Ranges.Place(reading, range);
        var limit = CountLimit.ReachedBy(state.Firm, plan.System, plan.Programme, reading, DateOnly.FromDateTime((reading.TakenAt ?? visit.Arrived).Wall));
        var about = $"{reading.At}/{reading.Test}";
        return place is { IsOutside: true } ? new OutsideRange(about, reading, place, range, limit)
            : limit is not null ? new OutsideRange(about, reading, Ranges.AtLimit, null, limit)
            : null;
    }

    /// <summary>Name of the test at its point.</summary>
    /// <param name="state">The form.</param>
    /// <returns>As in "Dip slide, tower water".</returns>
    public string Name(FormState state) => state.T(FieldNames.OfTest(new ReadingKey(Reading.At, Reading.Test, null), state.Firm));

    /// <summary>The result, where it lies, and what the rule says of it.</summary>
    /// <param name="state">The form.</param>
    /// <returns>A sentence.</returns>
    public string Words(FormState state) => this switch
    {
        { Limit: { Rule: { } rule } limit } => state.T(StepTexts.InBand, Name(state), Value(state), state.Shows(limit.From, limit.Unit), rule.Name, limit.Says).TrimEnd(),
        { Range: { } range } => state.T(StepTexts.OutOfRange, Name(state), Value(state), state.T(Place.Words), Ranges.Words(range, state.Language)),
        { Limit: { } limit } => state.T(StepTexts.AtLimit, Name(state), Value(state), state.Shows(limit.From, limit.Unit)),
        _ => Name(state),
    };

    private string Value(FormState state) => state.Shows(RangeJudgement.NumberOf(Reading)!.Value, Reading.Unit, Reading.Qualifier);
}
