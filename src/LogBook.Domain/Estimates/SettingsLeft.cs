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
    public static LastSetting[] FoundAt(VisitFacts visit) => LeftAsFound(visit.Record.Settings) ? visit.SettingsLeft : Over(visit.Record.Settings, visit, visit.Previous?.SettingsLeft ?? [], setting => setting.Found ?? setting.Left);

    private static bool LeftAsFound(IReadOnlyList<SettingReading> read)
    {
        for (var i = 0; i < read.Count; i++)
        {
            if (read[i] is { Found: { } found, Left: { } left } && !ReferenceEquals(found, left))
            {
                return false;
            }
        }

        return true;
    }

    private static LastSetting[] Over(IReadOnlyList<SettingReading> read, VisitFacts visit, LastSetting[] before, Func<SettingReading, SettingValue?> valueOf)
    {
        if (read.Count == 0)
        {
            return before;
        }

        // In the order of before, so that the same controller gives the same order at every visit.
        var last = new LastSetting[before.Length + NewOnes(read, before)];
        before.CopyTo(last, 0);
        var count = before.Length;
        for (var i = 0; i < read.Count; i++)
        {
            if (read[i].NotRead == true || valueOf(read[i]) is not { } value)
            {
                continue;
            }

            var at = IndexOf(last.AsSpan(0, count), read[i].Name, i);
            if (at < 0)
            {
                at = count++;
            }

            if (last[at].On != visit)
            {
                last[at] = new LastSetting(read[i].Name, value, read[i].Unit, visit);
            }
        }

        return count == last.Length ? last : last[..count];
    }

    // At most: one that stands twice on a sheet or was not read leaves room.
    private static int NewOnes(IReadOnlyList<SettingReading> read, LastSetting[] before)
    {
        var count = 0;
        for (var i = 0; i < read.Count; i++)
        {
            count += IndexOf(before, read[i].Name, i) < 0 ? 1 : 0;
        }

        return count;
    }

    // Sheets list the settings in one order: it most often stands where it stood.
    private static int IndexOf(ReadOnlySpan<LastSetting> last, string name, int likely)
    {
        if (likely < last.Length && last[likely].Name.Equals(name, StringComparison.OrdinalIgnoreCase))
        {
            return likely;
        }

        for (var i = 0; i < last.Length; i++)
        {
            if (last[i].Name.Equals(name, StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return -1;
    }
}
