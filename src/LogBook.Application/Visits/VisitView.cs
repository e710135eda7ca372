using LogBook.Application.History;
using LogBook.Application.Reviews;

namespace LogBook.Application.Visits;

/// <summary>Everything of a visit.</summary>
/// <param name="Row">What the list shows.</param>
/// <param name="TimeZone">IANA name of the site's zone.</param>
/// <param name="SystemNames">Names of the site's systems by code.</param>
/// <param name="Versions">Latest first; a customer sees the latest only.</param>
/// <param name="Findings">Findings first seen at this visit; none for a customer.</param>
/// <param name="Figures">Figures that end with this visit.</param>
/// <param name="Photos">Photos named by the visit, and whether the picture is here.</param>
/// <param name="ReviewedBy">Who reviewed it.</param>
/// <param name="ReviewedAt">When, UTC.</param>
/// <param name="VoidedBy">Who declared it void.</param>
/// <param name="VoidedAt">When, UTC.</param>
/// <param name="VoidedWhy">Why.</param>
/// <param name="MovedFrom">Code of the site that the document names, where the visit was moved.</param>
/// <param name="RowVersion">Version of the record, for changes that must not overwrite another's.</param>
public sealed record VisitView(
    VisitRowView Row,
    string TimeZone,
    IReadOnlyDictionary<string, string> SystemNames,
    IReadOnlyList<VisitVersionView> Versions,
    IReadOnlyList<AttentionRow> Findings,
    IReadOnlyList<(string System, HistoryFigure Figure)> Figures,
    IReadOnlyList<(Guid Id, string Of, bool IsHere)> Photos,
    string? ReviewedBy,
    DateTime? ReviewedAt,
    string? VoidedBy,
    DateTime? VoidedAt,
    string? VoidedWhy,
    string? MovedFrom,
    int RowVersion);
