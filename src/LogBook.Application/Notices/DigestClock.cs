using LogBook.Application.Clocks;
using LogBook.Application.DueLists;
using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Notices;

/// <summary>A clock that ends today or has ended.</summary>
/// <param name="Day">Last day in time, at the site.</param>
/// <param name="Words">What is asked for.</param>
internal sealed record DigestClock(DateOnly Day, Said Words)
{
    private static readonly Text Tell = new("tell the authority ({0}) by {1} {2}", "avisar a la autoridad ({0}) hasta el {1} {2}", "avisar a autoridade ({0}) até {1} {2}");
    private static readonly Text Send = new("summary promised by {0}", "resumen prometido para el {0}", "resumo prometido para {0}");

    /// <summary>What of a site has come to its end: every clock of the round (visit, tests, tasks, retests, drums, promised days), and those of the office. Findings are told elsewhere.</summary>
    /// <param name="site">The site with its reasons.</param>
    /// <param name="office">Clocks that no visit meets, of any site.</param>
    public static DigestSite? Of(SiteDueRow site, IEnumerable<ClockLine> office)
    {
        // An authority that must be told comes before all: its time is counted in hours.
        var told = office.Where(line => line.Site.Equals(site.Code, StringComparison.OrdinalIgnoreCase)).Select(Of).OrderBy(line => line.IsSummary).ThenBy(line => line.Clock.Day).Where(line => line.Clock.Day <= site.Today).ToList();
        DigestClock[] clocks =
        [
            .. told.Where(line => !line.IsSummary).Select(line => line.Clock),
            .. site.Reasons.Where(reason => reason.Kind != DueKind.Finding && reason.Day <= site.Today).Select(reason => new DigestClock(reason.Day, reason.Words))
                .Concat(told.Where(line => line.IsSummary).Select(line => line.Clock)).OrderBy(clock => clock.Day),
        ];
        return clocks.Length == 0 ? null : new DigestSite(site.Code, site.Name, site.Today, clocks);
    }

    private static (bool IsSummary, DigestClock Clock) Of(ClockLine line)
    {
        var zone = TimeZoneInfo.FindSystemTimeZoneById(line.TimeZone);

        // What ends with a day ends at the first moment of the next.
        var day = SitesQuery.DayIn(zone, line.Clock.Due.AddTicks(-1));
        var wall = TimeZoneInfo.ConvertTimeFromUtc(line.Clock.Due, zone);
        return line.Clock.Kind == DutyKind.Summary
            ? (true, new DigestClock(day, new Said(Send, day)))
            : (false, new DigestClock(day, new Said(Tell, line.Rule?.Name ?? line.Clock.Rule ?? "–", DateOnly.FromDateTime(wall), wall.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture))));
    }
}
