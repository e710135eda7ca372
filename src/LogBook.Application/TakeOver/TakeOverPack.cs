using LogBook.Application.DueLists;
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
    IReadOnlyList<(Guid Id, string Of)> Photos);
