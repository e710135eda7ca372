using LogBook.Domain.Exchange;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Bank.Firms;

/// <summary>Hand meters: an error of their own, sd 1.5 %, renewed at every standard check (trade guide 6.4), and at most one that shifts.</summary>
internal sealed class HandMeters(ulong seed, DateOnly first, DateOnly last)
{
    private const int CheckDays = 21;

    public (string Meter, DateOnly From, DateOnly To, double Error)? Fault { get; set; }

    public double ErrorAt(string meter, DateOnly day) =>
        Fault is { } fault && fault.Meter == meter && day >= fault.From && day <= fault.To ? fault.Error : Draw(meter, Period(day)).Error;

    public Instrument Of(string meter) => new()
    {
        Code = meter,
        Kind = InstrumentKind.ConductivityMeter,
        Checks =
        [
            .. Enumerable.Range(0, Period(last) + 1)
                .Select(i => (Day: first.AddDays(CheckDays * i), Draw(meter, i).Read))
                .Where(c => c.Day <= last && !(Fault is { } fault && fault.Meter == meter && c.Day >= fault.From && c.Day <= fault.To))
                .Select(c => new InstrumentCheck
                {
                    At = Moment.OfUtc(c.Day.ToDateTime(new TimeOnly(6, 10), DateTimeKind.Utc)),
                    Standard = 1413,
                    Read = c.Read,
                    Unit = "uS/cm",
                }),
        ],
    };

    private int Period(DateOnly day) => Math.Max(0, (day.DayNumber - first.DayNumber) / CheckDays);

    private (double Error, double Read) Draw(string meter, int period)
    {
        var draw = SplitMix.For(seed, FormattableString.Invariant($"{meter} {period}"));

        // Nobody leaves a check with more than 2 %; the standard shows part of the error.
        var error = Math.Clamp(0.015 * draw.NextNormal(), -0.02, 0.02);
        return (error, Math.Round(1413 * (1 + (0.3 * error) + (0.003 * draw.NextNormal()))));
    }
}
