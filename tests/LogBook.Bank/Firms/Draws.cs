using LogBook.Domain.Simulation;

namespace LogBook.Bank.Firms;

/// <summary>Draws that the generators share.</summary>
internal static class Draws
{
    public static double Between(this SplitMix draw, double low, double high) => low + ((high - low) * draw.NextUnit());

    /// <summary>Evenly over the logarithm: as many small ones as large ones.</summary>
    public static double Ratio(this SplitMix draw, double low, double high) => low * Math.Exp(draw.NextUnit() * Math.Log(high / low));

    public static bool Chance(this SplitMix draw, double chance) => draw.NextUnit() < chance;

    public static T OneOf<T>(this SplitMix draw, params ReadOnlySpan<T> items) => items[draw.NextBelow(items.Length)];

    /// <summary>Rounded to two leading digits, as plates are.</summary>
    public static double Plate(double value)
    {
        if (value <= 0)
        {
            return 0;
        }

        var step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 1);
        return Math.Round(Math.Round(value / step) * step, 6);
    }

    public static List<T> Shuffled<T>(this SplitMix draw, IEnumerable<T> items)
    {
        var list = items.ToList();
        for (var i = list.Count - 1; i > 0; i--)
        {
            var j = draw.NextBelow(i + 1);
            (list[i], list[j]) = (list[j], list[i]);
        }

        return list;
    }
}
