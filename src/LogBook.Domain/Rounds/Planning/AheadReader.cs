using LogBook.Domain.Clocks;
using LogBook.Domain.Estimates;
using LogBook.Domain.History;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Rounds.Planning;

/// <summary>Reads from the facts of a system what lies ahead of it.</summary>
internal static class AheadReader
{
    private const int DrumLookBack = 12;
    private const int ActionLookBack = 30;
    private const int Lately = 6;
    private const int Lengths = 12;
    private const double LongestStayMinutes = 12 * 60;
    private const double FarthestDays = 3650;

    /// <summary>What lies ahead.</summary>
    /// <param name="latest">The last visit known.</param>
    /// <param name="day">Day in the site's zone for which the rules in force are asked.</param>
    /// <param name="isDoubted">Whether the record of a visit wants a second look.</param>
    public static SystemAhead Of(VisitFacts latest, DateOnly day, Func<Guid, bool> isDoubted) => new()
    {
        Duties =
        [
            .. latest.DutiesOn(day).Where(duty => !duty.IsMet)
                .Select(duty => new DutyAhead(duty.Rule.Code, duty.Rule.Name, duty.Rule.Jurisdiction, duty.Kind, duty.Since, duty.LastDay)
                {
                    Test = duty.Rule.Test, Task = duty.Rule.Task, Event = duty.Event, NotBefore = duty.NotBefore,
                })
                .OrderBy(duty => duty.LastDay).ThenBy(duty => duty.Rule, StringComparer.Ordinal),
        ],
        Drums = [.. latest.History.System.Drums.OrderBy(drum => drum.Code, StringComparer.Ordinal).Select(drum => DrumOf(latest, drum)).OfType<DrumAhead>()],
        Promises = PromisesOf(latest),
        Lengths =
        [
            .. latest.Back().Where(visit => IsRoutine(visit) && Minutes(visit) is > 0 and < LongestStayMinutes).Take(Lengths)
                .Select(visit => new VisitLength(visit.Visit.Visit.Id, Minutes(visit)!.Value, isDoubted(visit.Visit.Visit.Id))),
        ],
        Tests = TestsOf(latest),
        Instruments =
        [
            .. latest.Back().Take(Lately)
                .SelectMany(visit => visit.Record.Readings.Select(reading => reading.Instrument).Concat(visit.Record.Probes.Select(probe => probe.Instrument))
                    .OfType<string>().Select(instrument => new InstrumentUse(visit.Visit.Visit.Technician, instrument)))
                .Distinct(),
        ],
        Lots =
        [
            .. latest.Back().Take(Lately)
                .SelectMany(visit => visit.Record.Readings.Where(reading => reading.Lot is not null).Select(reading => new LotUse(visit.Visit.Visit.Technician, reading.Test, reading.Lot!)))
                .DistinctBy(use => (use.Technician, use.Test)),
        ],
    };

    // A later visit may have left some drums unread: the last reading of each serves.
    private static DrumAhead? DrumOf(VisitFacts latest, Drum drum)
    {
        var read = latest.Back().Take(DrumLookBack).FirstOrDefault(visit => visit.Drum(drum.Code) is not null);
        if (read?.RunOuts.FirstOrDefault(run => run.Drum.Drum.Code.Equals(drum.Code, StringComparison.OrdinalIgnoreCase)) is not { } run)
        {
            return null;
        }

        var use = run.UsePerDay.HasValue ? run.UsePerDay.Value : null;
        var days = use is null ? null : RunOutDays.Of(run.Stock, use);
        return new DrumAhead(drum.Code, drum.Product, read.Day, run.Stock.Value, run.Stock.StandardUncertainty)
        {
            UsePerDayL = use?.Value,
            UsePerDayUncertaintyL = use?.StandardUncertainty,
            From = days is { } known && known.Low < FarthestDays ? OperatingDays.After(latest.History.System.Operation, read.Day, (int)known.Low) : null,
            To = days is { High: { } high } && high < FarthestDays ? OperatingDays.After(latest.History.System.Operation, read.Day, (int)Math.Ceiling(high)) : null,
            CapacityL = drum.CapacityL,
        };
    }

    // The latest state of an action counts; what the customer promised is the customer's.
    private static IReadOnlyList<PromiseAhead> PromisesOf(VisitFacts latest) =>
    [
        .. latest.Back().Take(ActionLookBack)
            .SelectMany(visit => visit.Record.Actions)
            .Select((action, place) => (action, place))
            .GroupBy(entry => (entry.action.Id, Alone: entry.action.Id is null ? entry.place : -1))
            .Select(group => group.First().action)
            .Where(action => action.State is null or ActionState.Open)
            .Where(action => action.Due is not null && !IsCustomers(latest, action.Owner))
            .Select(action => new PromiseAhead(action.Text, action.Due!.Value, action.Owner))
            .OrderBy(promise => promise.Due).ThenBy(promise => promise.Text, StringComparer.Ordinal),
    ];

    private static bool IsCustomers(VisitFacts latest, string? owner) => owner is not null
        && (owner.Equals("customer", StringComparison.OrdinalIgnoreCase)
            || owner.Equals(latest.History.Site.Customer, StringComparison.OrdinalIgnoreCase)
            || (latest.History.Firm.People.TryGetValue(owner, out var person) && person.Role is PersonRole.Customer or PersonRole.SiteStaff));

    private static IReadOnlyList<UsualTest> TestsOf(VisitFacts latest)
    {
        var visits = latest.Back().Where(IsRoutine).Take(Lately).ToList();
        return
        [
            .. visits
                .SelectMany(visit => visit.Record.Readings
                    .Where(reading => reading.NotTaken is null or SystemVisit.ResultPending)
                    .Where(reading => reading.Source is not (ReadingSource.Controller or ReadingSource.SiteStaff))
                    .Select(reading => new UsualTest(reading.At.ToLowerInvariant(), reading.Test)).Distinct())
                .GroupBy(test => test)
                .Where(group => 2 * group.Count() >= visits.Count)
                .Select(group => group.Key)
                .OrderBy(test => test.At, StringComparer.Ordinal).ThenBy(test => test.Test, StringComparer.Ordinal),
        ];
    }

    private static bool IsRoutine(VisitFacts visit) => visit.Visit.Visit.Kind is null or VisitKind.Routine;

    private static double? Minutes(VisitFacts visit) => visit.Visit.Visit.Left is { } left ? (left.Utc - visit.Visit.Visit.Arrived.Utc).TotalMinutes : null;
}
