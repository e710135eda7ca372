using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>A visit in a list.</summary>
/// <param name="Id">Identity.</param>
/// <param name="SiteCode">Code of the site.</param>
/// <param name="SiteName">Name of the site.</param>
/// <param name="Technician">Code of the technician.</param>
/// <param name="Kind">Kind.</param>
/// <param name="Arrived">Wall time at the site.</param>
/// <param name="Minutes">Length; null where the departure is missing.</param>
/// <param name="State">Closed, reviewed or reissued.</param>
/// <param name="CurrentVersion">Version that counts.</param>
/// <param name="IsVoid">Does not count any more.</param>
public sealed record VisitRowView(
    Guid Id,
    string SiteCode,
    string SiteName,
    string Technician,
    VisitKind Kind,
    DateTime Arrived,
    int? Minutes,
    VisitState State,
    int CurrentVersion,
    bool IsVoid)
{
    internal static VisitRowView Of(VisitRow row, string siteCode, string siteName, TimeZoneInfo zone) => new(
        row.VisitId,
        siteCode,
        siteName,
        row.Technician,
        row.Kind,
        TimeZoneInfo.ConvertTimeFromUtc(row.ArrivedAt, zone),
        row.LeftAt is { } left ? (int)Math.Round((left - row.ArrivedAt).TotalMinutes) : null,
        row.State,
        row.CurrentVersion,
        row.VoidedAt is not null);

    /// <summary>Day of arrival at the site.</summary>
    public DateOnly Day => DateOnly.FromDateTime(Arrived);
}
