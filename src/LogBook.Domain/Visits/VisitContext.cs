using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Visits;

/// <summary>What the checks of an entry compare it with: the set-up and the site's earlier visits. Made once for a form.</summary>
public sealed class VisitContext
{
    private readonly Lazy<ILookup<SeriesKey, PastValue>> _readings;

    /// <summary>Makes a context.</summary>
    /// <param name="firm">The firm's set-up.</param>
    /// <param name="previous">Visits of the same site in any order; where a visit stands in several versions the latest counts.</param>
    /// <param name="language">Language of the messages.</param>
    public VisitContext(FirmSetUp firm, IReadOnlyList<Visit> previous, Language language = Language.English)
    {
        Firm = firm;
        Language = language;
        Previous = [.. previous.GroupBy(v => v.Id).Select(g => g.MaxBy(v => v.Version ?? 1)!).OrderBy(v => v.Arrived.Utc).ThenBy(v => v.Id)];
        _readings = new(() => Series().ToLookup(s => s.Key, s => s.Past, SeriesKey.Comparer));
    }

    /// <summary>The firm's set-up.</summary>
    public FirmSetUp Firm { get; }

    /// <summary>Earlier visits by arrival, each in its latest version.</summary>
    public IReadOnlyList<Visit> Previous { get; }

    /// <summary>Language of the messages.</summary>
    public Language Language { get; }

    /// <summary>The last values of one test at one point by one source before a visit, oldest first, in the test's first unit.</summary>
    /// <param name="draft">The visit.</param>
    /// <param name="system">Code of the system.</param>
    /// <param name="reading">Test, point and source.</param>
    /// <param name="count">How many.</param>
    internal IReadOnlyList<double> Last(Visit draft, string system, Reading reading, int count) =>
        [.. Past(draft, system, reading).Where(p => p.Qualifier is null).TakeLast(count).Select(p => p.Value)];

    /// <summary>The same with results that were only told to be below or above a limit; their value is that limit.</summary>
    /// <param name="draft">The visit.</param>
    /// <param name="system">Code of the system.</param>
    /// <param name="reading">Test, point and source.</param>
    /// <param name="count">How many.</param>
    internal IReadOnlyList<PastValue> LastWithLimits(Visit draft, string system, Reading reading, int count) => [.. Past(draft, system, reading).TakeLast(count)];

    private IEnumerable<PastValue> Past(Visit draft, string system, Reading reading) =>
        _readings.Value[SeriesKey.Of(system, reading)].Where(p => p.Visit != draft.Id && p.At < draft.Arrived.Utc);

    /// <summary>Earlier records of one system before a visit, newest first.</summary>
    internal IEnumerable<SystemVisit> Before(Visit draft, string system) =>
        from visit in Previous.Reverse()
        where visit.Id != draft.Id && visit.Arrived < draft.Arrived
        from record in visit.Systems
        where record.System.Equals(system, StringComparison.OrdinalIgnoreCase)
        select new SystemVisit(visit, record);

    private IEnumerable<(SeriesKey Key, PastValue Past)> Series()
    {
        foreach (var visit in Previous)
        {
            foreach (var record in visit.Systems)
            {
                foreach (var reading in record.Readings)
                {
                    if (LimitOf(reading, Firm) is { } value)
                    {
                        yield return (SeriesKey.Of(record.System, reading), new PastValue(visit.Id, visit.Arrived.Utc, value, reading.Qualifier));
                    }
                }
            }
        }
    }

    /// <summary>A reading as a number in the test's first unit; null where it is censored, not taken, in another basis or another unit.</summary>
    internal static double? ValueOf(Reading reading, FirmSetUp firm) => reading.Qualifier is null ? LimitOf(reading, firm) : null;

    /// <summary>The same, and the limit of a censored reading.</summary>
    internal static double? LimitOf(Reading reading, FirmSetUp firm)
    {
        if (reading.Basis is not null || (reading.Value ?? (reading.Drops * reading.PerDrop)) is not { } value
            || TestCatalogue.Find(reading.Test, firm) is not { } test)
        {
            return null;
        }

        var converted = Units.Convert(value, reading.Unit, test.Units[0]);
        return converted.HasValue ? converted.Value : null;
    }

    /// <summary>One value of the past.</summary>
    internal sealed record PastValue(Guid Visit, DateTime At, double Value, string? Qualifier);

    /// <summary>What makes values comparable: system, test, point and source; codes in any case of letters.</summary>
    internal readonly record struct SeriesKey(string System, string Test, string At, ReadingSource? Source)
    {
        /// <summary>Ready for use: every part is in upper case already.</summary>
        public static IEqualityComparer<SeriesKey> Comparer { get; } = EqualityComparer<SeriesKey>.Default;

        /// <summary>Key of a reading.</summary>
        public static SeriesKey Of(string system, Reading reading) =>
            new(system.ToUpperInvariant(), reading.Test.ToUpperInvariant(), reading.At.ToUpperInvariant(), reading.Source);
    }
}
