using LogBook.Domain.Clocks;

namespace LogBook.Application.Clocks;

/// <summary>Which clocks are asked for; kept in the address.</summary>
/// <param name="Site">Code of a site.</param>
/// <param name="Person">Code of the technician whose round it is on.</param>
/// <param name="Rule">Code of a rule.</param>
/// <param name="Kind">What sets it running.</param>
/// <param name="Standing">Where it stands; null for all that is not met.</param>
/// <param name="Page">Page, from 1.</param>
public sealed record ClocksFilter(string? Site = null, string? Person = null, string? Rule = null, DutyKind? Kind = null, ClockStanding? Standing = null, int Page = 1);
