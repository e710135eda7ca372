using System.Globalization;
using LogBook.Application.Demo;
using Xunit;
using Xunit.Abstractions;

namespace LogBook.Application.Tests.Demo;

/// <summary>The engine as it is against the demo firm's stories. The aim: 14 of 14 in time, no wrong diagnosis, at most one headline at the control.</summary>
public class ReplayTests(DemoFirmFixture fixture, ITestOutputHelper output) : IClassFixture<DemoFirmFixture>
{
    private static readonly string[] Reached = ["ST1", "ST2", "ST3", "ST4", "ST5", "ST6", "ST7", "ST8", "ST9", "ST10", "ST11", "ST13", "ST14", "ST15"];
    private const int WrongDiagnosesAtMost = 0;
    private const double WrongShareAtMost = 0.02;
    private const double FalseFlagsAYearAtMost = 0.3;

    [Fact]
    public void Score_OfTheDemoFirm_KeepsWhatIsReached()
    {
        var report = ReplayScore.Of(fixture.Firm, DemoFirm.DefaultSeed);

        Say(report);
        Assert.Equal(14, report.Stories.Count);
        Assert.Empty(Reached.Except(report.InTime));
        Assert.True(report.Forbidden <= WrongDiagnosesAtMost, $"{report.Forbidden} wrong diagnoses");
        Assert.NotEmpty(report.Control);
        Assert.All(report.Control, c => Assert.True(c.Flags.Count <= c.Most, $"{c.Site}: {c.Flags.Count}"));
        Assert.True(report.HealthyYears > 8);
        Assert.True(report.FalseFlagsPerYear <= FalseFlagsAYearAtMost, $"{report.FalseFlagsPerYear:0.00} a year");
    }

    /// <summary>The numbers of the default firm could be luck; other firms of the same kind tell. LOGBOOK_SEEDS=20 runs the long form.</summary>
    [Fact]
    public void Score_OfOtherFirms_IsNoWorse()
    {
        var count = int.Parse(Environment.GetEnvironmentVariable("LOGBOOK_SEEDS") ?? "2", CultureInfo.InvariantCulture);
        var reports = Enumerable.Range(1, count).Select(i => ReplayScore.Of(DemoFirm.Create((ulong)i), (ulong)i)).ToList();

        reports.ForEach(Say);
        var stories = reports.Sum(r => r.Stories.Count);
        var inTime = reports.Sum(r => r.InTime.Count) / (double)stories;
        var wrong = reports.Sum(r => r.Forbidden);
        var flags = reports.Sum(r => r.FalseFlags.Count) / reports.Sum(r => r.HealthyYears);
        output.WriteLine($"{100 * inTime:0.0} % in time, {wrong} wrong diagnoses in {stories} stories, {flags:0.00} false flags for each healthy system-year");

        // The aim is 95 % over twenty firms; two firms miss a story or two by their own luck.
        Assert.True(inTime >= (count >= 20 ? 0.95 : 0.88), $"{100 * inTime:0.0} % in time");

        // Twenty firms reach 4 in 280; two firms have too few stories to be allowed a single one.
        Assert.Equal(14 * count, stories);
        Assert.True(wrong <= WrongShareAtMost * stories, $"{wrong} wrong diagnoses in {stories} stories");
        Assert.True(flags <= 1.5 * FalseFlagsAYearAtMost, $"{flags:0.00} a year");
    }

    private void Say(ReplayReport report) => output.WriteLine(
        $"seed {report.Seed}: in time {string.Join(' ', report.InTime)}; wrong {report.Forbidden}; false {string.Join(", ", report.FalseFlags.Select(f => $"{f.Site} {f.Kind} {f.From:yyyy-MM-dd}"))}");
}
