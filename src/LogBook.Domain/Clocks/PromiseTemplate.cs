using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Clocks;

/// <summary>A promise that contracts make, to start from.</summary>
/// <param name="Name">What is promised.</param>
/// <param name="SummaryWithinHours">Hours from the end of the visit within which its summary is promised; null for a promise by a day.</param>
/// <param name="Source">Where such a promise was read.</param>
public sealed record PromiseTemplate(Text Name, double? SummaryWithinHours, string Source)
{
    private const string Tenders = "public tender abstracts, bidnetdirect.com 443265070624, 443121612177, 22305487363, 43034592188";

    /// <summary>Day of the month after the visit by which its summary is promised; null for a promise by hours.</summary>
    public int? SummaryByMonthDay { get; init; }

    /// <summary>Whether a site has this promise.</summary>
    /// <param name="site">The site.</param>
    public bool IsOf(Site site) => site.SummaryWithinHours == SummaryWithinHours && site.SummaryByMonthDay == SummaryByMonthDay;

    /// <summary>
    /// All of them, shortest first. "At the visit" is taken as one hour from its end, and a day as 24 hours: our choice. "By the 10th" is
    /// read as the 10th of the month after the visit (<see cref="SummaryPromise"/>).
    /// </summary>
    public static IReadOnlyList<PromiseTemplate> All { get; } =
    [
        new(new("Summary at the visit", "Resumen en la visita", "Resumo na visita"), 1, Tenders),
        new(new("Summary within a day", "Resumen en un día", "Resumo em um dia"), 24, "common practice, no source"),
        new(new("Summary within 5 days", "Resumen en 5 días", "Resumo em 5 dias"), 120, Tenders),
        new(new("Summary within a week", "Resumen en una semana", "Resumo em uma semana"), 168, Tenders),
        new(new("Summaries of a month by the 10th of the next", "Resúmenes de un mes hasta el día 10 del siguiente", "Resumos de um mês até o dia 10 do seguinte"), null, Tenders) { SummaryByMonthDay = 10 },
    ];
}
