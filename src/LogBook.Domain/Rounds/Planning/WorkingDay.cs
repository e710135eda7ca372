namespace LogBook.Domain.Rounds.Planning;

/// <summary>Which day it is for somebody whose sites may lie in several time zones.</summary>
public static class WorkingDay
{
    /// <summary>The day at most of the sites; of two that are as many the earlier, which hides nothing that is still to be done.</summary>
    /// <param name="daysAtSites">The day it is at each site, in its own zone.</param>
    /// <returns>Null without sites.</returns>
    public static DateOnly? Of(IEnumerable<DateOnly> daysAtSites) => daysAtSites.GroupBy(day => day)
        .OrderByDescending(group => group.Count()).ThenBy(group => group.Key)
        .Select(group => (DateOnly?)group.Key).FirstOrDefault();
}
