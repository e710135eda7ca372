using LogBook.Domain.Exchange;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Application.Demo;

/// <summary>The hand meters: an error of their own that a standard check renews every four weeks, and their check records.</summary>
internal sealed class DemoMeters
{
    private const int CheckDays = 28;

    private static readonly DateOnly FirstCheck = new(2025, 6, 30);

    private readonly DemoFirmFile _firm;
    private readonly Dictionary<string, List<double>> _errors = [];
    private readonly Dictionary<string, List<double>> _read = [];

    public DemoMeters(DemoFirmFile firm, ulong seed, DateOnly lastDay)
    {
        _firm = firm;
        var periods = ((lastDay.DayNumber - FirstCheck.DayNumber) / CheckDays) + 2;
        foreach (var instrument in firm.Instruments)
        {
            var draw = SplitMix.For(seed, instrument.Code);
            var errors = new List<double>();
            var reads = new List<double>();
            for (var i = 0; i < periods; i++)
            {
                // Standard deviation 1.5 %, and no meter leaves a check with more than 2 %.
                errors.Add(Math.Clamp(0.015 * draw.NextNormal(), -0.02, 0.02));
                reads.Add(Math.Round(1413 * (1 + (0.3 * errors[i]) + (0.003 * draw.NextNormal()))));
            }

            _errors[instrument.Code] = errors;
            _read[instrument.Code] = reads;
        }
    }

    public double ErrorAt(string instrument, DateOnly day)
    {
        var fault = _firm.MeterFaults.FirstOrDefault(f => f.Instrument == instrument && f.From <= day);
        var period = Math.Clamp((day.DayNumber - FirstCheck.DayNumber) / CheckDays, 0, _errors[instrument].Count - 1);
        return fault?.Error ?? _errors[instrument][period];
    }

    public IReadOnlyList<Instrument> WithChecks(DateOnly lastDay) =>
    [
        .. _firm.Instruments.Select(instrument => instrument with
        {
            Checks =
            [
                .. Enumerable.Range(0, _read[instrument.Code].Count)
                    .Select(i => (Day: FirstCheck.AddDays(CheckDays * i), Read: _read[instrument.Code][i]))
                    .Where(c => c.Day <= lastDay && !_firm.MeterFaults.Any(f => f.Instrument == instrument.Code && f.From <= c.Day))
                    .Select(c => new InstrumentCheck
                    {
                        At = Moment.OfUtc(c.Day.ToDateTime(new TimeOnly(6, 40), DateTimeKind.Utc)),
                        Standard = 1413,
                        Read = c.Read,
                        Unit = "uS/cm",
                        StandardLot = "KCL-" + (77 + (c.Day.Year - 2025)),
                    }),
            ],
        }),
    ];
}
