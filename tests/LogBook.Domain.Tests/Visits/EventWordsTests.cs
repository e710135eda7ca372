using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Visits;

public class EventWordsTests
{
    [Theory]
    [InlineData("Salidas probadas una a una", "Outputs tested one by one")]
    [InlineData("Nenhum alarme no controlador", "No alarm at the controller")]
    [InlineData("fan belt slipped", "fan belt slipped")]
    public void NameOf_Other_IsItsNote_InTheReadersLanguageWhereItWasSaidByATap(string note, string english)
    {
        var happened = new VisitEvent { Type = EventType.Other, Note = note };

        Assert.Equal(english, EventWords.NameOf(happened).In(Language.English));
        Assert.Null(EventWords.NoteOf(happened));
    }

    [Fact]
    public void NameOf_AnyOther_IsItsType_WithTheNoteBeside()
    {
        var happened = new VisitEvent { Type = EventType.StrainerCleaned, Note = "half full of leaves" };

        Assert.Equal("Filtro limpiado", EventWords.NameOf(happened).In(Language.Spanish));
        Assert.Equal("half full of leaves", EventWords.NoteOf(happened));
        Assert.Equal(VisitTexts.NameOf(EventType.Other), EventWords.NameOf(new VisitEvent { Type = EventType.Other, Note = " " }));
    }
}
