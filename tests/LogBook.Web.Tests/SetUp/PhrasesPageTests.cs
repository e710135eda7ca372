using AngleSharp.Dom;
using Bunit;
using LogBook.Application.Sites;
using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;
using LogBook.Domain.Sites;
using LogBook.Web.Features.SetUp;
using LogBook.Web.Features.SetUp.Phrases;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.SetUp;

public sealed class PhrasesPageTests
{
    private static async Task<QuickPhrases> InUseAsync(SetUpPages pages) => await pages.App.Services.GetRequiredService<PhraseStore>().InUseAsync(pages.Viewer);

    [Fact]
    public async Task Add_InThreeLanguages_IsInUse_AndCanBeTakenAwayAgain()
    {
        await using var pages = await SetUpPages.ForAsync(PersonRole.Supervisor);
        var form = pages.Open<PhrasesPage>(SetUpLinks.Phrases);
        Assert.Contains("light algae", form.Find("#f-seen .fine-print").TextContent, StringComparison.Ordinal);

        SetUpPages.Add(form, "seen");
        SetUpPages.Fill(form, ("seen0-en", "moss"), ("seen0-es", "musgo"), ("seen0-pt", "musgo"));
        SetUpPages.SaveWell(form);
        Assert.Equal([new Text("moss", "musgo", "musgo")], (await InUseAsync(pages)).ByUse[PhraseUse.Seen]);

        form.Find("#f-seen0 button.quiet").Click();
        SetUpPages.SaveWell(form);
        Assert.Empty((await InUseAsync(pages)).ByUse);
    }

    [Theory]
    [InlineData(Language.English, "", "Phrase 1: Portuguese: missing.")]
    [InlineData(Language.Spanish, "uma; duas", "Frase 1: Portugués: se encontró «uma; duas», se espera una frase sin punto y coma.")]
    public async Task Save_WhatCannotBeUsed_StaysTypedAndSaysWhy(Language language, string portuguese, string message)
    {
        await using var pages = await SetUpPages.ForAsync(language: language);
        var form = pages.Open<PhrasesPage>(SetUpLinks.Phrases);

        SetUpPages.Add(form, "seen");
        SetUpPages.Fill(form, ("seen0-en", "moss"), ("seen0-es", "musgo"), ("seen0-pt", portuguese));
        SetUpPages.Save(form);

        form.WaitForAssertion(() => Assert.NotNull(form.Find("#form-problems button")));
        Assert.Equal(("f-seen0-pt", message), (form.Find("#form-problems button").GetAttribute("data-focus"), form.Find("#form-problems button").TextContent.Trim()));
        Assert.Equal("moss", form.Find("#f-seen0-en").GetAttribute("value"));
        Assert.Empty((await InUseAsync(pages)).ByUse);
    }
}
