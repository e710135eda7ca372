using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Intervals;

/// <summary>Hours that an output ran between two readings of its counter.</summary>
public static class HoursBetween
{
    // The display shows tenths of an hour: a step at either end.
    private const double StandardUncertaintyH = 0.1 / 2.449489742783178;

    // Displays round and visits are timed by people: a full run may count a little more than the time between arrivals.
    private const double SlackH = 2;

    /// <summary>Hours run between two readings.</summary>
    /// <param name="earlier">The earlier reading.</param>
    /// <param name="later">The later reading of the same output.</param>
    /// <param name="elapsedHours">Hours between both.</param>
    /// <returns>Hours with the uncertainty of the display's step, or why they are not known.</returns>
    /// <remarks>
    /// "reset" says that the counter restarted since the earlier reading: what it had counted before is lost unless "before"
    /// tells it. "before" and "after" tell of a reset made at the visit itself.
    /// </remarks>
    public static Computed<Estimate> Of(HoursReading earlier, HoursReading later, double elapsedHours)
    {
        var start = earlier.After ?? (earlier.Before is null ? earlier.Hours : 0);
        var end = later.Before ?? later.Hours;
        if (later.Reset == true && later.Before is null)
        {
            return Computed<Estimate>.None(IntervalReasons.ResetUnknown);
        }

        if (end < start)
        {
            return Computed<Estimate>.None(IntervalReasons.WentBackwards);
        }

        return end - start > elapsedHours + SlackH
            ? Computed<Estimate>.None(IntervalReasons.MoreThanElapsed)
            : Computed<Estimate>.Of(new Estimate(end - start, "h", StandardUncertaintyH));
    }
}
