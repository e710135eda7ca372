using System.Globalization;
using LogBook.Domain.Quantities;
using LogBook.Domain.Simulation;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Visits.Slips;

/// <summary>Makes slips of a number that was typed rightly.</summary>
internal sealed class SlipMaker(SplitMix random)
{
    /// <summary>A visit with one slip, or null where this slip changes nothing at this field.</summary>
    public Visit? Make(SlipKind kind, IReadOnlyList<TypedField> fields, int index)
    {
        var field = fields[index];
        if (kind == SlipKind.WrongUnit)
        {
            return WrongUnit(field);
        }

        double? slipped = kind switch
        {
            SlipKind.TimesTen => field.Value * 10,
            SlipKind.DividedByTen => field.Value / 10,
            SlipKind.WrongField => OfAnother(fields, index),
            _ => OfDigits(kind, field.Value),
        };
        return slipped is { } value && value != field.Value ? field.Put(value, field.Unit) : null;
    }

    // The number of another line of the same sheet: another test, the other water, another drum or register.
    private double? OfAnother(IReadOnlyList<TypedField> fields, int index)
    {
        var sheet = fields[index].Name.Split(' ')[0];
        var others = fields.Where((f, i) => i != index && f.Name.StartsWith(sheet, StringComparison.Ordinal)).ToList();
        return others.Count > 0 ? others[random.NextBelow(others.Count)].Value : null;
    }

    // Either another unit is chosen beside the right number, or the number is read in another unit than the one chosen.
    private Visit? WrongUnit(TypedField field)
    {
        var others = field.Units.Where(u => u != field.Unit).ToList();
        if (others.Count == 0 || field.Value == 0)
        {
            return null;
        }

        var other = others[random.NextBelow(others.Count)];
        if (random.NextBelow(2) == 0)
        {
            return field.Put(field.Value, other);
        }

        var converted = Units.Convert(field.Value, field.Unit!, other);
        return converted.HasValue && converted.Value != field.Value ? field.Put(Math.Round(converted.Value, 2), field.Unit) : null;
    }

    private double? OfDigits(SlipKind kind, double value)
    {
        var text = value.ToString("0.#####", CultureInfo.InvariantCulture);
        var places = Enumerable.Range(0, text.Length).Where(i => char.IsAsciiDigit(text[i])).ToList();
        var at = places[random.NextBelow(places.Count)];
        switch (kind)
        {
            case SlipKind.DroppedDigit:
                return places.Count > 1 ? Parse(text.Remove(at, 1)) : null;
            case SlipKind.DoubledDigit:
                return Parse(text.Insert(at, text[at].ToString()));
            default:
                var pairs = places.Zip(places.Skip(1)).Where(p => text[p.First] != text[p.Second]).ToList();
                if (pairs.Count == 0)
                {
                    return null;
                }

                var (first, second) = pairs[random.NextBelow(pairs.Count)];
                var swapped = text.ToCharArray();
                (swapped[first], swapped[second]) = (swapped[second], swapped[first]);
                return Parse(new string(swapped));
        }
    }

    private static double? Parse(string text) =>
        double.TryParse(text.TrimEnd('.') is { Length: > 0 } rest ? rest : "x", NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;
}
