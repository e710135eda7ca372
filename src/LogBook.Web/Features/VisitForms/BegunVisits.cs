using LogBook.Domain.History;
using LogBook.Domain.Sites;
using LogBook.Entry.Drafts;

namespace LogBook.Web.Features.VisitForms;

/// <summary>Visits that somebody has begun at a site and not finished.</summary>
/// <param name="Firm">Set-up as the viewer sees it.</param>
/// <param name="Site">The site.</param>
/// <param name="Current">The one to go on with, because it was left a short while ago; null where none was.</param>
/// <param name="Visits">All, latest first.</param>
public sealed record BegunVisits(FirmSetUp Firm, Site Site, Guid? Current, IReadOnlyList<BegunVisit> Visits)
{
    /// <summary>All but the one whose form is open.</summary>
    /// <param name="open">Its identity.</param>
    /// <returns>The others.</returns>
    public BegunVisits Without(Guid? open) => this with { Visits = [.. Visits.Where(visit => visit.Draft.Id != open)] };
}

/// <summary>A visit that was begun.</summary>
/// <param name="Draft">What was entered.</param>
/// <param name="KeptAt">Last save, UTC.</param>
public sealed record BegunVisit(VisitDraft Draft, DateTime KeptAt);
