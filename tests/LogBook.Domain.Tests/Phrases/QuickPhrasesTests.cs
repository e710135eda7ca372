using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;

namespace LogBook.Domain.Tests.Phrases;

public sealed class QuickPhrasesTests
{
    private static readonly Text Gate = new("gate code changed", "cambió el código del portón", "mudou o código do portão");

    private static QuickPhrases Of(PhraseUse use, params Text[] phrases) => new(new Dictionary<PhraseUse, IReadOnlyList<Text>> { [use] = phrases });

    [Fact]
    public void Write_ThenRead_GivesTheSame_InOneText()
    {
        var phrases = new QuickPhrases(new Dictionary<PhraseUse, IReadOnlyList<Text>>
        {
            [PhraseUse.Seen] = [new("moss", "musgo", "musgo"), new("drift", "arrastre", "arraste")],
            [PhraseUse.Changed] = [Gate],
            [PhraseUse.Action] = [],
        });

        var json = phrases.Write();

        Assert.Equal(
            """{"changed":[{"en":"gate code changed","es":"cambió el código del portón","pt":"mudou o código do portão"}],"seen":[{"en":"moss","es":"musgo","pt":"musgo"},{"en":"drift","es":"arrastre","pt":"arraste"}]}""",
            json);
        var read = QuickPhrases.Read(json);
        Assert.Equal([Gate], read.ByUse[PhraseUse.Changed]);
        Assert.Equal(phrases.ByUse[PhraseUse.Seen], read.ByUse[PhraseUse.Seen]);
        Assert.Equal(2, read.ByUse.Count);
        Assert.Equal(json, read.Write());
    }

    [Theory]
    [InlineData("gate code", "", "código", "changed[0].es", "required")]
    [InlineData("gate; code", "código", "código", "changed[0].en", "semicolon")]
    [InlineData("x", "código", "0123456789012345678901234567890123456789012345678901234567890", "changed[0].pt", "too-long")]
    public void Check_WhatCannotBeUsed_IsNamedByItsPlace(string en, string es, string pt, string path, string code)
    {
        var issue = Assert.Single(Of(PhraseUse.Changed, new Text(en, es, pt)).Check(Language.English));

        Assert.Equal((path, code, true), (issue.Path, issue.Code, issue.Blocks));
    }

    [Fact]
    public void Check_TheSameWordsTwice_AreNamedInEachLanguage() =>
        Assert.Equal(["seen[1].en", "seen[1].pt"], Of(PhraseUse.Seen, new("moss", "musgo", "musgo"), new("Moss", "musgos", "musgo")).Check(Language.Spanish).Select(issue => issue.Path));

    [Fact]
    public void Check_AsManyAsAreTaken_AndOneMore()
    {
        Text[] many = [.. Enumerable.Range(0, QuickPhrases.MostOfOneUse + 1).Select(i => new Text($"a{i}", $"b{i}", $"c{i}"))];

        Assert.Empty(Of(PhraseUse.Seen, many[..^1]).Check(Language.English));
        Assert.Equal("too-many", Assert.Single(Of(PhraseUse.Seen, many).Check(Language.English)).Code);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{")]
    public void Read_WhatIsNoObject_Throws(string json) => Assert.ThrowsAny<System.Text.Json.JsonException>(() => QuickPhrases.Read(json));
}
