using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>What of the visits is asked for; null means all.</summary>
public sealed record VisitsFilter(string? Site = null, string? Technician = null, VisitKind? Kind = null, DateOnly? From = null, DateOnly? To = null, VisitStateFilter State = VisitStateFilter.Counting, int Page = 1);
