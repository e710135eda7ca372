using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>What was typed and cannot stand in the visit, because something beside it is missing: it would be lost without a word.</summary>
internal static class UnfinishedPoints
{
    public static IEnumerable<OpenPoint> Of(FormState state) => state.Build.Unfinished.Select(record =>
    {
        var (system, step) = FieldPlaces.Of(state, record.Missing);
        var words = state.T(StepTexts.OpenUnfinished, state.Name(record.Missing), state.Name(record.Typed), state.Draft.Text(record.Typed).Trim());
        return new OpenPoint("unfinished", words, record.Missing, system, step);
    });
}
