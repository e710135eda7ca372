using LogBook.Application.History;

namespace LogBook.Application.Tests.Readers;

public sealed class CsvTextTests
{
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@x", "'@x")]
    [InlineData("  =1", "\"'  =1\"", false)]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("say \"so\"", "\"say \"\"so\"\"\"")]
    [InlineData("plain", "plain")]
    [Trait("goal", "S7")]
    public void Field_TextThatLooksLikeAFormula_IsGuarded(string text, string expected, bool exact = true)
    {
        var field = CsvText.Field(text);

        if (exact)
        {
            Assert.Equal(expected, field);
        }
        else
        {
            Assert.StartsWith("'", field.Trim('"'), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Field_NegativeNumber_StaysANumber() => Assert.Equal("-7.4", CsvText.Field(-7.4));
}
