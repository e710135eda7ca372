namespace LogBook.Application.Visits.Review;

/// <summary>What of the waiting visits is asked for.</summary>
/// <param name="Technician">Code; null for all.</param>
/// <param name="OnlyDrawn">Only those drawn for a closer look.</param>
/// <param name="WithOlder">Those from before the period too.</param>
/// <param name="Page">Page from 1.</param>
public sealed record ReviewFilter(string? Technician = null, bool OnlyDrawn = false, bool WithOlder = false, int Page = 1);
