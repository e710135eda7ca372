using System.Reflection;
using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Tests.Assessments;

public sealed class FigureTextsTests
{
    private static readonly string[] Constants = [.. typeof(FigureCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Where(code => code.IsLiteral)
        .Select(code => (string)code.GetRawConstantValue()!)];

    public static TheoryData<string> Codes => [.. Constants];

    /// <summary>Every figure there can be, not only those that one plant yields.</summary>
    [Theory]
    [MemberData(nameof(Codes))]
    public void EveryFigure_HasNameFormulaAndSourceInEveryLanguage(string code)
    {
        var (name, how) = (FigureTexts.NameOf(code), FigureTexts.ExplanationOf(code));

        Assert.NotNull(how);
        Assert.All(Enum.GetValues<Language>(), language =>
        {
            Assert.NotEqual(code, name.In(language));
            Assert.All([name, how.Formula, how.Source], text => Assert.True(text.In(language).Length > 3, $"{code} {language}: '{text.In(language)}'"));
        });

        // Spanish and Portuguese share words, English shares none of these sentences with them.
        Assert.All([name, how.Formula, how.Source], text => Assert.DoesNotContain(text.En, new[] { text.Es, text.Pt }));
    }

    [Fact]
    public void Codes_AreThoseThatHaveTexts() => Assert.Equal(
        Constants.Order(StringComparer.Ordinal), FigureTexts.Codes.Order(StringComparer.Ordinal));

    [Fact]
    public void InputNameOf_WithADay_ReadsAsInEachLanguage()
    {
        var name = FigureTexts.InputNameOf("own-reading:2025-10-17");

        Assert.Equal("own reading of " + Shown.Day(new DateOnly(2025, 10, 17), Language.English), name.En);
        Assert.Equal("lectura propia del 17/10/2025", name.Es);
        Assert.Equal("leitura própria de 17/10/2025", name.Pt);
    }

    [Theory]
    [InlineData("own-reading:D-INH", "own reading of D-INH")]
    [InlineData("own-reading", "own reading of")]
    [InlineData("route:nobody-knows", "cycles by one route nobody-knows")]
    [InlineData("nobody-knows:2025-10-17", "nobody-knows:2025-10-17")]
    public void InputNameOf_WithoutADay_KeepsWhatFollows(string name, string words) => Assert.Equal(words, FigureTexts.InputNameOf(name).En);

    [Theory]
    [InlineData(FigureCodes.MakeUpShift, "calcium", "Reposición frente a su pasado: Dureza cálcica")]
    [InlineData(FigureCodes.ProductUsed, "D-INH", "Producto usado D-INH")]
    [InlineData(FigureCodes.BleedHours, "bleed", "Horas de purga")]
    public void TitleOf_SaysTestsInTheReadersLanguageAndCodesAsTheyStand(string code, string about, string title) => Assert.Equal(title, FigureTexts.TitleOf(code, about).Es);

    [Fact]
    public void InputNameOf_RouteOfAFigure_IsTheNameOfTheRoute() =>
        Assert.Equal(FigureTexts.NameOf(FigureCodes.CyclesByChloride), FigureTexts.InputNameOf("route:" + FigureCodes.CyclesByChloride));
}
