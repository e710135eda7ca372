using CsCheck;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds.Planning;

namespace LogBook.Domain.Tests.Rounds.Planning;

public sealed class RoundCalendarTests
{
    private static readonly DateOnly Monday = new(2026, 12, 21);

    [Fact]
    public void ProposedFor_DueOnAClosedDay_IsTheLastOpenDayBefore()
    {
        // Shut from Thursday to Sunday, due on Saturday.
        var calendar = new RoundCalendar([Off(DaysOffKind.Site, "YAF-1", 3, 6)]);

        Assert.Equal(Monday.AddDays(2), calendar.ProposedFor("yaf-1", Monday.AddDays(5), Monday));
        Assert.Equal(Monday.AddDays(5), calendar.ProposedFor("NUR-1", Monday.AddDays(5), Monday));
    }

    [Fact]
    public void ProposedFor_NoOpenDayIsLeft_IsTheNextOneAfter()
    {
        var calendar = new RoundCalendar([Off(DaysOffKind.Firm, null, 0, 6)]);

        Assert.Equal(Monday.AddDays(7), calendar.ProposedFor("YAF-1", Monday.AddDays(5), Monday));
        Assert.Equal(Monday.AddDays(7), calendar.ProposedFor("YAF-1", Monday.AddDays(-3), Monday));
    }

    [Fact]
    public void ProposedFor_DueOnAWeekendThatIsAlwaysClosed_IsTheFridayBefore()
    {
        var weekends = new DaysOff(DaysOffKind.Site, "YAF-1", Monday.AddYears(-1), Monday.AddYears(4)) { Weekdays = [Weekday.Saturday, Weekday.Sunday] };
        var calendar = new RoundCalendar([weekends]);

        Assert.Equal(
            [0, 1, 2, 3, 4, 4, 4, 7],
            Enumerable.Range(0, 8).Select(day => calendar.ProposedFor("YAF-1", Monday.AddDays(day), Monday)!.Value.DayNumber - Monday.DayNumber));
        Assert.NotEqual(weekends.Key, (weekends with { Weekdays = [] }).Key);
    }

    [Fact]
    public void ProposedFor_LateAlready_IsToday() => Assert.Equal(Monday, RoundCalendar.Empty.ProposedFor("YAF-1", Monday.AddDays(-10), Monday));

    [Fact]
    public void WhoGoes_Away_IsWhoStandsIn_AndItGivesItselfBack()
    {
        var calendar = new RoundCalendar([Off(DaysOffKind.Person, "RYA", 0, 4, "PUM"), Off(DaysOffKind.Person, "PUM", 3, 3, "IWE")]);

        Assert.Equal(
            ["RYA", "PUM", "PUM", "IWE", "RYA"],
            new[] { -1, 0, 4, 3, 5 }.Select(day => calendar.WhoGoes("rya", Monday.AddDays(day)) is { } goes ? goes.ToUpperInvariant() : null));
        Assert.Equal(["RYA"], calendar.StandsInFor("PUM", Monday));
        Assert.Equal(["PUM", "RYA"], calendar.StandsInFor("IWE", Monday.AddDays(3)).Order(StringComparer.Ordinal));
        Assert.Empty(calendar.StandsInFor("PUM", Monday.AddDays(5)));
    }

    [Fact]
    public void WhoGoes_NobodyNamed_OrRoundInACircle_IsNobody()
    {
        var calendar = new RoundCalendar([Off(DaysOffKind.Person, "RYA", 0, 4, "PUM"), Off(DaysOffKind.Person, "PUM", 0, 4, "RYA"), Off(DaysOffKind.Person, "JSN", 0, 4)]);

        Assert.Null(calendar.WhoGoes("RYA", Monday));
        Assert.Null(calendar.WhoGoes("JSN", Monday));
        Assert.Null(calendar.WhoGoes(null, Monday));
    }

    [Fact]
    public void WhoGoes_LentSites_GoToTheColleagueForTheirDaysOnly()
    {
        var calendar = new RoundCalendar(
        [
            Off(DaysOffKind.Lent, "RYA", 0, 2, "PUM") with { Sites = ["YAF-1"] }, Off(DaysOffKind.Person, "PUM", 1, 1, "IWE"), Off(DaysOffKind.Lent, "JSN", 0, 0, "PUM"),
        ]);

        Assert.Equal(["PUM", "IWE", "PUM", "RYA"], Enumerable.Range(0, 4).Select(day => calendar.WhoGoes("RYA", Monday.AddDays(day), "yaf-1")));
        Assert.Equal("RYA", calendar.WhoGoes("RYA", Monday, "NUR-1"));
        Assert.Equal("RYA", calendar.WhoGoes("RYA", Monday));
        Assert.Equal("PUM", calendar.WhoGoes("JSN", Monday, "GRO-1"));
        Assert.Equal(["JSN", "RYA"], calendar.StandsInFor("PUM", Monday).Order(StringComparer.Ordinal));
        Assert.Equal(["PUM", "RYA"], calendar.StandsInFor("IWE", Monday.AddDays(1)).Order(StringComparer.Ordinal));
        Assert.Empty(calendar.StandsInFor("PUM", Monday.AddDays(3)));
    }

    // Whoever goes is there, and is told so: nobody's site is with a colleague whose round does not ask for it.
    [Fact]
    public void WhoGoes_AnyCalendar_IsSomebodyWhoIsThere_AndKnowsIt() =>
        Gen.Select(Gen.Int[0, 1], Gen.Int[0, 3], Gen.Int[0, 4], Gen.Int[0, 6], Gen.Int[0, 4]).List[0, 10].Sample(spans =>
        {
            string[] people = ["RYA", "PUM", "IWE", "JSN"];
            var calendar = new RoundCalendar(spans.Select(span => Off(span.Item1 == 0 ? DaysOffKind.Person : DaysOffKind.Lent, people[span.Item2], span.Item4, span.Item4 + span.Item5, span.Item3 == 4 ? null : people[span.Item3])));

            foreach (var (person, days) in people.SelectMany(person => Enumerable.Range(0, 11).Select(days => (person, days))))
            {
                var day = Monday.AddDays(days);
                if (calendar.WhoGoes(person, day, "YAF-1") is { } goes)
                {
                    Assert.Null(calendar.Away(goes, day));
                    Assert.True(goes == person || calendar.StandsInFor(goes, day).Contains(person));
                }
                else
                {
                    Assert.True(calendar.Away(person, day) is not null || calendar.Lent(person, "YAF-1", day) is not null);
                }
            }
        });

    [Fact]
    public void Closed_FirmsDaysHoldForEverySite()
    {
        var calendar = new RoundCalendar([Off(DaysOffKind.Firm, null, 4, 4) with { Note = "Christmas Day" }]);

        Assert.Equal("Christmas Day", calendar.Closed("YAF-1", Monday.AddDays(4))!.Note);
        Assert.Null(calendar.Closed("YAF-1", Monday.AddDays(3)));
        Assert.Null(calendar.Away("RYA", Monday.AddDays(4)));
    }

    // Never on a closed day, never before today, and never after the due day while an open day is left before it.
    [Fact]
    public void ProposedFor_AnyCalendar_KeepsToOpenDaysAndTheDueDay() =>
        Gen.Select(Gen.Select(Gen.Int[0, 2], Gen.Int[-5, 40], Gen.Int[0, 12]).List[0, 12], Gen.Int[-10, 40]).Sample((spans, dueIn) =>
        {
            var calendar = new RoundCalendar(spans.Select(span => span.Item1 switch
            {
                0 => Off(DaysOffKind.Firm, null, span.Item2, span.Item2 + span.Item3),
                1 => Off(DaysOffKind.Site, "YAF-1", span.Item2, span.Item2 + span.Item3),
                _ => Off(DaysOffKind.Person, "RYA", span.Item2, span.Item2 + span.Item3),
            }));
            var due = Monday.AddDays(dueIn);

            var day = calendar.ProposedFor("YAF-1", due, Monday)!.Value;

            Assert.Null(calendar.Closed("YAF-1", day));
            Assert.True(day >= Monday);
            var open = Enumerable.Range(0, Math.Max(0, due.DayNumber - Monday.DayNumber) + 1).Select(Monday.AddDays).Where(one => calendar.Closed("YAF-1", one) is null).ToList();
            if (open.Count > 0)
            {
                Assert.Equal(open[^1], day);
            }
            else
            {
                Assert.All(Enumerable.Range(1, day.DayNumber - (due < Monday ? Monday : due).DayNumber - 1), days => Assert.NotNull(calendar.Closed("YAF-1", (due < Monday ? Monday : due).AddDays(days))));
            }
        });

    private static DaysOff Off(DaysOffKind kind, string? of, int from, int to, string? standIn = null) => new(kind, of, Monday.AddDays(from), Monday.AddDays(to)) { StandIn = standIn };
}
