using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;

namespace LogBook.Entry.Cautions;

/// <summary>Cautions that belong to an act the person notes, shown when it is chosen.</summary>
public static class ActCautions
{
    /// <summary>The act to which a field belongs: a set-point and a switch are two, two set-points of a system are one.</summary>
    /// <param name="key">Key of a field, row or list.</param>
    /// <returns>The part of the key that names the system and what is done there.</returns>
    public static string ActOf(string key)
    {
        var parts = DraftKey.Parts(key);
        return DraftKey.Of([.. parts.Take(parts[0] == DraftKey.Systems ? 3 : 2)]);
    }

    /// <summary>Cautions of an event.</summary>
    /// <param name="type">The event.</param>
    /// <param name="plan">The system.</param>
    /// <returns>Cautions, the graver first; common practice which act needs which, no source.</returns>
    public static IReadOnlyList<Caution> Of(EventType type, SystemPlan plan) => type switch
    {
        EventType.Drained or EventType.Refilled or EventType.Cleaned => [Caution.Basin, Caution.WaterOut],
        EventType.Disinfected => [Caution.Basin, Caution.Biocide],
        EventType.StrainerCleaned => [Caution.OpenedLine, Caution.Basin],
        EventType.PumpRenewed or EventType.ValveRenewed or EventType.ProbeCleaned => [Caution.OpenedLine],
        EventType.Started or EventType.Stopped => NoFlow(plan),
        _ => [],
    };

    /// <summary>Cautions of a kind of visit.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="plan">The system.</param>
    /// <returns>Cautions.</returns>
    public static IReadOnlyList<Caution> Of(VisitKind kind, SystemPlan plan) => kind == VisitKind.StartUp ? NoFlow(plan) : [];

    /// <summary>Cautions of a setting that is left otherwise.</summary>
    /// <param name="name">Name of the setting in the record.</param>
    /// <returns>Cautions, the graver first.</returns>
    public static IReadOnlyList<Caution> OfSetting(string name) => name == "setPointUsPerCm" ? [Caution.Switches, Caution.HigherCycles] : [Caution.Switches];

    /// <summary>Cautions of a system in which nothing flows, or that is about to start.</summary>
    /// <param name="plan">The system.</param>
    /// <returns>One where something may feed into it, else none.</returns>
    public static IReadOnlyList<Caution> NoFlow(SystemPlan plan) =>
        plan.System.Pumps.Count > 0 || plan.System.Outputs.Any(o => o.Drives == OutputDrives.Feed) || plan.Programme?.Feeds.Count > 0 ? [Caution.NoFlow] : [];
}
