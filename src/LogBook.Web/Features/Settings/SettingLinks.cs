using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Settings;

/// <summary>Where a finding about settings, doses or holds leads.</summary>
public static class SettingLinks
{
    /// <summary>The pages that help with a finding; none where none does.</summary>
    public static IReadOnlyList<(string Address, Text Says)> Of(FindingKey key, Finding finding) => key is not { Site: { } site, System: { } system } ? [] : finding.Kind switch
    {
        FindingKinds.SettingsLost =>
        [
            (ReadingLinks.ReEntry(site, system, finding.FirstSeen.AddDays(-1)), SettingsTexts.ToReEntry),
            (ReadingLinks.Settings(site, system, finding.FirstSeen), SettingsTexts.ToSettings),
        ],
        FindingKinds.SettingsChanged or FindingKinds.ControllerClock => [(ReadingLinks.Settings(site, system, finding.FirstSeen), SettingsTexts.ToSettings)],
        FindingKinds.DosePlanClash or FindingKinds.DoseMissed or FindingKinds.DoseUntreated or FindingKinds.HoldTooLong or FindingKinds.LabelExceeded => [(ReadingLinks.DosePlan(site, system), Calculators.CalcTexts.Title)],
        _ => [],
    };
}
