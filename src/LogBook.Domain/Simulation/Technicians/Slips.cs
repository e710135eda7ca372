using System.Globalization;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Simulation.Technicians;

/// <summary>Slips that survive entry: two digits swapped, one digit wrong, a value in the line of the other water.</summary>
/// <remarks>
/// 0.4 of 1,000 fields (trade guide, source 30). A factor of ten, or a counter that would run backwards or leap, is asked again
/// when it is typed and put right, so it does not reach the record.
/// </remarks>
internal sealed class Slips(SplitMix random)
{
    /// <summary>Share of fields with a slip.</summary>
    public const double Share = 0.0004;

    private readonly Dictionary<string, double> _last = new(StringComparer.OrdinalIgnoreCase);

    public void Apply(List<Reading> readings, List<MeterReading> meters, List<DrumReading> drums, List<HoursReading> hours, double share)
    {
        for (var i = 0; i < readings.Count; i++)
        {
            if (!Falls(share) || readings[i].Source is ReadingSource.Lab || readings[i].Test == Programmes.TestCodes.DipSlide)
            {
                continue;
            }

            var reading = readings[i];
            var other = readings.FindIndex(r => r.Test == reading.Test && r.At != reading.At && r.Source == reading.Source);
            if (other >= 0 && random.NextBelow(3) == 0)
            {
                (readings[i], readings[other]) = (
                    reading with { Value = readings[other].Value, Drops = readings[other].Drops },
                    readings[other] with { Value = reading.Value, Drops = reading.Drops });
            }
            else
            {
                readings[i] = reading with { Value = Slip(reading.Value), Drops = Slip(reading.Drops) };
            }
        }

        for (var i = 0; i < drums.Count; i++)
        {
            drums[i] = Falls(share) ? drums[i] with { Level = Slip(drums[i].Level) } : drums[i];
        }

        for (var i = 0; i < meters.Count; i++)
        {
            meters[i] = meters[i] with
            {
                Dial = Counter(meters[i].Meter + " dial", meters[i].Dial, share),
                Total = Counter(meters[i].Meter + " total", meters[i].Total, share),
            };
        }

        for (var i = 0; i < hours.Count; i++)
        {
            hours[i] = hours[i] with { Hours = Counter(hours[i].Output, hours[i].Hours, share) ?? 0 };
        }
    }

    private bool Falls(double share) => random.NextUnit() < share;

    private double? Counter(string code, double? value, double share)
    {
        var slipped = Falls(share) ? Slip(value) : value;
        var kept = _last.TryGetValue(code, out var last) && slipped >= last && slipped - last <= 2 * (value - last) ? slipped : value;
        if (kept is { } written)
        {
            _last[code] = written;
        }

        return kept;
    }

    private double? Slip(double? value)
    {
        if (value is not { } number)
        {
            return null;
        }

        var digits = number.ToString("0.###", CultureInfo.InvariantCulture).ToCharArray();
        var places = Enumerable.Range(0, digits.Length).Where(i => char.IsDigit(digits[i])).ToArray();
        var swaps = random.NextBelow(2) == 0;

        // The leading digit is what people look at; slips sit behind it.
        var place = places.Length < 2 ? 0 : 1 + random.NextBelow(places.Length - 1);
        if (swaps && places.Length > 2 && place < places.Length - 1)
        {
            (digits[places[place]], digits[places[place + 1]]) = (digits[places[place + 1]], digits[places[place]]);
        }
        else
        {
            digits[places[place]] = digits[places[place]] == '9' ? '8' : (char)(digits[places[place]] + 1);
        }

        return double.Parse(digits, CultureInfo.InvariantCulture);
    }
}
