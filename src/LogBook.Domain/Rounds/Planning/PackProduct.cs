namespace LogBook.Domain.Rounds.Planning;

/// <summary>Product to take along for a drum. Litres.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Drum">Code of the drum.</param>
/// <param name="Product">Code of the product.</param>
/// <param name="LastsUntil">Day up to which it is to last: the visit after the next one.</param>
/// <param name="SuggestedL">Litres that let it last so long; 0 where what is there does.</param>
/// <param name="UncertaintyL">Expanded uncertainty of that need (k = 2); it is in <paramref name="SuggestedL"/> already.</param>
/// <param name="StockL">Litres that the pump can still draw on the day of the visit, spare on site included; not below 0.</param>
/// <param name="CapacityL">What the drum holds; null where not on file.</param>
public sealed record PackProduct(string Site, string System, string Drum, string Product, DateOnly LastsUntil, double SuggestedL, double UncertaintyL, double StockL, double? CapacityL);
