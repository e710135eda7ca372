using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;

namespace LogBook.Domain.Tests.Assessments;

public class SteadyPlantTests
{
    [Fact]
    public void Of_SteadyPlant_HasNoFinding()
    {
        var assessment = new HistoryBuilder().Every(28, 14).Assess();

        Assert.Empty(assessment.Findings.Select(finding => finding.InEnglish.Kind + ": " + finding.InEnglish.Text));
    }

    [Fact]
    public void Of_SteadyPlant_FiguresCloseTheBalance()
    {
        var builder = new HistoryBuilder().Every(28, 8);

        var assessment = builder.Assess();

        // 28 days × 19.4 m³ = 543.2 m³ of make-up; 4.5 cycles by both routes; loss 543.2 / 4.5 = 120.7 m³, evaporation the rest.
        var last = builder.IdOf(7);
        Assert.Equal(543_200, assessment.Figure(FigureCodes.MakeUp, last)!.Result.Value.Value, 1.0);
        Assert.Equal(4.5, assessment.Figure(FigureCodes.CyclesBest, last)!.Result.Value.Value, 0.01);
        Assert.Equal(120_711, assessment.Figure(FigureCodes.LiquidLoss, last)!.Result.Value.Value, 300.0);
        Assert.Equal(543_200 - 120_711, assessment.Figure(FigureCodes.Evaporation, last)!.Result.Value.Value, 300.0);

        // Bleed 28 × 4.3 h × 1,000 L/h = 120.4 m³: the loss is explained within its uncertainty (20 % of an untimed valve).
        var unexplained = assessment.Figure(FigureCodes.UnexplainedLoss, last)!.Result.Value;
        Assert.True(Math.Abs(unexplained.Value) < unexplained.ExpandedUncertainty);
        Assert.Equal(-0.2 * 120_400, unexplained.Common["valve:bleed"], 10.0);
        Assert.Equal(1.0, assessment.Figure(FigureCodes.UsedOverExpected, last)!.Result.Value.Value, 0.01);
    }

    [Fact]
    public void Of_EveryFigure_HasANameAnExplanationAndNamedInputs()
    {
        var assessment = new HistoryBuilder().Every(28, 8).Assess();

        Assert.NotEmpty(assessment.Figures);
        Assert.All(assessment.Figures, figure =>
        {
            Assert.NotEqual(figure.Code, FigureTexts.NameOf(figure.Code).Es);
            Assert.NotNull(FigureTexts.ExplanationOf(figure.Code));
            Assert.All(figure.Inputs, input => Assert.NotEqual(input.Name, FigureTexts.InputNameOf(input.Name).Es));
        });
    }

    [Fact]
    public void NameOf_EveryKind_HasWordsInThreeLanguages() => Assert.All(FindingKinds.All, kind =>
    {
        var name = FindingTexts.NameOf(kind);
        Assert.All([name.En, name.Es, name.Pt], word => Assert.NotEqual(kind, word));
    });

    [Fact]
    public void Of_EighteenMonthsOfWeeklyVisits_AllocatesLittle()
    {
        var history = new HistoryBuilder { VisitEveryDays = 7 }.Every(7, 78).Build();
        Assessment.Of(history, HistoryBuilder.Start.AddDays(550));

        var before = GC.GetAllocatedBytesForCurrentThread();
        Assessment.Of(history, HistoryBuilder.Start.AddDays(550));
        var megabytes = (GC.GetAllocatedBytesForCurrentThread() - before) / 1e6;

        // Bytes stand for the work: they do not depend on how busy the machine is.
        Assert.True(megabytes < 60, $"{megabytes} MB");
    }
}
