namespace LogBook.Application.History;

/// <summary>Which system a page is about.</summary>
public sealed record SystemHeading(string SiteCode, string SiteName, string SystemCode, string SystemName, string TimeZone);
