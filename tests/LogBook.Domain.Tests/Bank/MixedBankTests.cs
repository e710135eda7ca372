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

    /// <summary>A kind that no fault has to show is named with its reason, so that none is forgotten.</summary>
    [Fact]
    public void Catalogue_EveryKindOfTheFormat_NamesAFaultOrSaysWhyNot()
    {
        // A firm plants each shared fault in seven of ten cases only.
        var faults = Enumerable.Range(17, 4).SelectMany(seed => FirmDraw.Of((ulong)seed, 60, 18).Systems).SelectMany(s => s.Faults).ToList();
        var planted = faults.SelectMany(f => f.FoundBy).ToHashSet(StringComparer.Ordinal);

        Assert.Equal(
            FindingKinds.All.Order(StringComparer.Ordinal), planted.Concat(FaultCatalogue.NotPlanted.Keys).Order(StringComparer.Ordinal));
        Assert.All(FaultCatalogue.NotPlanted.Values, why => Assert.False(string.IsNullOrWhiteSpace(why)));
    }

    [Theory]
    [InlineData("pH falls")]
    [InlineData("water turns corrosive")]
    public void AlkalinityThatFalls_ShowsInThePlantWithoutNoise_AndNotInItsTwin(string name)
    {
        var (course, fault) = CourseWith(name);
        var at = fault.KnowableIndex(course);

        Assert.NotNull(at);
        Assert.True(course.Truths[at.Value].Alkalinity < 0.5 * course.Twin[at.Value].Alkalinity);
        Assert.True(course.Truths[at.Value].Ph < course.Twin[at.Value].Ph - 0.3);
        Assert.All(Enumerable.Range(0, at.Value).Where(i => course.DayOf(i) < fault.Onset), i => Assert.Equal(course.Twin[i].Ph, course.Truths[i].Ph));
    }

    [Fact]
    public void CouponThatCorrodes_IsKnownWhenTheLaboratoryAnswers()
    {
        var (course, fault) = CourseWith("coupon corrodes");
        var results = course.Visits.SelectMany(v => v.Systems[0].Readings).Where(r => r.Unit == "[mil_i]/a").ToList();

        Assert.True(results.Count >= 5);
        Assert.All(results, r => Assert.True(r.ResultAt!.Value.Utc > r.TakenAt!.Value.Utc));
        Assert.True(results[^1].Value > 2 * results[0].Value);
        Assert.True(fault.KnowableIndex(course) > course.IndexOn(fault.Onset));
    }

    private static (Course Course, Fault Fault) CourseWith(string name)
    {
        foreach (var seed in Enumerable.Range(31, 20))
        {
            var firm = FirmDraw.Of((ulong)seed, 60, 18);
            foreach (var system in firm.Systems.Where(s => s.Faults.Exists(f => f.Name == name)))
            {
                var (course, fault) = (SystemRun.Of(system, firm), system.Faults.Find(f => f.Name == name)!);
                if (fault.KnowableIndex(course) is not null)
                {
                    return (course, fault);
                }
            }
        }

        throw new InvalidOperationException($"No firm shows {name}.");
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
