using System.Globalization;
using LogBook.Bank.Firms;
using Xunit.Abstractions;

namespace LogBook.Domain.Tests.Visits.Slips;

/// <summary>
/// Goal U2 on simulated firms: slips of honest, healthy and faulty plants are asked about, true values seldom. The rules were
/// tuned on seeds below 100; these are others. LOGBOOK_SEEDS=5 takes five firms instead of one.
/// </summary>
public sealed class EntrySlipTests(ITestOutputHelper output)
{
    private const ulong FirstSeed = 1001;

    [Fact]
    [Trait("goal", "U2")]
    public void Check_SlipsAndTrueValuesOfSimulatedVisits_AsksTheOnesAndSparesTheOthers()
    {
        var firms = ulong.TryParse(Environment.GetEnvironmentVariable("LOGBOOK_SEEDS"), CultureInfo.InvariantCulture, out var many) ? many : 1;
        var score = new SlipScore();
        for (var seed = FirstSeed; seed < FirstSeed + firms; seed++)
        {
            score.Add(FirmDraw.Of(seed, 12, 12), 2);
        }

        output.WriteLine(score.Report());

        Assert.True(score.Powers.Asked >= 0.95 * score.Powers.Made, score.Report());
        Assert.True(score.Rest.Asked >= 0.60 * score.Rest.Made, score.Report());
        Assert.True(score.TrueAsked <= 0.02 * score.TrueValues, score.Report());
        Assert.True(score.Challenges <= 0.3 * score.Visits, score.Report());
    }
}
