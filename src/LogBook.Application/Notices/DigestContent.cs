using LogBook.Application.DueLists;
using LogBook.Application.Reviews;

namespace LogBook.Application.Notices;

/// <summary>What a person's day brings.</summary>
/// <param name="Day">The day.</param>
/// <param name="New">Findings of yesterday and today that want an act or a plan.</param>
/// <param name="Open">All that are open.</param>
/// <param name="Due">Sites with a clock of any kind that ends today or has ended, by the most urgent one.</param>
/// <param name="ToReview">Visits that wait for a review; 0 for whoever does not review.</param>
/// <param name="Conflicts">Visits that came twice; 0 for whoever does not review.</param>
/// <param name="MailStuck">Messages to customers that were given up; 0 for whoever does not review.</param>
internal sealed record DigestContent(
    DateOnly Day, IReadOnlyList<AttentionRow> New, SeverityCounts Open, IReadOnlyList<DigestSite> Due, int ToReview, int Conflicts, int MailStuck)
{
    /// <summary>New findings that are told one by one.</summary>
    public const int MostNew = 20;

    /// <summary>Whether there is nothing to tell.</summary>
    public bool IsEmpty => New.Count == 0 && Open.Total == 0 && Due.Count == 0 && ToReview + Conflicts + MailStuck == 0;
}
