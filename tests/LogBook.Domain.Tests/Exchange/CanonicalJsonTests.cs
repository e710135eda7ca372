using System.Globalization;
using System.Text.Json;
using LogBook.Domain.Exchange;

namespace LogBook.Domain.Tests.Exchange;

public sealed class CanonicalJsonTests
{
    private static string Canonical(string json)
    {
        using var document = JsonDocument.Parse(json);
        return CanonicalJson.Of(document.RootElement);
    }

    // RFC 8785 appendix B, every finite row; compared with the copies of the table in public test suites of the scheme.
    [Theory]
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef4e", "999999999999999700000")]
    [InlineData("444b1ae4d6e2ef4f", "999999999999999900000")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8c", "9.999999999999997e-7")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555554", "333333333.33333325")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555556", "333333333.3333334")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    [InlineData("becbf647612f3696", "-0.0000033333333333333333")]
    [InlineData("43143ff3c1cb0959", "1424953923781206.2")]
    public void Number_AppendixB_IsWrittenAsPublished(string bits, string expected) =>
        Assert.Equal(expected, CanonicalJson.Number(BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture))));

    // RFC 8785 appendix B, the rows that must be refused.
    [Theory]
    [InlineData("7fffffffffffffff")]
    [InlineData("7ff0000000000000")]
    public void Number_NotFinite_IsRefused(string bits) => Assert.Throws<ArgumentException>(
        () => CanonicalJson.Number(BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture))));

    // RFC 8785 section 3.2.2, sample object, and its canonical form in section 3.2.3.
    [Fact]
    public void Of_SampleOfTheRfc_IsWrittenAsPublished()
    {
        const string sample = """
            {
              "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
              "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
              "literals": [null, true, false]
            }
            """;

        Assert.Equal(
            "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}",
            Canonical(sample));
    }

    // RFC 8785 section 3.2.3, the sample of sorting: UTF-16 code units, so the emoji's surrogates stand before U+FB33.
    [Fact]
    public void Of_NamesOfTheRfc_AreSortedByUtf16()
    {
        const string sample = """
            { "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
              "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis" }
            """;

        using var sorted = JsonDocument.Parse(Canonical(sample));

        Assert.Equal(
            ["Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh"],
            sorted.RootElement.EnumerateObject().Select(m => m.Value.GetString()!));
    }

    [Fact]
    public void Of_NameTwice_IsRefused() => Assert.Throws<ArgumentException>(() => Canonical("""{"a":1,"a":2}"""));

    [Fact]
    public void Of_ItsOwnResult_IsTheSame()
    {
        var once = Canonical(Examples.Text("visit"));

        Assert.Equal(once, Canonical(once));
    }
}
