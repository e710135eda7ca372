using LogBook.Domain.Programmes;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;

namespace LogBook.Entry.State;

/// <summary>Where on the form a field stands.</summary>
public static class FieldPlaces
{
    /// <summary>System and step of a field.</summary>
    /// <param name="state">The form.</param>
    /// <param name="key">Key of the field.</param>
    /// <returns>Index of the system and the step.</returns>
    public static (int System, EntryStep Step) Of(FormState state, string key)
    {
        var parts = DraftKey.Parts(key);
        if (parts[0] == DraftKey.Visit)
        {
            return (state.SystemIndex, parts.Count > 1 ? OfVisit(parts[1], state) : EntryStep.Close);
        }

        var system = state.Plans.ToList().FindIndex(p => parts.Count > 1 && p.System.Code == parts[1]);
        if (system < 0 || parts.Count < 3)
        {
            return (state.SystemIndex, state.Step);
        }

        return (system, state.Plans[system].RecordOnly && parts[2] != "actions" ? EntryStep.Sheet : OfSystem(parts));
    }

    private static EntryStep OfVisit(string field, FormState state) => field switch
    {
        "kind" or "arrived" or "reason" or "notes" or "also" or "technician" or "photos" =>
            state.Plan?.Steps.Contains(EntryStep.Arrive) == true ? EntryStep.Arrive : EntryStep.Sheet,
        "samples" => EntryStep.Samples,
        "cleaning" => EntryStep.Tower,
        _ => EntryStep.Close,
    };

    /// <summary>Step of a field of a system.</summary>
    /// <param name="parts">Parts of its key.</param>
    /// <returns>The step.</returns>
    public static EntryStep OfSystem(IReadOnlyList<string> parts) => parts[2] switch
    {
        "running" or "inUse" => EntryStep.Arrive,
        "readings" => parts.Count > 3 && ReadingKey.Parse(parts[3])?.Test is TestCodes.DipSlide or TestCodes.ColonyCount or TestCodes.Legionella ? EntryStep.Samples : EntryStep.Water,
        "probes" => parts[^1] == "asFound" || parts.Count == 4 ? EntryStep.Controller : EntryStep.Reference,
        "meters" or "drums" or "pumps" or "drawdowns" or "bleedTest" => EntryStep.Stock,
        "observations" or "events" => EntryStep.Tower,
        "additions" => EntryStep.Adjust,
        "switches" or "settings" => parts[^1] == "found" ? EntryStep.Controller : EntryStep.Adjust,
        "actions" or "ranges" => EntryStep.Close,
        _ => EntryStep.Controller,
    };
}
