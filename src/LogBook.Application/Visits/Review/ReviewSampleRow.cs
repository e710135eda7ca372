namespace LogBook.Application.Visits.Review;

/// <summary>What the draw says of one technician's visits.</summary>
/// <param name="Technician">Code.</param>
/// <param name="Visits">Visits in the period.</param>
/// <param name="Drawn">Of these, drawn.</param>
/// <param name="Looked">Of the drawn, reviewed.</param>
/// <param name="Faulty">Of these, with something that did not hold.</param>
/// <param name="HighestShare">Largest share of faulty visits that the looks leave room for, with 95 % confidence; null before the first look.</param>
public sealed record ReviewSampleRow(string Technician, int Visits, int Drawn, int Looked, int Faulty, double? HighestShare);
