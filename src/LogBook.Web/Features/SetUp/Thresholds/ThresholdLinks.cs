namespace LogBook.Web.Features.SetUp.Thresholds;

/// <summary>Addresses of the pages of thresholds and uncertainties.</summary>
public static class ThresholdLinks
{
    /// <summary>The list, of the firm or of one system ("YAF-1/CT-1").</summary>
    public static string List(string? place = null) => SetUpLinks.Overview + "/thresholds" + (place is null ? "" : "?for=" + Uri.EscapeDataString(place));

    /// <summary>One setting.</summary>
    public static string One(string code, string? place) =>
        SetUpLinks.Overview + "/thresholds/record?code=" + Uri.EscapeDataString(code) + (place is null ? "" : "&for=" + Uri.EscapeDataString(place));

    /// <summary>Site and system of a place; both null for the firm.</summary>
    public static (string? Site, string? System) PlaceOf(string? place) => place?.Split('/', 2) is [var site, var system] ? (site, system) : (null, null);
}
