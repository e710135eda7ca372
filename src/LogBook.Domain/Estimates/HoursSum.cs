using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Estimates;

/// <summary>Hours an output ran between two visits, whatever visits lie between.</summary>
internal static class HoursSum
{
    /// <summary>Sum of the runs between readings, which must begin with the first visit and end with the last.</summary>
    /// <param name="from">First visit.</param>
    /// <param name="to">Last visit.</param>
    /// <param name="output">Code of the output.</param>
    /// <returns>Hours; none where a reading is missing at either end or a reset lost some.</returns>
    public static Computed<Estimate> Between(VisitFacts from, VisitFacts to, string output)
    {
        Estimate? sum = null;
        var at = to;
        while (at != from)
        {
            var run = at.HoursRun(output);
            if (!run.HasValue)
            {
                return run;
            }

            if (at.HoursSince(output) is not { } since || since.Visit.At < from.Visit.At)
            {
                return Computed<Estimate>.None(VisitReasons.NotMeasured);
            }

            // A step of the display at either end, not one at every visit between: readings of one counter cancel.
            sum = sum is null ? run.Value : new Estimate(sum.Value + run.Value.Value, "h", sum.Random);
            at = since;
        }

        return sum is null ? Computed<Estimate>.None(VisitReasons.NotMeasured) : Computed<Estimate>.Of(sum);
    }
}
