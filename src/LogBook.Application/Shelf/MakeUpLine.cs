using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Domain.Estimates;

namespace LogBook.Application.Shelf;

/// <summary>One test of the make-up of one system against its own past.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="System">Code of the system.</param>
/// <param name="SystemName">Its name.</param>
/// <param name="Test">Code of the test.</param>
/// <param name="ReadOn">Day of the newest reading at the site.</param>
/// <param name="Visit">Its visit.</param>
/// <param name="Now">The newest reading.</param>
/// <param name="Usual">Median of the system's own normal.</param>
/// <param name="Spread">Standard deviation of the own normal.</param>
/// <param name="Against">Newest reading against the own normal, %; oldest first the newest ones before it and itself.</param>
/// <param name="Finding">The open finding that the make-up has changed; null where there is none.</param>
/// <param name="Explained">The newest one against the own normal, with the readings that this rests on.</param>
public sealed record MakeUpLine(
    string Site,
    string SiteName,
    string System,
    string SystemName,
    string Test,
    DateOnly ReadOn,
    Guid Visit,
    Estimate Now,
    double Usual,
    double Spread,
    IReadOnlyList<Estimate> Against,
    FindingKey? Finding,
    HistoryFigure Explained);
