using System.Globalization;
using LogBook.Application.Reviews;

namespace LogBook.Web.Features;

/// <summary>Addresses of the pages that are read: the one place where they are put together.</summary>
public static class ReadingLinks
{
    public const string Attention = "/attention";

    /// <summary>What LogBook suspects of instruments, lots and records.</summary>
    public const string SecondLook = Attention + "/second-look";

    public const string Sites = "/sites";

    public const string Visits = "/visits";

    public const string Clocks = "/clocks";

    /// <summary>Record of a system's probes and of the hand meters they are compared with; at the row of a visit where one is given.</summary>
    public static string Probes(string site, string system, Guid? visit = null, string? part = null) => $"{Site(site)}/systems/{Escape(system)}/probe" + Row(visit, part);

    /// <summary>Feeds of a system that follow a display, at the row of a visit.</summary>
    public static string ByDisplay(string site, string system, Guid visit) => Probes(site, system, visit, LogBook.Web.Features.Records.Sought.Displays);

    /// <summary>Record of a system's water meters; at the row of a visit where one is given.</summary>
    public static string Meters(string site, string system, Guid? visit = null, string? part = null) => $"{Site(site)}/systems/{Escape(system)}/meters" + Row(visit, part);

    /// <summary>Record of a system's feed pumps; at the row of a visit where one is given.</summary>
    public static string Pumps(string site, string system, Guid? visit = null, string? part = null) => $"{Site(site)}/systems/{Escape(system)}/pumps" + Row(visit, part);

    public const string Shelf = "/shelf";

    public const string MakeUpWatch = Shelf + "/make-up";

    /// <summary>Drums of a site.</summary>
    public static string ShelfOf(string site) => Shelf + Query(("site", site));

    /// <summary>Make-up of a site against its own past.</summary>
    public static string MakeUpOf(string site) => MakeUpWatch + Query(("site", site));

    /// <summary>The reorder list.</summary>
    public static string ShelfOrder(string? site, string? person, string? product) => $"{Shelf}/order" + Query(("site", site), ("person", person), ("product", product));

    /// <summary>The reorder list as a table for a spreadsheet.</summary>
    public static string ShelfTable(string? site, string? person, string? product) => $"{Shelf}/order.csv" + Query(("site", site), ("person", person), ("product", product));

    /// <summary>Clocks of a site with its newest counts.</summary>
    public static string ClocksOf(string site) => $"{Site(site)}/clocks";

    /// <summary>What a technician is told who takes a site over.</summary>
    public static string TakeOver(string site) => $"{Site(site)}/take-over";

    /// <summary>A site.</summary>
    public static string Site(string code) => $"{Sites}/{Escape(code)}";

    /// <summary>The history of a system.</summary>
    public static string History(string site, string system, DateOnly? from = null, DateOnly? to = null, IEnumerable<string>? show = null) =>
        $"{Site(site)}/systems/{Escape(system)}" + Query(("from", Day(from)), ("to", Day(to)), ("show", show is null ? null : string.Join(',', show)));

    /// <summary>The figures of a system between visits, at the row of one of them.</summary>
    public static string Balance(string site, string system, DateOnly seen, Guid visit) =>
        $"{Site(site)}/systems/{Escape(system)}" + Query(("from", Day(seen.AddDays(-182))), ("to", Day(seen.AddDays(30))), ("show", "figures.bleed-hours,figures.water"), ("visit", visit.ToString())) + "#" + LogBook.Web.Features.Records.Sought.Anchor;

    /// <summary>Systems ("SITE/SYSTEM") on one axis.</summary>
    public static string Compare(DateOnly? from, DateOnly? to, params IEnumerable<string> systems) =>
        "/history/compare" + Query(("systems", string.Join(',', systems)), ("from", Day(from)), ("to", Day(to)));

    /// <summary>The history of a system as a table for a spreadsheet.</summary>
    public static string HistoryTable(string site, string system, DateOnly from, DateOnly to) =>
        $"{Site(site)}/systems/{Escape(system)}/history.csv" + Query(("from", Day(from)), ("to", Day(to)));

    /// <summary>The sheet of the last twelve visits.</summary>
    public static string Sheet(string site, string system) => $"{Site(site)}/systems/{Escape(system)}/sheet";

    /// <summary>Settings of a system then and now.</summary>
    public static string Settings(string site, string system, DateOnly? on = null) => $"{Site(site)}/systems/{Escape(system)}/settings" + Query(("on", Day(on)));

    /// <summary>The re-entry sheet of a system for a day.</summary>
    public static string ReEntry(string site, string system, DateOnly? on = null) => $"{Site(site)}/systems/{Escape(system)}/re-entry" + Query(("on", Day(on)));

    /// <summary>The re-entry sheet as PDF.</summary>
    public static string ReEntryPdf(string site, string system, DateOnly on) => $"{Site(site)}/systems/{Escape(system)}/re-entry.pdf" + Query(("on", Day(on)));

    /// <summary>Calculations and look-ahead of a system.</summary>
    public static string DosePlan(string site, string system) => $"{Site(site)}/systems/{Escape(system)}/dose-plan";

    /// <summary>A finding.</summary>
    public static string Finding(FindingKey key) => $"{Attention}/finding?{key.Query()}";

    /// <summary>Clocks that will run out soon.</summary>
    public static string DuesAhead { get; } = Attention + Query(("kind", Domain.Findings.FindingKinds.ClockDue), ("severity", "watch"));

    /// <summary>Findings of a site.</summary>
    public static string AttentionAt(string site) => Attention + Query(("site", site));

    /// <summary>A visit.</summary>
    public static string Visit(Guid id) => $"{Visits}/{id}";

    /// <summary>Visits that wait for a supervisor.</summary>
    public const string Review = "/review";

    /// <summary>Visits that came twice with different content.</summary>
    public const string Conflicts = Visits + "/conflicts";

    /// <summary>One of them.</summary>
    public static string Conflict(int id) => $"{Conflicts}/{id.ToString(CultureInfo.InvariantCulture)}";

    /// <summary>Visits to a site.</summary>
    public static string VisitsTo(string site) => Visits + Query(("site", site));

    /// <summary>Visits of a person.</summary>
    public static string VisitsBy(string person) => Visits + Query(("technician", person));

    /// <summary>The records of a site.</summary>
    public static string Records(string site, DateOnly? from = null, DateOnly? to = null) => $"{Site(site)}/records" + Query(("from", Day(from)), ("to", Day(to)));

    /// <summary>A record pack that was made.</summary>
    public static string RecordFile(string site, Guid ticket) => $"{Site(site)}/records/{ticket}";

    /// <summary>Starts a visit.</summary>
    public static string NewVisit(string site) => $"/visit/{Escape(site)}";

    /// <summary>Amends a visit.</summary>
    public static string Amend(Guid id) => $"{Visits}/{id}/amend";

    /// <summary>The summary of a visit.</summary>
    public static string Summary(Guid id) => $"{Visits}/{id}/summary";

    /// <summary>A day as it stands in an address.</summary>
    public static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A day from an address; null where it is none, or one that no record can be of (a year while it is being typed).</summary>
    public static DateOnly? ParseDay(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= 1900 and <= 2200 ? day : null;

    private static string Row(Guid? visit, string? part) => visit is { } id ? Query(("visit", id.ToString()), ("part", part)) + "#" + LogBook.Web.Features.Records.Sought.Anchor : "";

    private static string Escape(string text) => Uri.EscapeDataString(text);

    private static string Query(params (string Name, string? Value)[] pairs)
    {
        var given = pairs.Where(pair => !string.IsNullOrEmpty(pair.Value)).Select(pair => $"{pair.Name}={Escape(pair.Value!)}").ToList();
        return given.Count == 0 ? "" : "?" + string.Join('&', given);
    }
}
