using System.Reflection;
using LogBook.Domain.Findings;

namespace LogBook.Domain.Tests.Findings;

public sealed class FindingKindsTests
{
    // Found over several systems or by the post, not by a rule that looks at the visits of one.
    private static readonly string[] ByNoRule =
        [FindingKinds.InstrumentShift, FindingKinds.LotShift, FindingKinds.SecondLook, FindingKinds.SummaryUndelivered];

    [Fact]
    public void All_IsEveryRulesKindAndTheFourOfNoRule_EachOnce() => Assert.Equal(
        FindingRules.All.Select(rule => rule.Kind).Concat(ByNoRule).Order(StringComparer.Ordinal),
        FindingKinds.All.Order(StringComparer.Ordinal));

    [Fact]
    public void All_IsEveryConstant() => Assert.Equal(
        typeof(FindingKinds).GetFields(BindingFlags.Public | BindingFlags.Static).Where(kind => kind.IsLiteral)
            .Select(kind => (string)kind.GetRawConstantValue()!).Order(StringComparer.Ordinal),
        FindingKinds.All.Order(StringComparer.Ordinal));

    /// <summary>A rule that is written but not listed would never be asked.</summary>
    [Fact]
    public void Rules_AreEveryClassOfRule_EachOnce() => Assert.Equal(
        typeof(IFindingRule).Assembly.GetTypes().Where(type => type is { IsClass: true, IsAbstract: false } && type.IsAssignableTo(typeof(IFindingRule)))
            .Select(type => type.Name).Order(StringComparer.Ordinal),
        FindingRules.All.Select(rule => rule.GetType().Name).Order(StringComparer.Ordinal));

    [Fact]
    public void RulesForRecordsOnly_AreSomeOfAll()
    {
        Assert.NotEmpty(FindingRules.ForRecordsOnly);
        Assert.Subset(
            FindingRules.All.Select(rule => rule.GetType()).ToHashSet(),
            FindingRules.ForRecordsOnly.Select(rule => rule.GetType()).ToHashSet());
    }
}
