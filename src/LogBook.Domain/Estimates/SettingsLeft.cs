using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>A setting as it was last read.</summary>
/// <param name="Name">Name of the setting.</param>
/// <param name="Value">Its value.</param>
/// <param name="Unit">Unit as entered, or null.</param>
/// <param name="On">Visit at which it was read.</param>
internal readonly record struct LastSetting(string Name, SettingValue Value, string? Unit, VisitFacts On);

/// <summary>Settings of the controller as the visits left them: carried on from visit to visit, so that nobody reads all of them again.</summary>
internal static class SettingsLeft
{
    /// <summary>Newest value of every setting as left at a visit and at those before it.</summary>
    public static LastSetting[] After(VisitFacts visit) => Over(visit.Record.Settings, visit, visit.Previous?.SettingsLeft ?? [], setting => setting.Left ?? setting.Found);

    /// <summary>Newest value of every setting as a visit found it: what it read itself, else as it was left before.</summary>
    public static LastSetting[] FoundAt(VisitFacts visit) => Over(visit.Record.Settings, visit, visit.Previous?.SettingsLeft ?? [], setting => setting.Found ?? setting.Left);

    private static LastSetting[] Over(IReadOnlyList<SettingReading> read, VisitFacts visit, LastSetting[] before, Func<SettingReading, SettingValue?> valueOf)
    {
        if (read.Count == 0)
        {
            return before;
        }

        // In the order of before, so that the same controller gives the same order at every visit.
        var last = new List<LastSetting>(before.Length + read.Count);
        last.AddRange(before);
        for (var i = 0; i < read.Count; i++)
        {
            if (read[i].NotRead == true || valueOf(read[i]) is not { } value)
            {
                continue;
            }

            var at = IndexOf(last, read[i].Name, i);
            if (at < 0)
            {
                last.Add(new LastSetting(read[i].Name, value, read[i].Unit, visit));
            }
            else if (last[at].On != visit)
            {
                last[at] = new LastSetting(read[i].Name, value, read[i].Unit, visit);
            }
        }

        return [.. last];
    }

    // Sheets list the settings in one order: it most often stands where it stood.
    private static int IndexOf(List<LastSetting> last, string name, int likely)
    {
        if (likely < last.Count && last[likely].Name.Equals(name, StringComparison.OrdinalIgnoreCase))
        {
            return likely;
        }

        for (var i = 0; i < last.Count; i++)
        {
            if (last[i].Name.Equals(name, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return -1;
    }
}
