using LogBook.Application.DueLists;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Planning;

/// <summary>The plan of a day or a week.</summary>
/// <param name="From">First day.</param>
/// <param name="Today">Today.</param>
/// <param name="Days">Its days.</param>
/// <param name="Open">Sites that are not planned in the period, by their most urgent clock; those without a clock last.</param>
/// <param name="People">Who may be sent: code and name, technicians first.</param>
/// <param name="Calendar">Who is away and what is closed on which days.</param>
public sealed record PlanView(
    DateOnly From, DateOnly Today, IReadOnlyList<PlanDay> Days, IReadOnlyList<SiteDueRow> Open, IReadOnlyList<(string Code, string Name)> People, RoundCalendar Calendar)
{
    /// <summary>Whether somebody of this code may be sent; one who has left may not.</summary>
    public bool Goes(string? person) => People.Any(known => known.Code.Equals(person, StringComparison.OrdinalIgnoreCase));

    /// <summary>Name of whoever has a code; the code itself for one who has left.</summary>
    public string NameOf(string person) => People.FirstOrDefault(known => known.Code.Equals(person, StringComparison.OrdinalIgnoreCase)).Name ?? person;

    /// <summary>Who goes to a site on a day if nobody says otherwise; null where somebody has to be found.</summary>
    public string? WhoGoes(SiteDueRow site, DateOnly day) => Calendar.WhoGoes(site.AssignedTo, day, site.Code) is { } person && Goes(person) ? person : null;

    /// <summary>Codes of the technicians among <see cref="People"/>.</summary>
    public IReadOnlyList<string> Technicians { get; init; } = [];

    /// <summary>
    /// Who is proposed for somebody's day: whoever stands in, where the person is away; else the technician who is there and has the fewest minutes
    /// planned. Only a proposal; a person decides.
    /// </summary>
    /// <param name="day">The day.</param>
    /// <param name="person">Code of who has it.</param>
    /// <returns>Code; null where nobody can be proposed.</returns>
    public string? ProposedFor(PlanDay day, string person)
    {
        ArgumentNullException.ThrowIfNull(day);
        if (Calendar.Away(person, day.Day) is not null && Calendar.WhoGoes(person, day.Day) is { } standsIn && Goes(standsIn))
        {
            return standsIn;
        }

        double Minutes(string code) => day.People.Where(one => one.Person.Equals(code, StringComparison.OrdinalIgnoreCase)).Sum(one => one.Minutes);
        return Technicians.Where(code => !code.Equals(person, StringComparison.OrdinalIgnoreCase) && Calendar.Away(code, day.Day) is null).MinBy(Minutes);
    }

    /// <summary>Day for which a site is proposed; null where it has no clock or is closed for longer than anybody plans.</summary>
    public DateOnly? ProposedFor(SiteDueRow site) => site.UrgentOn is { } due ? Calendar.ProposedFor(site.Code, due, site.Today) : null;
}
