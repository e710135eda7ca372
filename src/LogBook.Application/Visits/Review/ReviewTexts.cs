using LogBook.Domain.Languages;

namespace LogBook.Application.Visits.Review;

/// <summary>What is said when a review is refused.</summary>
internal static class ReviewTexts
{
    public static readonly Text ShareRange = new(
        "Share of visits: a number from 0 to 100 % is expected.",
        "Proporción de visitas: se espera un número de 0 a 100 %.",
        "Proporção de visitas: espera-se um número de 0 a 100 %.");
}
