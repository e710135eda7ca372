using LogBook.Application.Reviews;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Settings;

/// <summary>Where a finding about settings, doses or holds leads.</summary>
public static class SettingLinks
{
    /// <summary>The page that helps with a finding; null where none does.</summary>
    public static (string Address, Text Says)? Of(FindingKey key, Finding finding) => key is not { Site: { } site, System: { } system } ? null : finding.Kind switch
    {
        FindingKinds.SettingsLost => (ReadingLinks.ReEntry(site, system, finding.FirstSeen.AddDays(-1)), SettingsTexts.ToReEntry),
        FindingKinds.SettingsChanged or FindingKinds.ControllerClock => (ReadingLinks.Settings(site, system, finding.FirstSeen), SettingsTexts.ToSettings),
        FindingKinds.DosePlanClash or FindingKinds.DoseMissed or FindingKinds.DoseUntreated or FindingKinds.HoldTooLong or FindingKinds.LabelExceeded => (ReadingLinks.DosePlan(site, system), Calculators.CalcTexts.Title),
        _ => null,
    };
}
