namespace LogBook.Domain.Rounds;

/// <summary>One reading by a meter or lot against what its site lets expect.</summary>
/// <param name="Place">Site and system.</param>
/// <param name="Site">Code of the site.</param>
/// <param name="At">Arrival, UTC.</param>
/// <param name="Percent">Difference from the expectation, %.</param>
/// <param name="Change">Change against what the site has had before alone, %; what a meter was calibrated away by does not hide it.</param>
/// <param name="Own">Standard uncertainty of this one reading, percentage points.</param>
/// <param name="OfSite">Standard uncertainty of the expectation, which all readings of the site share, percentage points.</param>
internal sealed record Comparison(string Place, string Site, DateTime At, double Percent, double Change, double Own, double OfSite);
