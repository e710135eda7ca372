using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Application.History;

/// <summary>Which figures by interval are compared between systems, and their lines on one axis.</summary>
public static class ComparedFigures
{
    private static readonly string[] Codes =
    [
        FigureCodes.CyclesBest, FigureCodes.CyclesByConductivity, FigureCodes.CyclesByChloride, FigureCodes.CyclesByCalcium, FigureCodes.CyclesBySilica, FigureCodes.CyclesByVolume,
        FigureCodes.MakeUpPerDay, FigureCodes.LiquidLossPerDay, FigureCodes.BleedHoursPerVolume, FigureCodes.ProductPerVolume,
    ];

    /// <summary>Keys of the figures that have a value in the period, in the order in which they are told. Product is compared with the same product.</summary>
    /// <param name="systems">Each system with its figures of the period.</param>
    public static IReadOnlyList<string> KeysOf(IEnumerable<(WaterSystem System, IReadOnlyList<HistoryFigure> Figures)> systems) =>
    [
        .. systems.SelectMany(one => one.Figures.Where(figure => figure.Estimate is not null && Codes.Contains(figure.Code)).Select(figure => (figure.Code, Key: KeyOf(one.System, figure))))
            .DistinctBy(pair => pair.Key, StringComparer.OrdinalIgnoreCase)
            .OrderBy(pair => Array.IndexOf(Codes, pair.Code)).ThenBy(pair => pair.Key, StringComparer.OrdinalIgnoreCase)
            .Select(pair => pair.Key),
    ];

    /// <summary>Name of a figure, with its product; null for a key of readings.</summary>
    public static Text? TitleOf(string key)
    {
        if (!key.StartsWith(HistoryFigures.Prefix, StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        var rest = key[HistoryFigures.Prefix.Length..];
        var dot = rest.IndexOf('.', StringComparison.Ordinal);
        var (code, product) = dot < 0 ? (rest, "") : (rest[..dot], " " + rest[(dot + 1)..]);
        if (!Codes.Contains(code))
        {
            return null;
        }

        var name = FigureTexts.NameOf(code);
        return new Text(name.En + product, name.Es + product, name.Pt + product);
    }

    /// <summary>Figures of a system under a key, in order of time.</summary>
    public static IReadOnlyList<HistoryFigure> Of(WaterSystem system, IReadOnlyList<HistoryFigure> figures, string key) =>
        [.. figures.Where(figure => figure.Estimate is not null && KeyOf(system, figure).Equals(key, StringComparison.OrdinalIgnoreCase)).OrderBy(figure => figure.To)];

    /// <summary>One line for each system, and for each drum where one product stands in several.</summary>
    /// <param name="key">Which figure.</param>
    /// <param name="systems">Each system with its name, figures and the wall times of its visits, for gaps.</param>
    public static HistoryPanel PanelOf(string key, IEnumerable<(string Name, WaterSystem System, IReadOnlyList<HistoryFigure> Figures, IReadOnlyList<DateTime> Visits)> systems)
    {
        var lines = systems.SelectMany(one =>
        {
            var groups = Of(one.System, one.Figures, key).GroupBy(figure => figure.About, StringComparer.OrdinalIgnoreCase).OrderBy(group => group.Key, StringComparer.OrdinalIgnoreCase).ToList();
            return groups.Select(group => (Name: groups.Count > 1 ? $"{one.Name} {group.Key}" : one.Name, Figures: group.ToList(), one.Visits));
        }).ToList();
        var unit = lines.Count == 0 ? "1" : lines[0].Figures[0].Estimate!.Unit;
        return new HistoryPanel(
            key,
            "",
            "",
            unit,
            [
                .. lines.Select(line => HistoryBuilder.WithGaps(
                    null,
                    line.Figures.Select(figure => new HistoryPoint(figure.To, figure.Visit, figure.Estimate!.Value, null, null, RangeStanding.NoRange) { Low = figure.Estimate.Low, High = figure.Estimate.High }),
                    line.Visits) with { Name = new Text(line.Name, line.Name, line.Name) }),
            ],
            [],
            [],
            0) { Title = TitleOf(key) };
    }

    private static string KeyOf(WaterSystem system, HistoryFigure figure) => figure.Code == FigureCodes.ProductPerVolume
        ? $"{HistoryFigures.Prefix}{figure.Code}.{PartsOnDay.DrumOn(system, figure.About, DateOnly.FromDateTime(figure.To))?.Product ?? figure.About}"
        : HistoryFigures.Prefix + figure.Code;
}
