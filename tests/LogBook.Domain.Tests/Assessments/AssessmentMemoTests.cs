using System.Text.Json;
using CsCheck;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Rounds;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Assessments;

/// <summary>An assessment that goes on from what is remembered gives the bytes of one that works everything out.</summary>
public class AssessmentMemoTests
{
    private static readonly Gen<(int Kind, int Days, double Factor, int Ask)> Acts = Gen.Select(Gen.Int[0, 9], Gen.Int[1, 40], Gen.Double[0.5, 1.6], Gen.Int[0, 3]);

    // A plant with a bit of everything: feed that wears, counts that come late, a probe that goes off, a stop, a lost dial.
    private static HistoryBuilder Troubled()
    {
        var plant = new HistoryBuilder();
        for (var i = 0; i < 36; i++)
        {
            plant.InhibitorPerDayL *= i is > 12 and < 20 ? 0.9 : 1;
            plant.Inhibitor = i is > 15 and < 24 ? 55 : 100;
            plant.DialShare = i is > 26 and < 29 ? 0 : 1;
            var place = i;
            plant.Visit(
                i == 0 ? 0 : (7 * i) + (i % 3),
                record => record with
                {
                    Probes = place is > 20 and < 26 ? [HistoryBuilder.Probe(1000, 1232)] : record.Probes,
                    Readings = place % 3 == 0 ? [.. record.Readings, Count(plant, place, place % 2 == 0 ? 3e3 : 4e5)] : record.Readings,
                });
        }

        return plant;
    }

    private static Reading Count(HistoryBuilder plant, int place, double value) => HistoryBuilder.Tower(TestCodes.ColonyCount, value, "[CFU]/mL") with
    {
        Source = ReadingSource.Lab,
        ResultAt = Moment.OfUtc(HistoryBuilder.Start.AddDays((7 * place) + 4 + (place % 7))),
    };

    [Fact]
    public void Of_AnyOrderWithAmendmentsLateResultsAndAnswers_GivesTheBytesOfAColdAssessment()
    {
        var plant = Troubled();
        var whole = plant.Build();
        var plain = plant.Visits;
        var (wentOn, closed, kinds) = (0, 0, new HashSet<string>());
        Gen.Select(Acts.Array[plain.Count], Gen.Shuffle(Enumerable.Range(0, plain.Count).ToArray()), Gen.Int[0, 3]).Sample(
            (acts, order, disorder) =>
            {
                var memo = new AssessmentMemo();
                List<Visit> come = [];
                List<FindingAnswer> answers = [];
                foreach (var place in disorder == 0 ? (IEnumerable<int>)order : Enumerable.Range(0, plain.Count).OrderBy(i => i + (order[i] % (2 * disorder))))
                {
                    come.AddRange(Versions(plain[place], acts[place]));
                    var last = come.Max(visit => (visit.AmendedAt ?? visit.Left ?? visit.Arrived).Utc);
                    var asOf = acts[place].Ask switch { 0 => last, 1 => last.AddHours(7), 2 => last.AddDays(20), _ => last.AddDays(-9) };
                    var history = SystemHistory.From(whole.Firm, "YAF-1", "CT-1", come);
                    var inputs = new AssessmentInputs { Closed = [.. answers], Shifts = Shifts(place), Deliveries = Deliveries(come) };

                    var cold = Assessment.Of(history, asOf, inputs);
                    var before = memo.Visits;
                    Assert.Equal(Bytes(cold), Bytes(memo.Of(history, asOf, inputs)));

                    kinds.UnionWith(cold.Findings.Select(finding => finding.InEnglish.Kind));
                    wentOn += before > 0 ? 1 : 0;
                    if (acts[place].Kind == 9 && cold.Findings.FirstOrDefault(finding => finding.InEnglish.State == FindingState.Open)?.InEnglish is { } open)
                    {
                        closed++;
                        answers.Add(new FindingAnswer(open.Kind, About.Key(open.About), open.FirstSeen, asOf, "seen to"));
                    }
                }
            },
            iter: 4,
            threads: 1);

        Assert.True(wentOn > 100);
        Assert.True(closed > 0);
        Assert.Superset(new HashSet<string> { FindingKinds.MicrobiologyHigh, FindingKinds.MeterStopped, FindingKinds.ProbeReadsOff, FindingKinds.SummaryUndelivered, FindingKinds.ClockDue }, kinds);
    }

    [Fact]
    public void Of_OneVisitMore_WorksOutOnlyWhatIsNew()
    {
        var plant = Troubled();
        var whole = plant.Build();
        var memo = new AssessmentMemo();
        var asOf = HistoryBuilder.Start.AddDays(400);
        memo.Of(SystemHistory.From(whole.Firm, "YAF-1", "CT-1", plant.Visits.SkipLast(1)), asOf, AssessmentInputs.None);

        var before = GC.GetAllocatedBytesForCurrentThread();
        memo.Of(whole, asOf, AssessmentInputs.None);
        var warm = GC.GetAllocatedBytesForCurrentThread() - before;
        before = GC.GetAllocatedBytesForCurrentThread();
        Assessment.Of(whole, asOf);
        var cold = GC.GetAllocatedBytesForCurrentThread() - before;

        Assert.True(warm < cold / 3, FormattableString.Invariant($"{warm} of {cold} bytes"));
    }

    [Fact]
    public void Of_OtherSetUp_RemembersNothingOfTheOld()
    {
        var plant = Troubled();
        var memo = new AssessmentMemo();
        var asOf = HistoryBuilder.Start.AddDays(400);
        memo.Of(plant.Build(), asOf, AssessmentInputs.None);
        plant.Programme = programme => programme with { TargetCycles = 3 };

        Assert.Equal(Bytes(Assessment.Of(plant.Build(), asOf)), Bytes(memo.Of(plant.Build(), asOf, AssessmentInputs.None)));
    }

    [Fact]
    public void Of_OtherSettings_RemembersNothingOfTheOld()
    {
        var plant = Troubled();
        var document = plant.Document();
        var memo = new AssessmentMemo();
        var asOf = HistoryBuilder.Start.AddDays(400);
        SystemHistory With(double value) => SystemHistory.From(
            new FirmSetUp(document) { Engine = EngineSettings.Of([new EngineSettingChange("thresholds:coloniesPlan", value)]) }, "YAF-1", "CT-1", plant.Visits);
        Assert.NotEqual(Bytes(Assessment.Of(With(1e3), asOf)), Bytes(Assessment.Of(With(9e4), asOf)));
        memo.Of(With(1e3), asOf, AssessmentInputs.None);

        Assert.Equal(Bytes(Assessment.Of(With(9e4), asOf)), Bytes(memo.Of(With(9e4), asOf, AssessmentInputs.None)));
    }

    [Fact]
    public void Of_ManyAtOnce_GivesEachTheBytesOfAColdAssessment()
    {
        var plant = Troubled();
        var whole = plant.Build();
        var memo = new AssessmentMemo();
        var asOf = HistoryBuilder.Start.AddDays(400);
        var expected = Enumerable.Range(0, plant.Visits.Count + 1).Select(count => Bytes(Assessment.Of(SystemHistory.From(whole.Firm, "YAF-1", "CT-1", plant.Visits.Take(count)), asOf))).ToList();

        Parallel.For(0, 120, i =>
        {
            var count = (i * 7) % expected.Count;
            Assert.Equal(expected[count], Bytes(memo.Of(SystemHistory.From(whole.Firm, "YAF-1", "CT-1", plant.Visits.Take(count)), asOf, AssessmentInputs.None)));
        });
    }

    [Fact]
    public void Of_MoreVisitsThanMayBeKept_ForgetsTheOldest()
    {
        var plant = Troubled();
        var memo = new AssessmentMemo(mostVisits: 50);
        var document = plant.Document();
        var asOf = HistoryBuilder.Start.AddDays(400);
        foreach (var code in (string[])["CT-1", "CT-2", "CT-3"])
        {
            var firm = new FirmSetUp(document with { Systems = [document.Systems[0] with { Code = code }] });
            memo.Of(SystemHistory.From(firm, "YAF-1", code, plant.Visits.Select(visit => visit with { Systems = [visit.Systems[0] with { System = code }] })), asOf, AssessmentInputs.None);
            Assert.Equal(36, memo.Visits);
        }
    }

    private static IEnumerable<Visit> Versions(Visit visit, (int Kind, int Days, double Factor, int Ask) act)
    {
        yield return visit;
        for (var version = 2; version <= (act.Kind == 0 ? 3 : act.Kind < 3 ? 2 : 1); version++)
        {
            yield return visit with
            {
                Version = version,
                Amends = version - 1,
                AmendedBy = "RYA",
                Reason = "misread",
                AmendedAt = Moment.OfUtc(visit.Arrived.Utc.AddDays(act.Days * version)),
                Systems = [visit.Systems[0] with { Readings = [.. visit.Systems[0].Readings.Select(reading => reading.Test == TestCodes.Inhibitor ? reading with { Value = Math.Round(reading.Value!.Value * act.Factor / version) } : reading)] }],
            };
        }
    }

    // A meter that reads off becomes known at about a third of the visits, and is then forgotten again.
    private static IReadOnlyList<RoundShift> Shifts(int place) => place % 8 > 2 ? []
        : [new RoundShift(FindingKinds.InstrumentShift, "HM-1", TestCodes.Conductivity, DateOnly.FromDateTime(HistoryBuilder.Start.AddDays(150)), [new ShiftStep(HistoryBuilder.Start.AddDays(150), 0.08, HistoryBuilder.Start.AddDays(130), null)])];

    private static IReadOnlyList<SummaryDelivery> Deliveries(List<Visit> come) =>
    [
        .. come.Select((visit, i) => (visit.Id, Handed: visit.Left!.Value.Utc.AddHours(1), i)).Select(mail =>
            new SummaryDelivery(mail.Id, 1, mail.Handed, mail.i % 5 == 0 ? null : mail.Handed.AddHours(mail.i % 7 * 10), mail.i % 11 == 0 ? mail.Handed.AddHours(3) : null)),
    ];

    private static string Bytes(SystemAssessment assessment) => JsonSerializer.Serialize(assessment with { Figures = [] })
        + string.Join('\n', assessment.Figures.Select(figure => $"{figure.Code} {figure.About} {figure.VisitId} {figure.From:O} {figure.To:O} "
            + (figure.Result.HasValue ? JsonSerializer.Serialize(figure.Result.Value) : JsonSerializer.Serialize(figure.Result.Reasons)) + JsonSerializer.Serialize(figure.Inputs)));
}
