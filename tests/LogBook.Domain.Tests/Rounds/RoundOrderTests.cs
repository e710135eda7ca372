using System.Text.Json;
using CsCheck;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Rounds;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Rounds;

public class RoundOrderTests
{
    private static RoundBuilder Troubled() => new()
    {
        VisitsEach = 12,
        MeterFactor = (meter, day) => meter == "HM-2" && day >= 100 ? 1.08 : 1,
        LotAt = (site, day) => day < 80 ? "IN-1" : site is "S-5" or "S-6" ? "IN-3" : "IN-2",
        LotFactor = lot => lot == "IN-2" ? 1.22 : 1,
        SetsProbes = true,
    };

    [Fact]
    public void Of_AnyOrderOfArrival_GivesTheSameBytes()
    {
        var round = Troubled();
        var visits = round.Visits();
        var expected = Bytes(round.Assess(visits: visits));

        Gen.Shuffle(visits.ToArray()).Sample(shuffled => Bytes(round.Assess(visits: shuffled)) == expected, iter: 6);
    }

    [Fact]
    public void Of_EarlierMoment_KnowsNothingOfLaterVisits()
    {
        var round = Troubled();
        var asOf = round.AsOf(125);
        var known = round.Visits().Where(visit => visit.Left!.Value.Utc <= asOf);

        var all = RoundAssessment.Of(round.Histories(), asOf);

        Assert.NotEmpty(all.Round.Findings);
        Assert.Equal(Bytes(RoundAssessment.Of(round.Histories(known), asOf)), Bytes(all));
    }

    [Fact]
    public void Of_LaterMoment_KeepsTheFirstDays()
    {
        var round = Troubled();
        var early = round.Assess(130).Round.Findings.Select(f => (f.InEnglish.Kind, f.InEnglish.FirstSeen)).ToList();
        var late = round.Assess().Round.Findings.Select(f => (f.InEnglish.Kind, f.InEnglish.FirstSeen)).ToHashSet();

        Assert.NotEmpty(early);
        Assert.All(early, finding => Assert.Contains(finding, late));
    }

    [Fact]
    public void Clues_WrittenAndReadAgain_GiveTheSameRound()
    {
        var round = Troubled();
        var histories = round.Histories();
        var clues = histories.Select(history => Assessment.Of(history, round.AsOf()).Clues).ToList();
        var kept = clues.Select(one => JsonSerializer.Deserialize<SystemClues>(JsonSerializer.Serialize(one))!);

        Assert.Equal(
            JsonSerializer.Serialize(RoundAssessment.Of(histories[0].Firm, clues, round.AsOf())),
            JsonSerializer.Serialize(RoundAssessment.Of(histories[0].Firm, kept, round.AsOf())));
    }

    [Fact]
    public void Of_EveryFinding_IsWordedInThreeLanguages()
    {
        var firm = Troubled().Assess();

        Assert.Contains(firm.Round.Findings, f => f.InEnglish.Kind == FindingKinds.InstrumentShift);
        Assert.Contains(firm.Round.Findings, f => f.InEnglish.Kind == FindingKinds.LotShift);
        Assert.All(firm.Round.Findings, finding =>
        {
            Assert.NotEqual(finding.InEnglish.Text, finding.InSpanish.Text);
            Assert.NotEqual(finding.InSpanish.Text, finding.InPortuguese.Text);
            Assert.DoesNotContain("{", finding.InEnglish.Text + finding.InSpanish.Text + finding.InPortuguese.Text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Of_NoSystems_IsEmpty() => Assert.Empty(RoundAssessment.Of([], RoundBuilder.Start).Round.Findings);

    private static string Bytes(FirmAssessment firm) => JsonSerializer.Serialize(firm.Round) + string.Join('\n', firm.Systems.Select(system => JsonSerializer.Serialize(system.Findings)));
}
