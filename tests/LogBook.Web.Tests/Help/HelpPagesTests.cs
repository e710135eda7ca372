using System.Reflection;
using LogBook.Domain.Languages;
using LogBook.Web.Features.Help;
using Microsoft.AspNetCore.Components;

namespace LogBook.Web.Tests.Help;

public sealed class HelpPagesTests
{
    public static TheoryData<string> Templates() => [.. typeof(HelpPages).Assembly.GetTypes()
        .SelectMany(type => type.GetCustomAttributes<RouteAttribute>(inherit: false)).Select(route => route.Template).Distinct().Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Templates))]
    public void EveryPage_HasHelp(string template) =>
        Assert.Single(HelpPages.All, page => page.Routes.Contains(template, StringComparer.OrdinalIgnoreCase));

    [Fact]
    public void All_Keys_AreUniqueAndPlain()
    {
        Assert.Equal(HelpPages.All.Count, HelpPages.All.Select(page => page.Key).Distinct().Count());
        Assert.All(HelpPages.All, page => Assert.Matches("^[a-z][a-z0-9-]*$", page.Key));
    }

    [Fact]
    [Trait("goal", "U6")]
    public void All_Texts_AreThereInThreeLanguages()
    {
        foreach (var text in HelpPages.All.SelectMany(page => page.Paragraphs.Append(page.Title)))
        {
            Assert.All(Enum.GetValues<Language>(), language => Assert.False(string.IsNullOrWhiteSpace(text.In(language))));
        }

        foreach (var paragraph in HelpPages.All.SelectMany(page => page.Paragraphs))
        {
            Assert.Equal(3, new[] { paragraph.En, paragraph.Es, paragraph.Pt }.Distinct().Count());
        }
    }

    [Theory]
    [InlineData("account", "/help/account")]
    [InlineData("tokens?x=1", "/help/tokens")]
    [InlineData("visit/NUR-1", "/help/visit")]
    [InlineData("visits/0198a000-0000-7000-8000-00000000000a/amend", "/help/visit")]
    [InlineData("nowhere/at/all", "/help")]
    public void PathFor_Address_IsThePageOfItsScreen(string relative, string expected) => Assert.Equal(expected, HelpPages.PathFor(relative));
}
