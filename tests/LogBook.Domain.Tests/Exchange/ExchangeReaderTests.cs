using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Exchange;

public sealed class ExchangeReaderTests
{
    [Fact]
    public void ReadAndCheck_ExamplesOfTheFormat_HaveNoIssue()
    {
        var setUp = ExchangeReader.ReadAndCheck(Examples.Text("set-up"), FirmSetUp.Empty);
        var visit = ExchangeReader.ReadAndCheck(Examples.Text("visit"), new FirmSetUp(setUp.Document!));
        var finding = ExchangeReader.ReadAndCheck(Examples.Text("finding"), new FirmSetUp(setUp.Document!));

        Assert.Empty(setUp.Issues);
        Assert.Empty(visit.Issues);
        Assert.Empty(finding.Issues);
        Assert.Equal(6, visit.Document!.Visits[0].Systems[0].Readings.Count);
    }

    [Fact]
    public void ReadAndCheck_TwentyErrors_AreAllToldAtOnceWithTheirPaths()
    {
        var issues = ExchangeReader.ReadAndCheck(Examples.Text("twenty-errors"), FirmSetUp.Empty).Issues;

        string[] expected =
        [
            "customers[0].contacts[0].email wrong-mail",
            "people[0].role unknown-value",
            "products[0].densityKgPerL negative",
            "products[1].colour unknown-field",
            "instruments[0].checks[0].unit unknown-unit",
            "rules[0].bands[0].unit unit-mismatch",
            "sites[0].timeZone unknown-time-zone",
            "systems[0].operation.week[0].to wrong-time",
            "systems[0].drums[0].heightCm required",
            "systems[0].pumps[1].drum unknown-code",
            "systems[0].programmes[0].feeds[1].weeks[3] out-of-range",
            "systems[0].programmes[0].from wrong-date",
            "visits[0].left left-before-arrived",
            "visits[0].systems[0].readings[0].unit required",
            "visits[0].systems[0].readings[2].unit unit-mismatch",
            "visits[0].systems[0].readings[3].perDrop required",
            "visits[0].systems[0].readings[5].resultAt result-before-taken",
            "visits[0].systems[0].hoursRun[0].hours negative",
            "visits[0].systems[0].meters[0].dial out-of-range",
            "visits[0].systems[0].switches[0].found unknown-value",
        ];
        Assert.Equal(expected.Order(StringComparer.Ordinal), issues.Select(i => $"{i.Path} {i.Code}").Order(StringComparer.Ordinal));
        Assert.All(issues, i => Assert.True(i.Blocks));
    }

    [Theory]
    [InlineData("visits[0].systems[0].switches[0].found", "found: \"manual\" was found, expected is one of automatic, forced-on, forced-off")]
    [InlineData("visits[0].systems[0].hoursRun[0].hours", "hours: -118.4 was found, expected is a number from 0")]
    [InlineData("visits[0].systems[0].readings[2].unit", "unit: mg/L does not fit conductivity, expected is one of uS/cm, mS/cm")]
    [InlineData("visits[0].left", "left: 3 Mar 2025 08:10 is before arrived 3 Mar 2025 09:05, expected is not before")]
    [InlineData("systems[0].drums[0].heightCm", "heightCm is missing, needed where shape is vertical-cylinder; expected is a number above 0")]
    public void ReadAndCheck_TwentyErrors_MessagesNameFieldValueAndExpectation(string path, string message)
    {
        var issues = ExchangeReader.ReadAndCheck(Examples.Text("twenty-errors"), FirmSetUp.Empty).Issues;

        Assert.Equal(message, Assert.Single(issues, i => i.Path == path).Message);
    }

    [Theory]
    [InlineData(Language.Spanish, "hours: se encontró -118.4, se espera un número desde 0")]
    [InlineData(Language.Portuguese, "hours: encontrado -118.4, esperado um número a partir de 0")]
    public void ReadAndCheck_OtherLanguage_MessagesAreInIt(Language language, string message)
    {
        var issues = ExchangeReader.ReadAndCheck(Examples.Text("twenty-errors"), FirmSetUp.Empty, language).Issues;

        Assert.Equal(message, Assert.Single(issues, i => i.Path.EndsWith(".hours", StringComparison.Ordinal)).Message);
    }

    [Fact]
    public void Read_NotJson_NamesTheLine()
    {
        var issue = Assert.Single(ExchangeReader.Read("{\n  \"format\": \"logbook-exchange\",\n  \"version\": 1,,\n}").Issues);

        Assert.Equal("malformed", issue.Code);
        Assert.StartsWith("line 3,", issue.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_BytesThatAreNotUtf8_AreRefused()
    {
        byte[] bytes = [.. "{\"format\":\""u8, 0xE9, .. "\"}"u8];

        Assert.Equal("not-utf8", Assert.Single(ExchangeReader.Read(bytes).Issues).Code);
    }

    [Theory]
    [InlineData("""{ "format": "other", "version": 1, "x": 1 }""", "format", "wrong-format")]
    [InlineData("""{ "format": "logbook-exchange", "version": 2, "x": 1 }""", "version", "wrong-version")]
    [InlineData("""{ "format": "logbook-exchange", "version": 1, "minor": 3, "x": 1 }""", "minor", "newer-minor")]
    [InlineData("""{ "version": 1 }""", "format", "required")]
    [InlineData("""{ "format": "logbook-exchange", "version": 1, "version": 1 }""", "version", "duplicate-key")]
    [InlineData("""{ "format": "logbook-exchange", "version": 1, "Sites": [] }""", "Sites", "unknown-field")]
    [InlineData("""{ "format": "logbook-exchange", "version": 1, "sites": {} }""", "sites", "wrong-kind")]
    [InlineData("""{ "format": "logbook-exchange", "version": 1, "sites": [null] }""", "sites[0]", "wrong-kind")]
    [InlineData("[]", "", "wrong-kind")]
    public void Read_WrongHead_TellsOneThing(string json, string path, string code)
    {
        var issue = Assert.Single(ExchangeReader.Read(json).Issues);

        Assert.Equal((path, code), (issue.Path, issue.Code));
    }

    [Fact]
    public void Read_NewerMinor_SaysThatANewerProgramWroteIt() => Assert.Equal(
        "minor: 3 was written by a newer LogBook, expected is at most 2",
        Assert.Single(ExchangeReader.Read("""{ "format": "logbook-exchange", "version": 1, "minor": 3 }""").Issues).Message);

    [Theory]
    [InlineData("\"readings\": [{ \"at\": \"tower\", \"test\": \"conductivity\", \"value\": 1e999, \"unit\": \"uS/cm\" }]", "readings[0].value", "not-finite")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"level\": 12, \"unit\": null }]", "drums[0].unit", "required")]
    [InlineData("\"drums\": [{ \"drum\": \"D-INH\", \"level\": 12, \"unit\": \"[pH]\" }]", "drums[0].unit", "unknown-unit")]
    [InlineData("\"bleedTest\": { \"litres\": 20, \"seconds\": 0 }", "bleedTest.seconds", "out-of-range")]
    [InlineData("\"alarms\": [{ \"text\": \"\\ud800\" }]", "alarms[0].text", "wrong-text")]
    public void Read_OneFault_IsToldWithItsPath(string members, string path, string code)
    {
        var issue = Assert.Single(ExchangeReader.Read(Examples.VisitWith(members)).Issues);

        Assert.Equal(("visits[0].systems[0]." + path, code), (issue.Path, issue.Code));
    }

    [Fact]
    public void Read_SettingFoundNull_IsNone()
    {
        var settings = ExchangeReader.Read(Examples.VisitWith("\"settings\": [{ \"name\": \"a\", \"found\": null, \"left\": null }, { \"name\": \"b\" }]"))
            .Document!.Visits[0].Systems[0].Settings;

        Assert.True(settings[0].Found!.IsNone);
        Assert.Null(settings[0].Left);
        Assert.Null(settings[1].Found);
    }

    [Fact]
    public void Read_MomentAsWritten_IsKept()
    {
        var json = Examples.VisitWith("", "\"left\": \"2025-03-03T11:05:00.1250+02:00\"");

        var left = ExchangeReader.Read(json).Document!.Visits[0].Left!.Value;

        Assert.Equal("2025-03-03T11:05:00.1250+02:00", left.Text);
        Assert.Contains("\"left\":\"2025-03-03T11:05:00.1250+02:00\"", VisitDocument.Canonical(ExchangeReader.Read(json).Document!.Visits[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void ReadAndCheck_OneVisitAmongThreeRefused_KeepsTheOthersForAnImportInPart()
    {
        var visit = Examples.VisitWith("\"running\": true");
        var inner = visit[(visit.IndexOf('[', StringComparison.Ordinal) + 1)..visit.LastIndexOf(']')];
        string Numbered(int n, string system) =>
            inner.Replace("0d2a99", $"0d2a{n}", StringComparison.Ordinal).Replace("CT-1", system, StringComparison.Ordinal);
        var json = $$"""{ "format": "logbook-exchange", "version": 1, "visits": [{{Numbered(91, "CT-1")}}, {{Numbered(92, "CT-9")}}, {{Numbered(93, "CT-1")}}] }""";

        var result = ExchangeReader.ReadAndCheck(json, Examples.Firm());

        Assert.Equal("visits[1].systems[0].system", Assert.Single(result.Issues).Path);
        Assert.Null(result.Document);
        Assert.Equal([1], result.RefusedVisits);
        Assert.Equal(2, result.Good!.Visits.Count);
    }
}
