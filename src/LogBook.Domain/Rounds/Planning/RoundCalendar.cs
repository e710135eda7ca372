namespace LogBook.Domain.Rounds.Planning;

/// <summary>On which days who can go where: leave of people, days on which the firm or a site is closed.</summary>
/// <remarks>
/// It only proposes. The day of a clock never moves: what falls due on a closed day is proposed for an open day before it, and where none is
/// left, for the next one after, late as that is. A person may plan otherwise.
/// </remarks>
/// <param name="all">All days off that are on record.</param>
public sealed class RoundCalendar(IEnumerable<DaysOff> all)
{
    private static readonly StringComparer Codes = StringComparer.OrdinalIgnoreCase;

    // Beyond this nobody is planned; a site that is closed for longer is not proposed at all.
    private const int FarthestDays = 2 * DaysOff.MostDays;

    private readonly ILookup<string, DaysOff> _people = Of(all, DaysOffKind.Person);
    private readonly ILookup<string, DaysOff> _lent = Of(all, DaysOffKind.Lent);
    private readonly ILookup<string, DaysOff> _sites = Of(all, DaysOffKind.Site);
    private readonly List<DaysOff> _firm = [.. all.Where(off => off.Kind == DaysOffKind.Firm)];

    /// <summary>Nobody is away and nothing is closed.</summary>
    public static RoundCalendar Empty { get; } = new([]);

    /// <summary>Why nobody of the firm works on a day; null where it is open.</summary>
    /// <param name="day">The day.</param>
    public DaysOff? FirmClosed(DateOnly day) => _firm.Find(off => off.Holds(day));

    /// <summary>Why a site cannot be visited on a day, the firm's own days included; null where it can.</summary>
    /// <param name="site">Code of the site.</param>
    /// <param name="day">The day.</param>
    public DaysOff? Closed(string site, DateOnly day) => _sites[site].FirstOrDefault(off => off.Holds(day)) ?? FirmClosed(day);

    /// <summary>Why a person is away on a day; null where the person is there.</summary>
    /// <param name="person">Code of the person.</param>
    /// <param name="day">The day.</param>
    public DaysOff? Away(string person, DateOnly day) => _people[person].FirstOrDefault(off => off.Holds(day));

    /// <summary>Sites of a person that go to a colleague on a day though the person is there; null where they do not.</summary>
    /// <param name="person">Code of the site's own technician.</param>
    /// <param name="site">Code of the site.</param>
    /// <param name="day">The day.</param>
    /// <returns>What was handed over last, where two spans hold the site.</returns>
    public DaysOff? Lent(string person, string site, DateOnly day) =>
        _lent[person].LastOrDefault(off => off.Holds(day) && (off.Sites.Count == 0 || off.Sites.Contains(site, Codes)));

    /// <summary>Who goes on a day where a person would: the person, the colleague to whom the site is lent, or who stands in.</summary>
    /// <param name="person">Code of the site's own technician; null where it has none.</param>
    /// <param name="day">The day.</param>
    /// <param name="site">Code of the site; null where no single site is meant, so that nothing lent counts.</param>
    /// <returns>Code; null where whoever would go is away and nobody who is there stands in.</returns>
    public string? WhoGoes(string? person, DateOnly day, string? site = null) =>
        Present(person is not null && site is not null && Lent(person, site, day) is { } lent ? lent.StandIn : person, day);

    /// <summary>People some or all of whose sites somebody goes to on a day.</summary>
    /// <param name="person">Code of who stands in.</param>
    /// <param name="day">The day.</param>
    /// <returns>Codes of those who are away, or whose sites are lent; which sites, <see cref="WhoGoes"/> tells.</returns>
    public IReadOnlyList<string> StandsInFor(string person, DateOnly day) =>
    [
        .. _people.Select(group => group.Key).Where(other => Away(other, day) is not null && Codes.Equals(Present(other, day), person))
            .Concat(_lent.SelectMany(group => group).Where(off => off.Holds(day) && Codes.Equals(Present(off.StandIn, day), person)).Select(off => off.Of!))
            .Where(other => !Codes.Equals(other, person)).Distinct(Codes),
    ];

    /// <summary>Day for which a visit is proposed: the last open day up to the due day, from today on; else the next open one.</summary>
    /// <param name="site">Code of the site.</param>
    /// <param name="due">Day by which somebody should be there.</param>
    /// <param name="today">Day at the site.</param>
    /// <returns>The day; null where the site is closed for longer than anybody plans.</returns>
    public DateOnly? ProposedFor(string site, DateOnly due, DateOnly today)
    {
        var wanted = due < today ? today : due;
        for (var day = wanted; day >= today && day >= wanted.AddDays(-FarthestDays); day = day.AddDays(-1))
        {
            if (Closed(site, day) is null)
            {
                return day;
            }
        }

        for (var day = wanted.AddDays(1); day <= wanted.AddDays(FarthestDays); day = day.AddDays(1))
        {
            if (Closed(site, day) is null)
            {
                return day;
            }
        }

        return null;
    }

    // Who stands in may be away too, and name somebody again; round in a circle nobody goes.
    private string? Present(string? person, DateOnly day)
    {
        var asked = new HashSet<string>(Codes);
        var goes = person;
        while (goes is not null && Away(goes, day) is { } away)
        {
            goes = asked.Add(goes) ? away.StandIn : null;
        }

        return goes;
    }

    private static ILookup<string, DaysOff> Of(IEnumerable<DaysOff> all, DaysOffKind kind) =>
        all.Where(off => off.Kind == kind && off.Of is not null).OrderBy(off => off.From).ToLookup(off => off.Of!, Codes);
}
