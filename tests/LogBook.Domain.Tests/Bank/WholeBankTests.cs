using System.Globalization;
using LogBook.Bank.Scoring;
using Xunit;
using Xunit.Abstractions;

namespace LogBook.Domain.Tests.Bank;

/// <summary>Whole banks on seeds that nobody tunes on. One runs always; LOGBOOK_BANK=1003,1004,1005,1006,1007,1008,1009,1010 runs those of the report.</summary>
public sealed class WholeBankTests(ITestOutputHelper output)
{
    [Fact]
    [Trait("goal", "U2")]
    public void Engine_OnWholeBanks_ReachesTheAims()
    {
        var seeds = (Environment.GetEnvironmentVariable("LOGBOOK_BANK") ?? "1003").Split(',').Select(seed => ulong.Parse(seed, CultureInfo.InvariantCulture)).ToList();
        var bank = new MixedBank();
        seeds.ForEach(seed => bank.Run(seed, 40, 18));
        output.WriteLine(BankReport.Of(bank, string.Join(", ", seeds), 20));
        var engine = bank.Engine;

        Assert.True(engine.Counted.Count() >= 20 * seeds.Count, $"only {engine.Counted.Count()} faults could be known");
        Assert.True(engine.SeenInTime >= 0.95, $"named in time {engine.SeenInTime:P1}");
        Assert.True(engine.Precision >= 0.9, $"precision {engine.Precision:P1}");
        Assert.True(engine.FalsePerHealthyVisit <= 0.1, $"false headlines {engine.FalsePerHealthyVisit:0.000} a healthy visit");

        // Of the some 28 faults of one bank, one is more than two in a hundred.
        var wrong = engine.Faults.Count(fault => fault.WrongDiagnoses.Count > 0);
        Assert.True(wrong <= Math.Max(1, 0.02 * engine.Faults.Count), $"wrong diagnoses beside {wrong} of {engine.Faults.Count} faults");
    }
}
