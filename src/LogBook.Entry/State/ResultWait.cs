using LogBook.Domain.History;
using LogBook.Entry.Drafts;

namespace LogBook.Entry.State;

/// <summary>A slide or bottle waits for its result: the result ends the waiting, and emptying its box begins it again.</summary>
internal static class ResultWait
{
    // Tells that the waiting was ended here; holds the time of the result that was put in then, so that only that one is taken back.
    private const string Ended = "waitEnded";

    /// <summary>Box of the first result that is still to come; null where none is.</summary>
    /// <param name="draft">The draft.</param>
    /// <returns>Key of its value.</returns>
    public static string? First(VisitDraft draft)
    {
        const string Waits = "/notTaken";
        return draft.Fields.Where(field => field.Key.EndsWith(Waits, StringComparison.Ordinal) && field.Value.Text == SystemVisit.ResultPending)
            .Select(field => string.Concat(field.Key.AsSpan(0, field.Key.Length - Waits.Length), "/value")).FirstOrDefault();
    }

    /// <summary>Follows a change of the box of a result.</summary>
    /// <param name="draft">The draft, with the change in it.</param>
    /// <param name="key">Key of the changed field; others than the value of a result are left alone.</param>
    /// <param name="clock">Clock of the device.</param>
    public static void Tell(VisitDraft draft, string key, TimeProvider clock)
    {
        var parts = DraftKey.Parts(key);
        if (parts.Count != 5 || parts[2] != "readings" || parts[4] != "value")
        {
            return;
        }

        var group = DraftKey.Of(parts[0], parts[1], parts[2], parts[3]);
        string Under(string name) => DraftKey.Under(group, name);
        if (draft.Text(key).Length > 0 && draft.Text(Under("notTaken")) == SystemVisit.ResultPending)
        {
            var now = SiteTime.At(clock.GetUtcNow(), SiteTime.Zone(draft.TimeZone)).Text;
            var told = draft.Text(Under("resultAt")).Length > 0;
            draft.SetText(Under("mode"), string.Empty);
            draft.SetText(Under("notTaken"), string.Empty);
            draft.SetText(Under(Ended), told ? "told" : now);
            if (!told)
            {
                draft.SetText(Under("resultAt"), now);
            }
        }
        else if (draft.Text(key).Length == 0 && draft.Text(Under(Ended)) is { Length: > 0 } ended)
        {
            draft.SetText(Under(Ended), string.Empty);
            if (draft.Text(Under("resultAt")) == ended)
            {
                draft.SetText(Under("resultAt"), string.Empty);
            }

            // Another way of saying that was chosen since stays.
            if (draft.Text(Under("mode")).Length == 0 && draft.Text(Under("notTaken")).Length == 0)
            {
                draft.SetText(Under("mode"), "notTaken");
                draft.SetText(Under("notTaken"), SystemVisit.ResultPending);
            }
        }
    }
}
