using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Settings;

/// <summary>Which lines of a re-entry sheet a finding belongs to, by what it is about.</summary>
public static class SettingSubjects
{
    /// <summary>The group a finding stands beside.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="system">Its system.</param>
    /// <param name="about">What the finding is about, or null for the whole system.</param>
    /// <returns>
    /// The feed of its output, drum or pump, or the feed that its probe controls; the bleed for its output and for the conductivity probe. Null
    /// where it is about none of the lines: such a finding concerns the sheet as a whole.
    /// </returns>
    public static ReEntryGroup? GroupOf(ReEntrySheet sheet, WaterSystem system, About? about)
    {
        if (about is null)
        {
            return null;
        }

        var outputs = OutputsOf(sheet.Programme, system, about);
        var drivesBleed = system.Outputs.Any(output => output.Drives == OutputDrives.Bleed && outputs.Contains(output.Code));
        var kind = about.Probe is null ? null : system.Probes.FirstOrDefault(probe => FeedParts.Same(probe.Code, about.Probe))?.Of;
        return sheet.Groups.FirstOrDefault(group => group.Output is { } output
            ? outputs.Contains(output)
            : group.Purpose is SettingPurpose.Bleed or SettingPurpose.Limits && (drivesBleed || kind == ProbeKind.Conductivity));
    }

    private static HashSet<string> OutputsOf(Programme? programme, WaterSystem system, About about)
    {
        var outputs = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var feeds = (programme?.Feeds ?? []).Select(feed => (Feed: feed, Output: ProgrammeSettings.OutputOf(feed, system))).Where(pair => pair.Output is not null).ToList();
        if (about.Output is { } own)
        {
            outputs.Add(own);
        }

        if (about.Pump is { } pump)
        {
            outputs.UnionWith(system.Pumps.Where(one => FeedParts.Same(one.Code, pump)).Select(one => one.Output));
        }

        // A drum with two pumps: the pump tells which of them is meant.
        if (about.Drum is { } drum && outputs.Count == 0)
        {
            outputs.UnionWith(feeds.Where(pair => FeedParts.Same(pair.Feed.Drum, drum)).Select(pair => pair.Output!));
            outputs.UnionWith(system.Pumps.Where(one => FeedParts.Same(one.Drum, drum)).Select(one => one.Output));
        }

        if (about.Probe is { } probe && system.Probes.FirstOrDefault(one => FeedParts.Same(one.Code, probe))?.Of is { } kind)
        {
            outputs.UnionWith(feeds.Where(pair => (pair.Feed.Mode, kind) is (FeedMode.ByOrp, ProbeKind.Orp) or (FeedMode.ByPh, ProbeKind.Ph)).Select(pair => pair.Output!));
        }

        return outputs;
    }
}
