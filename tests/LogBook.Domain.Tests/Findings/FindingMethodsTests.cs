using System.Reflection;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Tests.Findings;

public sealed class FindingMethodsTests
{
    public static TheoryData<string> Kinds => [.. typeof(FindingKinds)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Where(kind => kind.IsLiteral)
        .Select(kind => (string)kind.GetRawConstantValue()!)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Of_EveryKind_SaysMethodAndSourceInEveryLanguage(string kind)
    {
        var method = FindingMethods.Of(kind);

        Assert.All(
            [method.Judged, method.Source],
            text => Assert.Equal(3, Enum.GetValues<Language>().Select(text.In).Where(said => said.Length > 20).Distinct().Count()));
    }
}
