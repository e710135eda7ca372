using LogBook.Domain.History;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Phrases;

namespace LogBook.Web.Features.VisitForms;

/// <summary>What the visit form is shown with.</summary>
/// <param name="Firm">Set-up as the viewer sees it.</param>
/// <param name="Site">The site.</param>
/// <param name="Previous">Its last visits, oldest first.</param>
/// <param name="Draft">The draft.</param>
/// <param name="DraftVersion">Version of the kept draft; 0 when it is not kept yet.</param>
/// <param name="Phrases">Quick phrases: the firm's own and the built-in ones.</param>
public sealed record VisitSheet(FirmSetUp Firm, Site Site, IReadOnlyList<Visit> Previous, VisitDraft Draft, int DraftVersion, PhraseBook Phrases)
{
    /// <summary>Actions that no visit of the site has closed, also those of visits older than the last ones.</summary>
    public IReadOnlyList<StandingAction> Standing { get; init; } = [];

    /// <summary>Whether the visit that the draft amends has another version by now.</summary>
    public bool IsOutdated { get; init; }
}
