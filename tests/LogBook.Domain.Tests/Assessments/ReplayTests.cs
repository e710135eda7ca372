using System.Text.Json;
using CsCheck;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Assessments;

public class ReplayTests
{
    [Fact]
    public void Of_SameDocumentsInAnyOrder_GivesTheSameBytes()
    {
        var builder = Troubled();
        var expected = Bytes(builder.Assess(visits: builder.Visits));

        Gen.Shuffle(builder.Visits.ToArray()).Sample(visits => Bytes(builder.Assess(visits: visits)) == expected, iter: 20);
    }

    [Fact]
    public void Of_EarlierMoment_KnowsNothingOfLaterVisits()
    {
        var builder = Troubled();
        var asOf = HistoryBuilder.Start.AddDays(100);

        var all = builder.Assess(asOf);
        var early = builder.Assess(asOf, builder.Visits.Where(visit => visit.Left!.Value.Utc <= asOf));

        Assert.NotEmpty(all.Findings);
        Assert.Equal(Bytes(early), Bytes(all));
    }

    [Fact]
    public void Of_LaterMoment_KeepsTheFirstDays()
    {
        var builder = Troubled();
        var early = builder.Assess(HistoryBuilder.Start.AddDays(100)).Findings.Select(f => (f.InEnglish.Kind, f.InEnglish.FirstSeen)).ToList();
        var late = builder.Assess().Findings.Select(f => (f.InEnglish.Kind, f.InEnglish.FirstSeen)).ToHashSet();

        Assert.NotEmpty(early);
        Assert.All(early, finding => Assert.Contains(finding, late));
    }

    [Fact]
    public void Of_LateResult_IsFirstSeenOnTheDayOfTheResult()
    {
        var result = HistoryBuilder.Start.AddDays(60);
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, record => record with
        {
            Readings = [HistoryBuilder.Tower(TestCodes.Inhibitor, 40, "mg/L") with { Source = ReadingSource.Lab, ResultAt = Moment.OfUtc(result) }],
        });

        var before = builder.Assess(result.AddHours(-1));
        var after = builder.Assess(result);

        Assert.Empty(before.All(FindingKinds.ResidualLow));
        var finding = after.Open(FindingKinds.ResidualLow)!;
        Assert.Equal(new DateOnly(2025, 3, 7), finding.FirstSeen);
        Assert.Equal(builder.IdOf(2), finding.FirstVisit);
    }

    [Fact]
    public void Of_Amendment_CountsFromWhenItWasAmended()
    {
        var builder = new HistoryBuilder().Every(28, 3);
        var last = builder.Visits[2];
        var amended = last with
        {
            Version = 2,
            Amends = 1,
            AmendedAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(58)),
            Systems = [last.Systems[0] with { Readings = [HistoryBuilder.Tower(TestCodes.Inhibitor, 40, "mg/L")] }],
        };
        List<Visit> visits = [.. builder.Visits, amended];

        Assert.Empty(builder.Assess(HistoryBuilder.Start.AddDays(57), visits).All(FindingKinds.ResidualLow));
        Assert.Equal(new DateOnly(2025, 3, 5), builder.Assess(HistoryBuilder.Start.AddDays(59), visits).Open(FindingKinds.ResidualLow)!.FirstSeen);
    }

    [Fact]
    public void Of_AmendmentThatTakesTheEvidenceAway_Closes()
    {
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.Inhibitor, 4, "mg/L")] });
        var last = builder.Visits[2];
        var amended = last with
        {
            Version = 2,
            AmendedAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(57)),
            Systems = [last.Systems[0] with { Readings = [HistoryBuilder.Tower(TestCodes.Inhibitor, 104, "mg/L")] }],
        };

        var finding = builder.Assess(HistoryBuilder.Start.AddDays(58), [.. builder.Visits, amended]).All(FindingKinds.ResidualLow).Single();

        Assert.Equal((FindingState.Closed, new DateOnly(2025, 3, 4)), (finding.State, finding.ClosedOn!.Value));
    }

    [Fact]
    public void Of_EveryFinding_IsWordedInThreeLanguages()
    {
        var findings = Troubled().Assess().Findings;

        Assert.NotEmpty(findings);
        Assert.All(findings, finding =>
        {
            Assert.NotEqual(finding.InEnglish.Text, finding.InSpanish.Text);
            Assert.NotEqual(finding.InSpanish.Text, finding.InPortuguese.Text);
            Assert.DoesNotContain("{", finding.InEnglish.Text + finding.InSpanish.Text + finding.InPortuguese.Text, StringComparison.Ordinal);
            Assert.True(finding.InEnglish.Suggests.Count <= 3);
            Assert.Equal(finding.InEnglish.Evidence.Select(e => e.Value), finding.InPortuguese.Evidence.Select(e => e.Value));
        });
    }

    [Fact]
    public void Of_NoVisits_IsEmpty() => Assert.Empty(new HistoryBuilder().Assess().Findings);

    /// <summary>
    /// Rules may only read facts: nothing in their code may name a clock, a zone of the machine or a random source.
    /// </summary>
    [Fact]
    public void Rules_ReadNoClock()
    {
        var ambient = typeof(Assessment).Assembly.GetTypes()
            .Where(type => type.Namespace is "LogBook.Domain.Findings" or "LogBook.Domain.Estimates" or "LogBook.Domain.Intervals" or "LogBook.Domain.Assessments")
            .SelectMany(type => type.GetMethods(All).Cast<System.Reflection.MethodBase>().Concat(type.GetConstructors(All)).Select(method => (type, method)))
            .Where(pair => pair.method.DeclaringType == pair.type && CallsAmbient(pair.method))
            .Select(pair => pair.type.Name + "." + pair.method.Name);

        Assert.Empty(ambient);
        Assert.True(CallsAmbient(typeof(ReplayTests).GetMethod(nameof(ReadsTheClock), All)!), "the test must be able to fail");
    }

    private const System.Reflection.BindingFlags All = System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.NonPublic
        | System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.Instance | System.Reflection.BindingFlags.DeclaredOnly;

    private static readonly HashSet<string> Ambient =
        ["get_Now", "get_UtcNow", "get_Today", "get_Local", "GetTimestamp", "get_TickCount", "get_TickCount64", "GetUtcNow", "NewGuid", "CreateVersion7", "get_Shared"];

    private static DateTime ReadsTheClock() => TimeProvider.System.GetUtcNow().UtcDateTime;

    // A call is an opcode (call 0x28, callvirt 0x6F) and the token of its target: every four bytes behind one that resolve are looked at.
    private static bool CallsAmbient(System.Reflection.MethodBase method)
    {
        var code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        for (var i = 0; i + 4 < code.Length; i++)
        {
            if (code[i] is not (0x28 or 0x6F))
            {
                continue;
            }

            try
            {
                var token = BitConverter.ToInt32(code, i + 1);
                var called = method.Module.ResolveMethod(token, method.DeclaringType?.GetGenericArguments(), method is System.Reflection.MethodInfo { IsGenericMethod: true } m ? m.GetGenericArguments() : null);
                if (called is not null && Ambient.Contains(called.Name) && called.DeclaringType?.Namespace?.StartsWith("System", StringComparison.Ordinal) == true)
                {
                    return true;
                }
            }
            catch (ArgumentException)
            {
                // Not a call: the byte belongs to an operand.
            }
            catch (BadImageFormatException)
            {
                // Likewise.
            }
        }

        return false;
    }

    private static HistoryBuilder Troubled()
    {
        var builder = new HistoryBuilder { InhibitorPerDayL = 0.15 }.Every(28, 3);
        builder.Visit(84, record => record with
        {
            Probes = [HistoryBuilder.Probe(1100, 1232)],
            Readings =
            [
                .. record.Readings.Where(r => r.Test != TestCodes.Inhibitor),
                HistoryBuilder.Tower(TestCodes.Inhibitor, 40, "mg/L") with { ResultAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(90)) },
            ],
            Switches = [new SwitchReading { Output = "bleed", Found = SwitchPosition.ForcedOn, Left = SwitchPosition.Automatic }],
        });
        builder.Cycles = 6;
        builder.Chloride = 138;
        builder.Visit(112).Visit(140, record => record with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1000) }] });
        return builder;
    }

    private static string Bytes(SystemAssessment assessment) => JsonSerializer.Serialize(new
    {
        assessment.Findings,
        Figures = assessment.Figures.Select(f => new { f.Code, f.About, f.VisitId, Value = f.Result.HasValue ? f.Result.Value.Value : (double?)null, U = f.Result.HasValue ? f.Result.Value.StandardUncertainty : (double?)null, f.Inputs }),
        NotJudged = assessment.NotJudged.Select(n => new { n.Kind, n.About, n.Why.Code }),
    });
}
