using LogBook.Application.History;
using LogBook.Domain.Estimates;

namespace LogBook.Application.Shelf;

/// <summary>One drum on the shelf.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="TimeZone">Its zone.</param>
/// <param name="AssignedTo">Technician whose round it is on.</param>
/// <param name="System">Code of the system.</param>
/// <param name="SystemName">Its name.</param>
/// <param name="Drum">Code of the drum.</param>
/// <param name="CapacityL">Brim volume, L.</param>
/// <param name="DeliveryDays">Days from order to delivery.</param>
/// <param name="Product">Code of its product.</param>
/// <param name="ProductName">Name on the label.</param>
/// <param name="Outlook">What it holds for the weeks to come; null where it was never read or its level does not tell.</param>
/// <param name="Visit">Visit that read it last.</param>
/// <param name="NextVisit">Day of the next visit; null where no interval is agreed.</param>
/// <param name="SecondVisit">Day of the visit after it.</param>
/// <param name="Standing">How long it lasts.</param>
/// <param name="SuggestedL">Litres to order so that it lasts until the visit after next, or until an order of the next visit comes where that is later; null where that cannot be told.</param>
public sealed record ShelfLine(
    string Site,
    string SiteName,
    string TimeZone,
    string? AssignedTo,
    string System,
    string SystemName,
    string Drum,
    double? CapacityL,
    double? DeliveryDays,
    string Product,
    string ProductName,
    StockOutlook? Outlook,
    Guid? Visit,
    DateOnly? NextVisit,
    DateOnly? SecondVisit,
    StockStanding Standing,
    double? SuggestedL)
{
    /// <summary>What tells this line from the others of a list.</summary>
    public string Key => $"{Site}/{System}/{Drum}";

    /// <summary>Run-out and suggested order with what went in; empty where neither can be told.</summary>
    public IReadOnlyList<HistoryFigure> Explained { get; init; } = [];

    /// <summary>Days on which it runs out about; null where that cannot be told.</summary>
    public (DateOnly First, DateOnly Last)? RunsOut => Outlook?.RunsOut();

    /// <summary>Day by which it must be ordered so that it comes before the first day of the range; null where that cannot be told.</summary>
    public DateOnly? OrderBy => RunsOut is { First: var first } && DeliveryDays is { } days ? first.AddDays(-(int)Math.Ceiling(days)) : null;
}
