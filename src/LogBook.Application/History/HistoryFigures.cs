using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Application.History;

/// <summary>Figures by interval as panels on the same time axis as the readings.</summary>
public static class HistoryFigures
{
    /// <summary>Begin of the key of a panel of figures; no sample point is called so.</summary>
    public const string Prefix = "figures.";

    private static readonly (string Key, Text Title, string Unit, string[] Codes)[] All =
    [
        (Prefix + "cycles", new("Cycles by each route", "Ciclos por cada vía", "Ciclos por cada via"), "1",
            [FigureCodes.CyclesBest, FigureCodes.CyclesByConductivity, FigureCodes.CyclesByChloride, FigureCodes.CyclesByCalcium, FigureCodes.CyclesBySilica, FigureCodes.CyclesByVolume]),
        (Prefix + "bleed-hours", new("Bleed hours for each m³ of make-up", "Horas de purga por m³ de reposición", "Horas de purga por m³ de reposição"), "h/m3", [FigureCodes.BleedHoursPerVolume]),
        (Prefix + "water", new("Water a day", "Agua por día", "Água por dia"), "m3/d", [FigureCodes.MakeUpPerDay, FigureCodes.LiquidLossPerDay]),
        (Prefix + "product", new("Product for each m³ of make-up", "Producto por m³ de reposición", "Produto por m³ de reposição"), "mL/m3", [FigureCodes.ProductPerVolume]),
    ];

    /// <summary>Keys of the panels that the figures of a period fill.</summary>
    public static IReadOnlyList<string> KeysOf(IReadOnlyList<HistoryFigure> figures) =>
        [.. All.Where(panel => figures.Any(figure => figure.Estimate is not null && panel.Codes.Contains(figure.Code))).Select(panel => panel.Key)];

    /// <summary>Those shown when the address does not say: cycles, and the hours in which a small loss shows first.</summary>
    public static IEnumerable<string> UsualKeys(IReadOnlyList<string> all) => all.Take(2);

    /// <summary>Title of a panel of figures; null for a key of readings.</summary>
    public static Text? TitleOf(string key) => All.FirstOrDefault(panel => panel.Key.Equals(key, StringComparison.OrdinalIgnoreCase)).Title;

    /// <summary>One panel; null for a key of readings.</summary>
    /// <param name="figures">Figures of the period.</param>
    /// <param name="key">Which panel.</param>
    /// <param name="visits">Wall times of the visits, for gaps.</param>
    public static HistoryPanel? PanelOf(IReadOnlyList<HistoryFigure> figures, string key, IReadOnlyList<DateTime> visits)
    {
        var (found, title, unit, codes) = All.FirstOrDefault(panel => panel.Key.Equals(key, StringComparison.OrdinalIgnoreCase));
        if (found is null)
        {
            return null;
        }

        var series = figures.Where(figure => figure.Estimate is not null && codes.Contains(figure.Code))
            .GroupBy(figure => (figure.Code, figure.About))
            .OrderBy(group => Array.IndexOf(codes, group.Key.Code)).ThenBy(group => group.Key.About, StringComparer.Ordinal)
            .Select(group => HistoryBuilder.WithGaps(
                null,
                group.Select(figure => new HistoryPoint(figure.To, figure.Visit, figure.Estimate!.Value, null, null, RangeStanding.NoRange) { Low = figure.Estimate.Low, High = figure.Estimate.High }),
                visits) with { Name = FigureTexts.TitleOf(group.Key.Code, group.Key.About) })
            .ToList();
        return new HistoryPanel(found, "", "", unit, series, [], [], 0) { Title = title };
    }
}
