using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>One setting at one visit.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="On">Its day in the site's zone.</param>
/// <param name="Technician">Who read it.</param>
/// <param name="Found">As found; null where only what was left was written down.</param>
/// <param name="Left">As left.</param>
/// <param name="Before">As it was last left before, where <paramref name="WhileAway"/>; otherwise null.</param>
/// <param name="WhileAway">Found otherwise than it was last left: changed while nobody was here.</param>
/// <param name="Unit">Unit the controller shows.</param>
/// <param name="Reason">Why it was changed at the visit.</param>
public sealed record SettingStep(
    Guid Visit, DateOnly On, string Technician, SettingValue? Found, SettingValue? Left, SettingValue? Before, bool WhileAway, string? Unit, string? Reason)
{
    /// <summary>Left otherwise than found: changed at the visit.</summary>
    public bool ChangedHere => Found is not null && Left is not null && Found != Left;
}
