using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Domain.Calculators;
using LogBook.Domain.History;
using LogBook.Domain.Sites;

namespace LogBook.Application.Calculators;

/// <summary>What the page of a dose plan begins with.</summary>
/// <param name="Heading">Site and system.</param>
/// <param name="Site">The site.</param>
/// <param name="Firm">Set-up with products and labels.</param>
/// <param name="Start">Numbers the calculations begin with.</param>
/// <param name="Today">Today in the site's zone.</param>
/// <param name="From">First day of the look-ahead: Monday of this week.</param>
/// <param name="Findings">Open findings about doses, holds and labels.</param>
public sealed record DosePlanView(SystemHeading Heading, Site Site, FirmSetUp Firm, CalculatorStart Start, DateOnly Today, DateOnly From, IReadOnlyList<AttentionRow> Findings);
