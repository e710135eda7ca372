using System.Collections.Concurrent;
using LogBook.Domain.Clocks;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.History;

/// <summary>Set-up, programmes and visits of one system: all that an assessment reads. Missing is missing.</summary>
public sealed class SystemHistory
{
    private static readonly TowerTests NoTowerTests = TowerTests.Of(FirmSetUp.Empty, null);

    private readonly ConcurrentDictionary<(string Test, string At, ReadingSource? Source), int> _series = new(SameSeries.Instance);
    private readonly ConcurrentDictionary<Programme, TowerTests> _towerTests = new(ReferenceEqualityComparer.Instance);
    private int _lastSeries;

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
        Versions = Visits;
        Programmes = [.. system.Programmes.OrderBy(p => p.From)];
        (Drums, Pumps, Outputs, Meters) = ([.. system.Drums], [.. system.Pumps], [.. system.Outputs], [.. system.Meters]);
        (DrumCodes, PumpedDrums, MakeUpMeters, BleedMeters) = (Codes(Drums.Select(drum => drum.Code)), Codes(Pumps.Select(pump => pump.Drum)), MetersOf(MeterMeasures.MakeUp), MetersOf(MeterMeasures.Bleed));
        ProgrammesFromUtc = [.. Programmes.Select(programme => MidnightUtc(programme.From))];
        Doses = new DoseCalendars(Zone);
        RuleCalendar = new RuleCalendar(system.Rules, firm.Rules);
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

    /// <summary>Every version of every visit, by moment of knowledge, id and version; what a replay reads.</summary>
    public IReadOnlyList<SystemVisit> Versions { get; private init; }

    /// <summary>What authorities were told of its results.</summary>
    public IReadOnlyList<Notification> Notifications { get; init; } = [];

    /// <summary>Programmes by first day.</summary>
    public IReadOnlyList<Programme> Programmes { get; }

    /// <summary>Drums of the set-up, as an array: facts and rules walk through it at every visit.</summary>
    internal Drum[] Drums { get; }

    /// <summary>Pumps of the set-up, likewise.</summary>
    internal Pump[] Pumps { get; }

    /// <summary>Outputs of the set-up, likewise.</summary>
    internal Output[] Outputs { get; }

    /// <summary>Meters of the set-up, likewise.</summary>
    internal Meter[] Meters { get; }

    /// <summary>Codes of the drums, each once: one that was renewed stands several times in the set-up.</summary>
    internal string[] DrumCodes { get; }

    /// <summary>Codes of the drums that a pump draws from, each once.</summary>
    internal string[] PumpedDrums { get; }

    /// <summary>Codes of the meters of the make-up, each once.</summary>
    internal string[] MakeUpMeters { get; }

    /// <summary>Codes of the meters of the bleed, each once.</summary>
    internal string[] BleedMeters { get; }

    /// <summary>Moments at which the programmes begin, UTC: midnight of their first day, or the hour after where the clocks skip it.</summary>
    internal DateTime[] ProgrammesFromUtc { get; }

    /// <summary>Subjects of its findings.</summary>
    internal Subjects Subjects { get; } = new();

    /// <summary>Calendar doses.</summary>
    internal DoseCalendars Doses { get; }

    /// <summary>Rules of authorities and contracts by day.</summary>
    internal RuleCalendar RuleCalendar { get; }

    /// <summary>Tests for which a programme has a range.</summary>
    /// <param name="programme">The programme, or null.</param>
    internal TowerTests TowerTestsOf(Programme? programme)
    {
        if (programme is null)
        {
            return NoTowerTests;
        }

        return _towerTests.TryGetValue(programme, out var tests) ? tests : _towerTests.GetOrAdd(programme, TowerTests.Of(Firm, programme));
    }

    /// <summary>Number of the series a reading belongs to: the same for the same test, point and source, case not counted; it means nothing else.</summary>
    internal int SeriesOf(Reading reading)
    {
        var key = (reading.Test, reading.At, reading.Source);
        return _series.TryGetValue(key, out var series) ? series : _series.GetOrAdd(key, Interlocked.Increment(ref _lastSeries));
    }

    /// <summary>Makes the history of a system from a firm's visits.</summary>
    /// <param name="firm">The firm's set-up, which holds the site and the system.</param>
    /// <param name="siteCode">Code of the site.</param>
    /// <param name="systemCode">Code of the system.</param>
    /// <param name="visits">Visits of any site in any order, in every version that is kept; those without the system are left out.</param>
    /// <param name="notifications">What authorities were told of results of the system; none when null.</param>
    /// <returns>The history: latest versions as <see cref="Visits"/>, all of them as <see cref="Versions"/>.</returns>
    /// <exception cref="ArgumentException">The firm has no such site or system.</exception>
    public static SystemHistory From(FirmSetUp firm, string siteCode, string systemCode, IEnumerable<Visit> visits, IReadOnlyList<Notification>? notifications = null)
    {
        var site = firm.Sites.GetValueOrDefault(siteCode) ?? throw new ArgumentException($"No site {siteCode}.", nameof(siteCode));
        var system = firm.System(siteCode, systemCode) ?? throw new ArgumentException($"No system {systemCode} at {siteCode}.", nameof(systemCode));
        var versions = visits
            .Where(visit => visit.Site.Equals(siteCode, StringComparison.OrdinalIgnoreCase))
            .Select(visit => (visit, record: visit.Systems.FirstOrDefault(s => s.System.Equals(systemCode, StringComparison.OrdinalIgnoreCase))))
            .Where(pair => pair.record is not null)
            .Select(pair => new SystemVisit(pair.visit, pair.record!))
            .OrderBy(version => version.KnownFrom).ThenBy(version => version.Visit.Id).ThenBy(version => version.Visit.Version ?? 1)
            .DistinctBy(version => (version.Visit.Id, version.Visit.Version ?? 1))
            .ToList();
        var latest = versions.GroupBy(version => version.Visit.Id).Select(all => all.MaxBy(version => version.Visit.Version ?? 1)!);
        return new SystemHistory(firm.For(siteCode, systemCode), site, system, latest) { Versions = versions, Notifications = notifications ?? [] };
    }

    /// <summary>The history as it was known at a moment: later amendments and later results are not in it.</summary>
    /// <param name="moment">UTC.</param>
    /// <returns>A history that holds only what was known.</returns>
    public SystemHistory AsKnownAt(DateTime moment)
    {
        var known = Versions
            .Where(version => version.KnownFrom <= moment)
            .GroupBy(version => version.Visit.Id)
            .Select(all => all.MaxBy(version => version.Visit.Version ?? 1)!.AsKnownAt(moment));
        return new SystemHistory(Firm, Site, System, known) { Versions = [.. Versions.Where(version => version.KnownFrom <= moment)], Notifications = [.. Notifications.Where(note => note.At <= moment)] };
    }

    /// <summary>Day in the site's zone.</summary>
    /// <param name="utc">UTC.</param>
    /// <returns>The local day.</returns>
    public DateOnly DayOf(DateTime utc) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(utc, Zone));

    /// <summary>Programme in force on a day.</summary>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>The last programme that begins on or before the day, or null.</returns>
    public Programme? ProgrammeOn(DateOnly day) => Programmes.LastOrDefault(p => p.From <= day);

    private DateTime MidnightUtc(DateOnly day)
    {
        var midnight = day.ToDateTime(TimeOnly.MinValue);
        return TimeZoneInfo.ConvertTimeToUtc(Zone.IsInvalidTime(midnight) ? midnight.AddHours(1) : midnight, Zone);
    }

    private static string[] Codes(IEnumerable<string> codes) => [.. codes.Distinct(StringComparer.OrdinalIgnoreCase)];

    private string[] MetersOf(MeterMeasures measures) => Codes(Meters.Where(meter => meter.Measures == measures).Select(meter => meter.Code));

    private sealed class SameSeries : IEqualityComparer<(string Test, string At, ReadingSource? Source)>
    {
        public static readonly SameSeries Instance = new();

        public bool Equals((string Test, string At, ReadingSource? Source) x, (string Test, string At, ReadingSource? Source) y) =>
            x.Source == y.Source && FeedParts.Same(x.Test, y.Test) && FeedParts.Same(x.At, y.At);

        public int GetHashCode((string Test, string At, ReadingSource? Source) obj) =>
            HashCode.Combine(obj.Test.GetHashCode(StringComparison.OrdinalIgnoreCase), obj.At.GetHashCode(StringComparison.OrdinalIgnoreCase), obj.Source);
    }
}
