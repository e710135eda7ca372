using LogBook.Application.DueLists;

namespace LogBook.Application.Planning;

/// <summary>The plan of a day or a week.</summary>
/// <param name="From">First day.</param>
/// <param name="Today">Today.</param>
/// <param name="Days">Its days.</param>
/// <param name="Open">Sites that are not planned in the period, by their most urgent clock; those without a clock last.</param>
/// <param name="People">Who may be sent: code and name, technicians first.</param>
public sealed record PlanView(DateOnly From, DateOnly Today, IReadOnlyList<PlanDay> Days, IReadOnlyList<SiteDueRow> Open, IReadOnlyList<(string Code, string Name)> People);
