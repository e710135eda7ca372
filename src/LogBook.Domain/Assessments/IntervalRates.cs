using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Assessments;

/// <summary>Figures of an interval put on a footing on which unequal intervals and loads can be compared: a day, or a volume of make-up.</summary>
/// <remarks>
/// Worked out from the figures that an assessment has stored, which carry their whole uncertainty but no longer its common parts: a
/// quotient takes both as independent (JCGM 100:2008, 5.1.2), and make-up of several intervals of one meter is added as fully
/// correlated (5.2.2), which is the wider of the two.
/// </remarks>
public static class IntervalRates
{
    private static readonly Reason NoMakeUp = new("make-up-not-known", new(
        "The make-up of these days is not known.",
        "No se conoce la reposición de esos días.",
        "Não se conhece a reposição desses dias."));

    private static readonly Reason MakeUpUnclear = new("make-up-not-clear", new(
        "The make-up of these days is not larger than its uncertainty.",
        "La reposición de esos días no es mayor que su incertidumbre.",
        "A reposição desses dias não é maior que sua incerteza."));

    /// <summary>The rates that stored figures let work out.</summary>
    /// <param name="figures">Figures of one system, in any order.</param>
    /// <returns>
    /// For each figure of make-up and of water lost as liquid its amount a day, m3/d; for each of product used the product for a volume of make-up, mL/m3; for
    /// each of bleed hours the hours for a volume of make-up, h/m3. A figure without value gives its own reasons.
    /// </returns>
    public static IReadOnlyList<Figure> Of(IReadOnlyList<Figure> figures)
    {
        var makeUp = figures.Where(figure => figure is { Code: FigureCodes.MakeUp, From: not null }).OrderBy(figure => figure.To).ToList();
        return
        [
            .. figures.Where(figure => figure.From is not null && figure.To > figure.From).Select(figure => figure.Code switch
            {
                FigureCodes.MakeUp => PerDay(figure, FigureCodes.MakeUpPerDay),
                FigureCodes.LiquidLoss => PerDay(figure, FigureCodes.LiquidLossPerDay),
                FigureCodes.ProductUsed => PerVolume(figure, FigureCodes.ProductPerVolume, 1000, "mL", "used", makeUp),
                FigureCodes.BleedHours => PerVolume(figure, FigureCodes.BleedHoursPerVolume, 1, "h", "bleed-hours", makeUp),
                _ => null,
            }).OfType<Figure>(),
        ];
    }

    private static Figure PerDay(Figure figure, string code)
    {
        var days = (figure.To - figure.From!.Value).TotalDays;
        return figure with
        {
            Code = code,
            Result = figure.Result.Map(amount => amount.Scaled(1 / (1000 * days), "m3/d")),
            Inputs = [.. Input(figure.Code, figure.Result), new FigureInput("interval-days", days, "d")],
        };
    }

    private static Figure PerVolume(Figure figure, string code, double factor, string unit, string input, IReadOnlyList<Figure> makeUp)
    {
        var volume = MakeUpOver(figure.From!.Value, figure.To, makeUp);
        return figure with
        {
            Code = code,
            Result = figure.Result.Then(amount => volume.Then(litres => litres.Value > litres.ExpandedUncertainty
                ? Computed<Estimate>.Of(amount.Scaled(factor, unit).Over(litres.Scaled(0.001, "m3"), unit + "/m3"))
                : Computed<Estimate>.None(MakeUpUnclear))),
            Inputs = [.. Input(input, figure.Result), .. Input("make-up", volume)],
        };
    }

    // Make-up of the very same days: intervals that join without a gap, the first and last at the ends asked for.
    private static Computed<Estimate> MakeUpOver(DateTime from, DateTime to, IReadOnlyList<Figure> makeUp)
    {
        var (sum, uncertainty, at) = (0.0, 0.0, from);
        foreach (var part in makeUp.Where(part => part.From >= from && part.To <= to))
        {
            if (part.From != at || !part.Result.HasValue)
            {
                return Computed<Estimate>.None(NoMakeUp);
            }

            (sum, uncertainty, at) = (sum + part.Result.Value.Value, uncertainty + part.Result.Value.StandardUncertainty, part.To);
        }

        return at == to ? Computed<Estimate>.Of(new Estimate(sum, "L", uncertainty)) : Computed<Estimate>.None(NoMakeUp);
    }

    private static IEnumerable<FigureInput> Input(string name, Computed<Estimate> value) => value.HasValue
        ? [new FigureInput(name, value.Value.Value, value.Value.Unit, value.Value.StandardUncertainty)]
        : [];
}
