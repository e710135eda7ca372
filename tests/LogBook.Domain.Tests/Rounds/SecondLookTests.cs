using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Rounds;

public class SecondLookTests
{
    private static readonly string[] Tests = [TestCodes.Calcium, TestCodes.Alkalinity, TestCodes.Chloride, TestCodes.Inhibitor, TestCodes.Ph, TestCodes.Iron];

    // The builder's visits last an hour and repeat every 14 days exactly.
    private static RoundBuilder Round(Func<int, Visit, Visit> change, double fromDay = 100) => new()
    {
        Sites = ["S-1"],
        VisitsEach = 10,
        MeterAt = _ => "HM-1",
        Change = visit => visit.Arrived.Utc >= RoundBuilder.Start.AddDays(fromDay) ? change((int)Math.Round((visit.Arrived.Utc - RoundBuilder.Start).TotalDays / 14), visit) : visit,
    };

    private static Visit Short(Visit visit, double minutes) => visit with { Left = Moment.OfUtc(visit.Arrived.Utc.AddMinutes(minutes)) };

    private static Visit WithTests(Visit visit) => visit with
    {
        Systems = [visit.Systems[0] with { Readings = [.. visit.Systems[0].Readings, .. Tests.Select(test => HistoryBuilder.MakeUp(test, 20 + visit.Arrived.Utc.Day, test == TestCodes.Ph ? "[pH]" : "mg/L"))] }],
    };

    private static Visit Unsettled(Visit visit) => visit with { Systems = [visit.Systems[0] with { Probes = [visit.Systems[0].Probes[0] with { SettledMin = null }] }] };

    [Fact]
    public void Of_ShortAndUnsettledTwice_IsPlanInNeutralWords()
    {
        var firm = Round((_, visit) => Unsettled(Short(WithTests(visit), 6))).Assess();

        var finding = firm.Round(FindingKinds.SecondLook)!;
        Assert.Equal(("PUM", Severity.Plan, FindingState.Open), (finding.About!.Person, finding.Severity, finding.State));
        Assert.Null(finding.Site);
        foreach (var word in new[] { "invent", "fake", "fals", "lie", "cheat" })
        {
            Assert.DoesNotContain(word, finding.Text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Of_OneVisit_IsWatch() =>
        Assert.Equal(Severity.Watch, Round((n, visit) => n == 9 ? Unsettled(Short(WithTests(visit), 6)) : visit).Assess().Round(FindingKinds.SecondLook)!.Severity);

    [Fact]
    public void Of_OneSignAlone_SaysNothing()
    {
        Assert.Null(Round((_, visit) => Short(WithTests(visit), 6)).Assess().Round(FindingKinds.SecondLook));
        Assert.Null(Round((_, visit) => Unsettled(visit)).Assess().Round(FindingKinds.SecondLook));
    }

    [Fact]
    public void Of_ShortVisitOfFewTests_IsNoSign() =>
        Assert.Null(Round((_, visit) => Unsettled(Short(visit, 12))).Assess().Round(FindingKinds.SecondLook));

    [Fact]
    public void Of_EqualStepsOverUnequalIntervals_IsASign()
    {
        Visit Stepped(int n, Visit visit) => Unsettled(visit with
        {
            Arrived = Moment.OfUtc(visit.Arrived.Utc.AddDays(n % 2 == 0 ? 3 : 0)),
            Left = Moment.OfUtc(visit.Arrived.Utc.AddDays(n % 2 == 0 ? 3 : 0).AddHours(1)),
            Systems = [visit.Systems[0] with { Meters = [visit.Systems[0].Meters[0] with { Total = 1_000_000 + (134_000 * n), Dial = null }] }],
        });

        var finding = Round(Stepped, 50).Assess().Round(FindingKinds.SecondLook)!;

        Assert.Equal(Severity.Plan, finding.Severity);
        Assert.Contains("same step", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ReadingsCopied_IsASignBeyondWhatStepsExplain()
    {
        VisitedSystem? copied = null;
        Visit Copy(int n, Visit visit)
        {
            copied ??= WithTests(visit).Systems[0];
            return Unsettled(visit with { Systems = [visit.Systems[0] with { Readings = copied.Readings }] });
        }

        Assert.Contains("equal to an earlier", Round(Copy).Assess().Round(FindingKinds.SecondLook)!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_DoubtedVisit_OpensNoHeadlineAndClosesNone()
    {
        static Visit Residual(Visit visit, double value) => visit with
        {
            Systems = [visit.Systems[0] with { Readings = [.. visit.Systems[0].Readings.Where(r => r.Test != TestCodes.Inhibitor), HistoryBuilder.Tower(TestCodes.Inhibitor, value, "mg/L")] }],
        };

        var honest = Round((_, visit) => Residual(visit, 50)).Assess();
        var doubted = Round((_, visit) => Unsettled(Short(WithTests(Residual(visit, 50)), 6))).Assess();
        var closed = Round((n, visit) => n < 9 ? Residual(visit, 50) : Unsettled(Short(WithTests(Residual(visit, 100)), 6))).Assess();

        Assert.NotEmpty(RoundBuilder.Headlines(honest, FindingKinds.ResidualLow));
        Assert.Empty(RoundBuilder.Headlines(doubted, FindingKinds.ResidualLow));
        Assert.NotEmpty(RoundBuilder.Headlines(closed, FindingKinds.ResidualLow));
    }

    // 40 cm of the drum, 39 L, seem gone since the visit before; its pump can have drawn 5 L.
    [Fact]
    public void Of_VisitAfterADoubtedOne_HasNoLevelToCompareWith()
    {
        static Visit Level(Visit visit, double cm) => visit with { Systems = [visit.Systems[0] with { Drums = [visit.Systems[0].Drums[0] with { Level = cm, AddedL = 0 }] }] };
        FirmAssessment Of(bool doubted) => Round((n, visit) => n switch
        {
            8 => doubted ? Unsettled(Short(WithTests(Level(visit, 60)), 6)) : Level(visit, 60),
            9 => Level(visit, 20),
            _ => visit,
        }).Assess();
        string[] kinds = [FindingKinds.StockUnexplained, FindingKinds.FeedHigh, FindingKinds.PumpOutput];

        Assert.NotEmpty(RoundBuilder.Headlines(Of(false), kinds));
        Assert.Empty(RoundBuilder.Headlines(Of(true), kinds));
    }

    // One sign alone says nothing; right after a doubted visit of the same person the doubt goes on.
    [Fact]
    public void Of_OneSignAfterADoubtedVisit_IsDoubtedAsWell()
    {
        static Visit Residual(Visit visit, double value) => visit with
        {
            Systems = [visit.Systems[0] with { Readings = [.. visit.Systems[0].Readings.Where(r => r.Test != TestCodes.Inhibitor), HistoryBuilder.Tower(TestCodes.Inhibitor, value, "mg/L")] }],
        };
        FirmAssessment Of(bool doubted) => Round((n, visit) => n == 9 ? Unsettled(Residual(visit, 50)) : n == 8 && doubted ? Unsettled(Short(WithTests(visit), 6)) : visit).Assess();

        Assert.NotEmpty(RoundBuilder.Headlines(Of(false), FindingKinds.ResidualLow));
        Assert.Empty(RoundBuilder.Headlines(Of(true), FindingKinds.ResidualLow));
    }

    [Fact]
    public void Of_AmendmentThatTakesTheSignsAway_Closes()
    {
        var round = Round((n, visit) => n == 9 ? Unsettled(Short(WithTests(visit), 6)) : visit);
        var visits = round.Visits();
        var last = visits[^1];
        visits.Add(WithTests(last) with
        {
            Version = 2,
            Amends = 1,
            AmendedAt = Moment.OfUtc(last.Arrived.Utc.AddDays(1)),
            Left = Moment.OfUtc(last.Arrived.Utc.AddMinutes(66)),
        });

        Assert.Equal(FindingState.Closed, round.Assess(visits: visits).Round(FindingKinds.SecondLook)!.State);
    }
}
