using LogBook.Bank.Faults;
using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Domain.History;

namespace LogBook.Bank.Scoring;

/// <summary>A judge's flags on one or several banks, scored.</summary>
internal sealed class BankScore
{
    public List<FaultScore> Faults { get; } = [];

    public List<(ulong Seed, Course Course, Flag Flag, Standing Standing)> Headlines { get; } = [];

    public double HealthyYears { get; private set; }

    public int HealthyVisits { get; private set; }

    public int HealthyFalse { get; private set; }

    public IEnumerable<FaultScore> Counted => Faults.Where(f => f.Counts);

    public double SeenInTime => Share(Counted.Count(f => f.SeenInTime), Counted.Count());

    /// <summary>Those that the contract lets be raised.</summary>
    public IEnumerable<FaultScore> ToBeRaised => Counted.Where(f => !f.Fault.OnlyWatched);

    public double RaisedInTime => Share(ToBeRaised.Count(f => f.RaisedInTime), ToBeRaised.Count());

    public double Precision
    {
        get
        {
            var right = Headlines.Count(h => h.Standing == Standing.Right);
            return Share(right, right + Headlines.Count(h => h.Standing is Standing.False or Standing.Wrong));
        }
    }

    public double WrongShare => Share(Faults.Count(f => f.WrongDiagnoses.Count > 0), Faults.Count);

    public double FalsePerHealthyYear => HealthyYears > 0 ? HealthyFalse / HealthyYears : 0;

    public double FalsePerHealthyVisit => (double)HealthyFalse / Math.Max(1, HealthyVisits);

    public void Add(ulong seed, Course course, IReadOnlyList<Flag> flags)
    {
        foreach (var fault in course.System.Faults.Where(f => !f.IsShared))
        {
            Faults.Add(FaultScore.Of(fault, course, seed, flags));
        }

        var headlines = flags.Where(flag => flag.Raised is not null).Select(flag => (seed, course, flag, Truthful.Of(flag, course))).ToList();
        Headlines.AddRange(headlines);
        if (course.System.Faults.Count == 0 && course.Count > 0)
        {
            HealthyYears += (course.DayOf(course.Count - 1).DayNumber - course.DayOf(0).DayNumber) / 365.25;
            HealthyVisits += course.Count;
            HealthyFalse += headlines.Count(h => h.Item4 == Standing.False);
        }
    }

    /// <summary>A fault of a person, an instrument or a lot: one score for the firm, timed at the site that is visited third.</summary>
    public void AddShared(ulong seed, IReadOnlyList<Course> courses, IReadOnlyList<Flag> firmFlags)
    {
        foreach (var name in courses.SelectMany(c => c.System.Faults).Where(f => f.IsShared).Select(f => f.Name).Distinct(StringComparer.Ordinal))
        {
            var at = courses.Where(c => c.System.Faults.Exists(f => f.Name == name)).ToList();

            // The site whose visit completed the evidence: of the others the last visit lies before that day.
            var timed = at.Select(c => (course: c, fault: c.System.Faults.First(f => f.Name == name)))
                .OrderByDescending(p => p.fault.KnowableIndex(p.course) is { } i ? p.course.DayOf(i) : DateOnly.MinValue).First();
            var score = FaultScore.Of(timed.fault, timed.course, seed, firmFlags);
            Faults.Add(score with
            {
                WrongDiagnoses = [.. Headlines.Where(h => h.Seed == seed && at.Contains(h.Course) && h.Standing == Standing.Wrong
                    && h.Course.System.Faults.First(f => f.Name == name) is var own && own.IsActive(h.Flag.Raised!.Value) && own.Forbidden.Contains(h.Flag.Kind)).Select(h => h.Flag)],
            });
        }
    }

    private static double Share(int part, int whole) => whole == 0 ? double.NaN : (double)part / whole;
}
