using LogBook.Domain.Sites;
using LogBook.Web.Features.Review;

namespace LogBook.Web.Components.Layout;

/// <summary>
/// The sections in the order of the day of the person who uses them. On a narrow screen the first ones stand at the bottom,
/// the rest behind "More".
/// </summary>
public static class NavigationEntries
{
    /// <summary>How many stand at the bottom of a narrow screen.</summary>
    public const int AtTheBottom = 4;

    private static readonly PersonRole[] Firm = [PersonRole.Technician, PersonRole.Supervisor, PersonRole.Administrator];
    private static readonly PersonRole[] Keepers = [PersonRole.Supervisor, PersonRole.Administrator];
    private static readonly PersonRole[] All = [.. Firm, PersonRole.Customer, PersonRole.SiteStaff];

    private static readonly NavigationEntry Round = new("/", FrameTexts.TodaysRound, true, Firm);
    private static readonly NavigationEntry Attention = new("/attention", FrameTexts.NeedsAttention, false, Firm);

    private static readonly NavigationEntry[] Rest =
    [
        new("/round/plan", FrameTexts.Plan, false, Keepers),
        new("/sites", FrameTexts.Sites, false, All),
        new("/visits", FrameTexts.Visits, false, All),
        new("/review", ReviewPageTexts.Title, false, Keepers),
        new("/clocks", FrameTexts.Clocks, false, Firm),
        new("/shelf", FrameTexts.Shelf, false, Firm),
        new("/round/leave", FrameTexts.Leave, false, Firm),
        new("/setup", FrameTexts.SetUp, false, Keepers),
        new("/mail", FrameTexts.Mail, false, Keepers),
        new("/people", FrameTexts.People, false, [PersonRole.Administrator]),
        new("/tokens", FrameTexts.Tokens, false, Firm),
    ];

    /// <summary>Sections of a role.</summary>
    public static IReadOnlyList<NavigationEntry> For(PersonRole role)
    {
        NavigationEntry[] first = role == PersonRole.Technician ? [Round, Attention] : [Attention, Round];
        return [.. first.Concat(Rest).Where(entry => entry.Roles.Contains(role))];
    }

    /// <summary>Where a person of a role begins.</summary>
    public static string FirstPage(PersonRole role) => For(role)[0].Path;
}
