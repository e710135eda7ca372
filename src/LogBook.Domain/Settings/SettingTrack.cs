using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>One setting over time.</summary>
/// <param name="Name">Name in the exchange format.</param>
/// <param name="Programme">What the programme in force on the day asks; null where it says nothing.</param>
/// <param name="Unit">Unit of the last reading, else of the programme.</param>
/// <param name="Steps">Readings up to the day, oldest first; empty where it was never read.</param>
public sealed record SettingTrack(string Name, SettingValue? Programme, string? Unit, IReadOnlyList<SettingStep> Steps)
{
    /// <summary>As last left, or null where it was never read.</summary>
    public SettingValue? Now => Steps.Count == 0 ? null : Steps[^1].Left ?? Steps[^1].Found;

    /// <summary>Steps at which the value changed, here or while nobody was here, with the first one.</summary>
    public IEnumerable<SettingStep> Changes => Steps.Where((step, i) => i == 0 || step.WhileAway || step.ChangedHere);
}
