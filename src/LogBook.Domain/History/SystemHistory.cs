using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.History;

/// <summary>Set-up, programmes and visits of one system: all that an assessment reads. Missing is missing.</summary>
public sealed class SystemHistory
{
    /// <summary>Makes a history.</summary>
    /// <param name="firm">The firm's set-up.</param>
    /// <param name="site">The site.</param>
    /// <param name="system">The system.</param>
    /// <param name="visits">Visits in any order; kept by arrival, then by id.</param>
    public SystemHistory(FirmSetUp firm, Site site, WaterSystem system, IEnumerable<SystemVisit> visits)
    {
        Firm = firm;
        Site = site;
        System = system;
        Zone = TimeZoneInfo.FindSystemTimeZoneById(site.TimeZone);
        Visits = [.. visits.OrderBy(v => v.At).ThenBy(v => v.Visit.Id)];
        Programmes = [.. system.Programmes.OrderBy(p => p.From)];
    }

    /// <summary>The firm's set-up.</summary>
    public FirmSetUp Firm { get; }

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>The system.</summary>
    public WaterSystem System { get; }

    /// <summary>The site's time zone.</summary>
    public TimeZoneInfo Zone { get; }

    /// <summary>Visits by arrival.</summary>
    public IReadOnlyList<SystemVisit> Visits { get; }

    /// <summary>Programmes by first day.</summary>
    public IReadOnlyList<Programme> Programmes { get; }

    /// <summary>Day in the site's zone.</summary>
    /// <param name="utc">UTC.</param>
    /// <returns>The local day.</returns>
    public DateOnly DayOf(DateTime utc) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(utc, Zone));

    /// <summary>Programme in force on a day.</summary>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>The last programme that begins on or before the day, or null.</returns>
    public Programme? ProgrammeOn(DateOnly day) => Programmes.LastOrDefault(p => p.From <= day);
}
