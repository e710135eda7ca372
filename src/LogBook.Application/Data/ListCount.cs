using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Data;

/// <summary>How many there are in a list that grows with every visit. A count walks through what it counts, so it stops at a limit and says so.</summary>
/// <param name="Known">How many were counted, at most <see cref="Most"/>.</param>
/// <param name="IsMore">Whether there are more than those.</param>
public readonly record struct ListCount(int Known, bool IsMore = false)
{
    /// <summary>Where counting stops.</summary>
    public const int Most = 1000;

    /// <summary>Counts a list in its order.</summary>
    internal static async Task<ListCount> OfAsync<T>(IOrderedQueryable<T> list, CancellationToken cancellationToken)
    {
        var counted = await list.Take(Most + 1).CountAsync(cancellationToken);
        return new ListCount(Math.Min(counted, Most), counted > Most);
    }
}
