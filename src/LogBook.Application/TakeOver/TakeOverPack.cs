using LogBook.Application.DueLists;
using LogBook.Application.Planning;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;

namespace LogBook.Application.TakeOver;

/// <summary>What a technician wants to know of a site who was never there.</summary>
/// <param name="Card">Address, access, contacts, systems, what is open.</param>
/// <param name="Technician">Whose round it is on; null where nobody's.</param>
/// <param name="Products">Names of products by code.</param>
/// <param name="From">First day of the story.</param>
/// <param name="Story">What happened since, newest first.</param>
/// <param name="Untold">Lines of the story that are left out, the oldest ones.</param>
/// <param name="Notes">What technicians wrote down, newest first, the same words once.</param>
/// <param name="Photos">Newest pictures: identity and place.</param>
public sealed record TakeOverPack(
    SiteCard Card,
    Person? Technician,
    IReadOnlyDictionary<string, string> Products,
    DateOnly From,
    IReadOnlyList<TakeOverLine> Story,
    int Untold,
    IReadOnlyList<TakeOverNote> Notes,
    IReadOnlyList<(Guid Id, string Of)> Photos)
{
    /// <summary>The moment now.</summary>
    public required DateTime Now { get; init; }

    /// <summary>Why nobody can go in today; null where nothing says so.</summary>
    public DaysOff? ClosedToday { get; init; }

    /// <summary>All sites of the technician and who is proposed for them; null for whoever may not hand them over.</summary>
    public PatchOffer? Patch { get; init; }
}
