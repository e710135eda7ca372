using LogBook.Bank.Faults;
using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Bank.Scoring;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using Xunit;

namespace LogBook.Domain.Tests.Bank;

/// <summary>A small bank of random systems; the large one is run by its own command (DEVELOPERS.md).</summary>
public class MixedBankTests
{
    [Fact]
    public void Generator_SameSeedTwice_GivesTheSameRecordsAndAnotherSeedOthers()
    {
        string Records(ulong seed)
        {
            var firm = FirmDraw.Of(seed, 2, 4);
            var visits = firm.Systems.SelectMany(s => SystemRun.Of(s, firm).Visits).ToList();
            return ExchangeWriter.Write(firm.Document with { Visits = visits });
        }

        var once = Records(11);

        Assert.Equal(once, Records(11));
        Assert.NotEqual(once, Records(12));
    }

    [Fact]
    public void Generator_WritesDocumentsThatAnImportTakes()
    {
        var firm = FirmDraw.Of(13, 4, 6);
        var document = firm.Document with { Visits = [.. firm.Systems.SelectMany(s => SystemRun.Of(s, firm).Visits)] };

        var read = ExchangeReader.ReadAndCheck(ExchangeWriter.Write(document), FirmSetUp.Empty);

        Assert.True(read.Issues.Count == 0, string.Join('\n', read.Issues.Take(10)));
        Assert.Equal(document.Visits.Count, read.Document!.Visits.Count);
    }

    [Fact]
    public void Catalogue_NamesOnlyKindsOfTheFormatAndForbidsNoneThatItAccepts()
    {
        var firm = FirmDraw.Of(17, 60, 18);
        var faults = firm.Systems.SelectMany(s => s.Faults).ToList();

        Assert.All(FaultCatalogue.All, spec => Assert.Contains(faults, f => f.Name == spec.Name));
        Assert.All(faults, f =>
        {
            Assert.All(f.FoundBy.Concat(f.Explains).Concat(f.Forbidden), kind => Assert.Contains(kind, FindingKinds.All));
            Assert.NotEmpty(f.FoundBy);
            Assert.Empty(f.FoundBy.Intersect(f.Forbidden));
        });
    }

    [Fact]
    public void HealthySystems_StayNearTheirTargetsWithoutNoise()
    {
        var firm = FirmDraw.Of(19, 12, 12);
        foreach (var system in firm.Systems.Where(s => s.Faults.Count == 0))
        {
            var course = SystemRun.Of(system, firm);
            var settled = course.Truths.Where(t => t.Running).Skip(3).ToList();
            var target = system.Programme.TargetCycles!.Value;

            Assert.NotEmpty(settled);
            Assert.InRange(settled.Average(t => t.Cycles), 0.88 * target, 1.12 * target);
            Assert.InRange(settled.Average(t => t.Inhibitor), 0.75 * system.InhibitorTarget, 1.3 * system.InhibitorTarget);
        }
    }

    [Fact]
    public void Engine_OnASmallBank_FindsMoreThanTheSpreadsheetAndIsRightMoreOften()
    {
        var bank = new MixedBank();
        bank.Run(5, 6, 14);

        Assert.True(bank.Engine.Faults.Count >= 3);
        Assert.True(bank.Engine.RaisedInTime >= 0.5, $"raised in time {bank.Engine.RaisedInTime:P0}");
        Assert.True(bank.Engine.RaisedInTime > bank.Baseline.RaisedInTime, $"spreadsheet {bank.Baseline.RaisedInTime:P0}");
        Assert.True(bank.Engine.FalsePerHealthyYear <= 1, $"false headlines {bank.Engine.FalsePerHealthyYear:0.0} a year");
        Assert.True(bank.Engine.Precision > bank.Baseline.Precision, $"precision {bank.Engine.Precision:P0} against {bank.Baseline.Precision:P0}");
    }
}
