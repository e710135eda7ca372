using LogBook.Application.Reviews;
using LogBook.Application.Visits;
using LogBook.Domain.Sites;

namespace LogBook.Application.DueLists;

/// <summary>A site with what somebody wants to know before going there.</summary>
/// <param name="Site">The site.</param>
/// <param name="CustomerName">Its customer.</param>
/// <param name="Contacts">People at the customer; none for a viewer who is not of the firm.</param>
/// <param name="Systems">Systems in use.</param>
/// <param name="Due">Last visit and next due; null where the site is no longer served.</param>
/// <param name="LastVisits">Latest first.</param>
/// <param name="Findings">Open findings; none for a viewer who is not of the firm.</param>
/// <param name="Actions">Actions left open at the last visits looked through.</param>
/// <param name="Recommendations">Recommendations not answered yet.</param>
public sealed record SiteCard(
    Site Site,
    string CustomerName,
    IReadOnlyList<Contact> Contacts,
    IReadOnlyList<WaterSystem> Systems,
    SiteDueRow? Due,
    IReadOnlyList<VisitRowView> LastVisits,
    IReadOnlyList<AttentionRow> Findings,
    IReadOnlyList<OpenAction> Actions,
    IReadOnlyList<OpenRecommendation> Recommendations);
