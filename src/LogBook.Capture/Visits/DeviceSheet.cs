using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Capture.Visits;

/// <summary>What a device holds of a site.</summary>
/// <param name="Firm">Set-up of the firm, with this one site.</param>
/// <param name="Site">The site.</param>
/// <param name="Previous">Its last visits, latest last.</param>
internal sealed record DeviceSheet(FirmSetUp Firm, Site Site, IReadOnlyList<Visit> Previous)
{
    /// <summary>Reads a sheet. What the server wrote is not judged again: a visit that it keeps may be older than today's rules.</summary>
    /// <param name="json">Exchange document; null when the device holds none.</param>
    /// <param name="site">Code of the site.</param>
    /// <param name="settings">Thresholds in force; the defaults when null.</param>
    /// <returns>Null when the site is not on the device.</returns>
    public static DeviceSheet? Read(string? json, string site, EngineSettings? settings = null)
    {
        if (json is null)
        {
            return null;
        }

        var document = ExchangeReader.Parse<ExchangeDocument>(json);
        var firm = new FirmSetUp(document) { Engine = settings ?? EngineSettings.Default };
        return firm.Sites.GetValueOrDefault(site) is { } found ? new(firm, found, [.. document.Visits.OrderBy(visit => visit.Arrived.Utc)]) : null;
    }
}
