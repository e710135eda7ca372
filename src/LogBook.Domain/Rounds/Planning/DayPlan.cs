namespace LogBook.Domain.Rounds.Planning;

/// <summary>Who goes where on a day, and in which order. A site stands in it once; each act gives a new plan.</summary>
/// <remarks>The one record of assignments by day: whoever hands a day to somebody else hands over what stands here.</remarks>
/// <param name="Day">The day, in the zone of each site.</param>
public sealed record DayPlan(DateOnly Day)
{
    private static readonly StringComparer Codes = StringComparer.OrdinalIgnoreCase;

    /// <summary>Stops; those of one person stand in the order in which they are to be made.</summary>
    public IReadOnlyList<PlannedStop> Stops { get; init => field = value ?? []; } = [];

    /// <summary>Orders that people gave to stops which nobody planned; null where nobody did.</summary>
    public IReadOnlyList<HandOrder>? ByHand { get; init; }

    /// <summary>Place of an unplanned stop in the order of a person.</summary>
    /// <param name="person">Code of the person.</param>
    /// <param name="site">Code of the site.</param>
    /// <returns>From 0; null where the person gave it no place.</returns>
    public int? PlaceByHand(string person, string site)
    {
        var sites = OrderOf(person);
        for (var place = 0; place < sites.Count; place++)
        {
            if (Codes.Equals(sites[place], site))
            {
                return place;
            }
        }

        return null;
    }

    /// <summary>Moves an unplanned stop among those it is shown with. Planned stops stay as they are.</summary>
    /// <param name="person">Code of the person whose round it is.</param>
    /// <param name="shown">Codes of the sites it is shown with, in their order of now, itself among them.</param>
    /// <param name="site">Code of the site.</param>
    /// <param name="steps">Below 0 for earlier, above 0 for later; it stays among them.</param>
    /// <returns>The plan; the same one where it cannot move.</returns>
    public DayPlan Arrange(string person, IReadOnlyList<string> shown, string site, int steps)
    {
        var order = shown.Distinct(Codes).ToList();
        var from = order.FindIndex(code => Codes.Equals(code, site));
        var to = Math.Clamp(from + steps, 0, Math.Max(0, order.Count - 1));
        if (from < 0 || from == to)
        {
            return this;
        }

        var moved = order[from];
        order.RemoveAt(from);
        order.Insert(to, moved);
        var others = (ByHand ?? []).Where(one => !Codes.Equals(one.Person, person));
        return this with { ByHand = [.. others, new HandOrder(person, [.. OrderOf(person).Where(code => !order.Contains(code, Codes)), .. order])] };
    }

    private IReadOnlyList<string> OrderOf(string person) => (ByHand ?? []).FirstOrDefault(one => Codes.Equals(one.Person, person))?.Sites ?? [];

    /// <summary>Stops of a person, in order.</summary>
    /// <param name="person">Code.</param>
    /// <returns>The stops.</returns>
    public IReadOnlyList<PlannedStop> Of(string person) => [.. Stops.Where(stop => Codes.Equals(stop.Person, person))];

    /// <summary>The stop at a site, or null.</summary>
    /// <param name="site">Code.</param>
    /// <returns>The stop.</returns>
    public PlannedStop? At(string site) => Stops.FirstOrDefault(stop => Codes.Equals(stop.Site, site));

    /// <summary>Puts a site on a person's day, behind what stands there; takes it off whoever had it.</summary>
    /// <param name="site">Code of the site.</param>
    /// <param name="person">Code of the person.</param>
    /// <returns>The plan; the same one where nothing changes.</returns>
    public DayPlan Assign(string site, string person) => At(site) is { } standing && Codes.Equals(standing.Person, person)
        ? this
        : this with { Stops = [.. Without(site), new PlannedStop(site, person)] };

    /// <summary>Takes a site off the day.</summary>
    /// <param name="site">Code of the site.</param>
    /// <returns>The plan; the same one where it did not stand in it.</returns>
    public DayPlan TakeOff(string site) => At(site) is null ? this : this with { Stops = [.. Without(site)] };

    /// <summary>Moves a stop within its person's day.</summary>
    /// <param name="site">Code of the site.</param>
    /// <param name="steps">Below 0 for earlier, above 0 for later; it stays within the day.</param>
    /// <returns>The plan; the same one where it cannot move.</returns>
    public DayPlan Move(string site, int steps)
    {
        if (At(site) is not { } moved)
        {
            return this;
        }

        var own = Of(moved.Person).ToList();
        var from = own.IndexOf(moved);
        var to = Math.Clamp(from + steps, 0, own.Count - 1);
        if (from == to)
        {
            return this;
        }

        own.RemoveAt(from);
        own.Insert(to, moved);
        return this with { Stops = [.. Stops.Where(stop => !Codes.Equals(stop.Person, moved.Person)), .. own] };
    }

    /// <summary>Hands all stops of a person to another, behind what stands there, in their order.</summary>
    /// <param name="from">Code of whose stops they are.</param>
    /// <param name="to">Code of who takes over.</param>
    /// <param name="byThemselves">Whether the person whose stops they are hands them over, and may take them back.</param>
    /// <returns>The plan; the same one where there is nothing to hand over.</returns>
    public DayPlan HandOver(string from, string to, bool byThemselves = false) => Codes.Equals(from, to)
        ? this
        : Moved(Of(from), stop => stop with { Person = to, HandedBy = byThemselves ? from : null });

    /// <summary>Stops that a person handed over and that still stand with who took them.</summary>
    /// <param name="person">Code of who handed over.</param>
    /// <returns>The stops, in order.</returns>
    public IReadOnlyList<PlannedStop> HandedBy(string person) => [.. Stops.Where(stop => Codes.Equals(stop.HandedBy, person))];

    /// <summary>Gives a person the stops back that they handed over, behind what stands there, in their order.</summary>
    /// <param name="person">Code of who handed over.</param>
    /// <returns>The plan; the same one where there is nothing to take back.</returns>
    public DayPlan TakeBack(string person) => Moved(HandedBy(person), stop => stop with { Person = person, HandedBy = null });

    private DayPlan Moved(IReadOnlyList<PlannedStop> stops, Func<PlannedStop, PlannedStop> change) => stops.Count == 0
        ? this
        : this with { Stops = [.. Stops.Except(stops), .. stops.Select(change)] };

    private IEnumerable<PlannedStop> Without(string site) => Stops.Where(stop => !Codes.Equals(stop.Site, site));
}
