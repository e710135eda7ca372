using LogBook.Domain.History;

namespace LogBook.Web.Features.SetUp;

/// <summary>Days as they are counted at a site.</summary>
internal static class SiteDays
{
    /// <summary>Today at a site; in UTC where the site is not known.</summary>
    public static DateOnly Today(FirmSetUp firm, string site, TimeProvider clock)
    {
        var zone = firm.Sites.TryGetValue(site, out var known) && TimeZoneInfo.TryFindSystemTimeZoneById(known.TimeZone, out var found) ? found : TimeZoneInfo.Utc;
        return DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(clock.GetUtcNow(), zone).DateTime);
    }
}
