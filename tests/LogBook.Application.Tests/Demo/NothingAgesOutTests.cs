using LogBook.Application.Demo;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using Xunit;

namespace LogBook.Application.Tests.Demo;

/// <summary>Nothing ages out silently: what is open stays open until evidence or a person closes it, however long nobody comes.</summary>
public class NothingAgesOutTests(DemoFirmFixture fixture) : IClassFixture<DemoFirmFixture>
{
    private const int DaysWithoutVisits = 365;
    private const string Words = "seen to by the site's own people";

    /// <summary>
    /// At several days in the firm's history nobody comes any more: a year later all that was open is open, none of it less urgent.
    /// </summary>
    [Fact]
    public void Open_AYearWithoutVisits_StaysOpenAndNoLessUrgent()
    {
        var kinds = new HashSet<string>(StringComparer.Ordinal);
        foreach (var history in Histories())
        {
            foreach (var day in Cuts(history))
            {
                var cut = Cut(history, day);
                var then = Open(Assessment.Of(cut, day));
                var later = Open(Assessment.Of(cut, day.AddDays(DaysWithoutVisits))).ToDictionary(KeyOf);
                foreach (var finding in then)
                {
                    kinds.Add(finding.Kind);
                    Assert.True(later.TryGetValue(KeyOf(finding), out var still), $"{history.Site.Code} {KeyOf(finding)} of {day:yyyy-MM-dd} is not open a year later");
                    Assert.Equal(finding.FirstVisit, still.FirstVisit);
                    Assert.True(still.LastSeen >= finding.LastSeen);
                    Assert.True(still.Severity >= finding.Severity, $"{history.Site.Code} {KeyOf(finding)} fell from {finding.Severity} to {still.Severity} by time alone");
                }
            }
        }

        Assert.True(kinds.Count >= 20, $"only {kinds.Count} kinds were open: {string.Join(", ", kinds)}");
    }

    /// <summary>The day on which a finding closes is one on which a visit, a late result or an amendment became known.</summary>
    [Fact]
    public void Closed_ByEvidence_ClosesOnADayOnWhichSomethingBecameKnown()
    {
        var closed = 0;
        foreach (var history in Histories())
        {
            var known = history.Versions.SelectMany(version => version.LaterResults.Prepend(version.KnownFrom)).Select(history.DayOf).ToHashSet();
            foreach (var finding in Assessment.Of(history, AsOf).Findings.Select(f => f.In(Language.English)).Where(f => f.State is FindingState.Closed))
            {
                closed++;
                Assert.True(known.Contains(finding.ClosedOn!.Value), $"{history.Site.Code} {KeyOf(finding)} closed on {finding.ClosedOn:yyyy-MM-dd} by nothing that became known");
            }
        }

        Assert.True(closed > 100, $"{closed} closed");
    }

    /// <summary>What a person closes keeps the words of the person, and is the only one that does not wait for a record.</summary>
    [Fact]
    public void Closed_ByAPerson_NamesTheReason()
    {
        var closed = 0;
        foreach (var history in Histories())
        {
            var day = Cuts(history).Last();
            var cut = Cut(history, day);
            foreach (var finding in Open(Assessment.Of(cut, day)))
            {
                var answer = new FindingAnswer(finding.Kind, About.Key(finding.About), finding.FirstSeen, day.AddHours(1), Words);
                var after = Assessment.Of(cut, day.AddDays(1), new AssessmentInputs { Closed = [answer] }).Findings.Select(f => f.In(Language.English)).ToList();

                var same = after.First(f => KeyOf(f) == KeyOf(finding));
                Assert.Equal((FindingState.Closed, Words), (same.State, same.Because));
                closed++;
            }
        }

        Assert.True(closed >= 10, $"{closed} closed");
    }

    /// <summary>What is withdrawn says because of what.</summary>
    [Fact]
    public void Withdrawn_NamesTheReason()
    {
        var firm = new FirmSetUp(fixture.Firm.Document);
        var histories = Histories().ToList();
        var first = histories.ConvertAll(history => Assessment.Of(history, AsOf));
        var round = RoundAssessment.Of(firm, first.Select(system => system.Clues), AsOf);
        var withdrawn = histories.Select((history, i) => Assessment.Of(history, AsOf, new AssessmentInputs { Shifts = RoundAssessment.ShiftsOf(round, first[i].Clues) }))
            .SelectMany(assessment => assessment.Findings).Select(f => f.In(Language.English)).Where(f => f.State == FindingState.Withdrawn).ToList();

        Assert.NotEmpty(withdrawn);
        Assert.All(withdrawn, finding => Assert.False(string.IsNullOrWhiteSpace(finding.Because), KeyOf(finding)));
    }

    private static DateTime AsOf { get; } = DemoFirm.LastDay.AddDays(1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);

    private IEnumerable<SystemHistory> Histories()
    {
        var document = fixture.Firm.Document;
        var firm = new FirmSetUp(document);
        return document.Systems.Select(system => SystemHistory.From(firm, system.Site, system.Code, document.Visits));
    }

    private static IEnumerable<DateTime> Cuts(SystemHistory history)
    {
        var known = history.Versions.Select(version => version.KnownFrom).Order().ToList();
        for (var i = known.Count / 8; i < known.Count; i += Math.Max(1, known.Count / 8))
        {
            yield return known[i].AddMinutes(1);
        }
    }

    private static string KeyOf(Finding finding) => $"{finding.Kind} {About.Key(finding.About)} {finding.FirstSeen:yyyy-MM-dd}";

    // Results that are still out never come: a laboratory's answer would be evidence.
    private SystemHistory Cut(SystemHistory history, DateTime day) => SystemHistory.From(
        new FirmSetUp(fixture.Firm.Document),
        history.Site.Code,
        history.System.Code,
        fixture.Firm.Document.Visits.Where(visit => (visit.Left ?? visit.Arrived).Utc <= day).Select(visit => visit with
        {
            Systems = [.. visit.Systems.Select(record => record with { Readings = [.. record.Readings.Where(reading => reading.ResultAt is not { } result || result.Utc <= day)] })],
        }));

    private static List<Finding> Open(SystemAssessment assessment) => [.. assessment.Findings.Select(f => f.In(Language.English)).Where(f => f.State == FindingState.Open)];
}
