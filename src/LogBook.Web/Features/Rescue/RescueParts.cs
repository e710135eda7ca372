using LogBook.Application.Rescue;

namespace LogBook.Web.Features.Rescue;

/// <summary>Which of the files that a tablet wrote at once were taken in on this page.</summary>
public sealed class RescueParts
{
    private readonly Dictionary<(string? Tablet, DateTimeOffset? WrittenAt, int Of), SortedSet<int>> _taken = [];

    /// <summary>All of a file was taken in.</summary>
    public void TakeIn(RescueFile file)
    {
        if (!_taken.TryGetValue(KeyOf(file), out var parts))
        {
            _taken[KeyOf(file)] = parts = [];
        }

        parts.Add(file.Part);
    }

    /// <summary>Numbers of the files written with this one that were not taken in yet; this one among them until it is.</summary>
    public IReadOnlyList<int> Missing(RescueFile file) => [.. Enumerable.Range(1, file.Of).Except(_taken.GetValueOrDefault(KeyOf(file)) ?? [])];

    private static (string? Tablet, DateTimeOffset? WrittenAt, int Of) KeyOf(RescueFile file) => (file.Tablet, file.WrittenAt, file.Of);
}
