using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Exchange;

public sealed class RoundTripTests
{
    private static string Plain(ExchangeDocument document) => JsonSerializer.Serialize(document, ExchangeJson.Default.ExchangeDocument);

    /// <summary>The same JSON with its names in another order, nulls added and white space.</summary>
    private static string Shuffled(string json, Random random)
    {
        return Shuffle(JsonNode.Parse(json)!).ToJsonString(new JsonSerializerOptions { WriteIndented = true });

        JsonNode Shuffle(JsonNode node)
        {
            if (node is JsonObject members)
            {
                var names = members.Select(m => m.Key).ToArray();
                random.Shuffle(names);
                var shuffled = new JsonObject();
                foreach (var name in names)
                {
                    shuffled[name] = members[name] is { } value ? Shuffle(value) : null;
                }

                // Absent and null mean the same.
                if (members.ContainsKey("asFound") && !members.ContainsKey("afterCleaning"))
                {
                    shuffled["afterCleaning"] = null;
                }

                return shuffled;
            }

            return node is JsonArray items ? new JsonArray([.. items.Select(i => Shuffle(i!))]) : node.DeepClone();
        }
    }

    [Fact]
    public void Documents_TheGenerator_MakesDocumentsWithoutIssue() => Documents.Any.Sample(
        document =>
        {
            var result = ExchangeReader.ReadAndCheck(Plain(document), FirmSetUp.Empty);
            Assert.Empty(result.Issues);
        },
        iter: 100);

    [Theory]
    [InlineData("", null)]
    [InlineData(", \"notifyWithinHours\": 24", 1)]
    [InlineData(", \"everyDays\": 30", 1)]
    public void Write_FieldsOfALaterMinor_SayIt(string more, int? minor)
    {
        var json = $$"""
            { "format": "logbook-exchange", "version": 1, "rules": [{ "code": "OXT-LEG", "name": "Oxterhelm Code, Legionella", "from": "2024-07-01", "test": "legionella", "everyDays": 90,
              "bands": [{ "from": 20, "unit": "[CFU]/mL", "severity": "plan"{{more}} }] }] }
            """;

        var written = ExchangeWriter.Write(ExchangeReader.ReadAndCheck(json, FirmSetUp.Empty).Document!);

        Assert.Equal(minor, ExchangeReader.Read(written).Document!.Minor);
        Assert.Equal(written, ExchangeWriter.Write(ExchangeReader.Read(written).Document!));
    }

    [Theory]
    [InlineData("", null)]
    [InlineData(", \"meters\": [{ \"meter\": \"MU\", \"dial\": 48211, \"firstDial\": 84211 }]", 1)]
    [InlineData(", \"meters\": [{ \"meter\": \"MU\", \"total\": 48211, \"firstTotal\": 48211 }]", 1)]
    [InlineData(", \"drums\": [{ \"drum\": \"D-INH\", \"level\": 41.5, \"unit\": \"cm\", \"firstLevel\": 14.5 }]", 1)]
    [InlineData(", \"hoursRun\": [{ \"output\": \"bleed\", \"hours\": 118.4, \"firstHours\": 1184 }]", 1)]
    public void Write_CountersAsFirstTyped_SayTheMinor(string more, int? minor)
    {
        var json = $$"""
            { "format": "logbook-exchange", "version": 1, "visits": [{ "id": "01955b40-5e60-7c77-9a57-0a6f8a0d2a10", "site": "PLU-1", "technician": "RYA", "kind": "routine",
              "arrived": "2025-03-03T09:05:00+00:00", "systems": [{ "system": "CT-1"{{more}} }] }] }
            """;

        var written = ExchangeWriter.Write(ExchangeReader.Read(json).Document!);

        Assert.Equal(minor, ExchangeReader.Read(written).Document!.Minor);
        Assert.Equal(written, ExchangeWriter.Write(ExchangeReader.Read(written).Document!));
    }

    [Theory]
    [InlineData("\"rules\": [{ \"code\": \"OXT-LEG\", \"name\": \"Legionella\", \"from\": \"2024-07-01\", \"keepYears\": 7 }]", 2)]
    [InlineData("\"sites\": [{ \"code\": \"YAF-1\", \"customer\": \"YAF\", \"name\": \"Yaffleford College\", \"timeZone\": \"Europe/London\", \"summaryByMonthDay\": 10 }]", 2)]
    [InlineData("\"systems\": [{ \"site\": \"YAF-1\", \"code\": \"CT-1\", \"name\": \"Tower\", \"kind\": \"open-recirculating\", \"dischargeUsPerCm\": 2500, \"dischargeSource\": \"permit 12\" }]", 2)]
    [InlineData("\"systems\": [{ \"site\": \"YAF-1\", \"code\": \"CT-1\", \"name\": \"Tower\", \"kind\": \"open-recirculating\" }]", null)]
    public void Write_FieldsOfTheSecondMinor_SayItAndComeBack(string part, int? minor)
    {
        var read = ExchangeReader.Read($$"""{ "format": "logbook-exchange", "version": 1, {{part}} }""");
        Assert.Empty(read.Issues);

        var written = ExchangeWriter.Write(read.Document!);

        Assert.Equal(minor, ExchangeReader.Read(written).Document!.Minor);
        Assert.Equal(written, ExchangeWriter.Write(ExchangeReader.Read(written).Document!));
        Assert.Equal(minor is not null, written.Contains("keepYears", StringComparison.Ordinal) || written.Contains("summaryByMonthDay", StringComparison.Ordinal) || written.Contains("permit 12", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("0")]
    [InlineData("29")]
    public void Read_DayThatNotEveryMonthHas_IsRefused(string day) => Assert.Contains(
        ExchangeReader.Read($$"""{ "format": "logbook-exchange", "version": 1, "sites": [{ "code": "YAF-1", "customer": "YAF", "name": "Y", "timeZone": "Europe/London", "summaryByMonthDay": {{day}} }] }""").Issues,
        issue => issue.Path == "sites[0].summaryByMonthDay");

    [Fact]
    public void Write_AfterRead_IsTheCanonicalDocument() => Documents.Any.Sample(
        document =>
        {
            var written = ExchangeWriter.Write(document);

            // export(import(d)) = canonical(d), from any order of names and with nulls in place of absence.
            var imported = ExchangeReader.Read(Shuffled(Plain(document), new Random(1))).Document!;
            Assert.Equal(written, ExchangeWriter.Write(imported));
            Assert.Equal(written, ExchangeWriter.Write(ExchangeReader.Read(written).Document!));
            Assert.Equal(written, ExchangeWriter.Write(ExchangeWriter.Canonical(document)));
        },
        iter: 100);

    [Fact]
    public void Write_OtherOrderOfSetUpAndVisits_IsTheSameText() => Documents.Any.Sample(
        document =>
        {
            var turned = document with
            {
                Customers = [.. document.Customers.Reverse()],
                People = [.. document.People.Reverse()],
                Rules = [.. document.Rules.Reverse()],
                Sites = [.. document.Sites.Reverse()],
                Systems = [.. document.Systems.Reverse().Select(s => s with { Drums = [.. s.Drums.Reverse()], Programmes = [.. s.Programmes.Reverse()] })],
                Visits = [.. document.Visits.Reverse()],
                Findings = [.. document.Findings.Reverse()],
            };

            Assert.Equal(ExchangeWriter.Write(document), ExchangeWriter.Write(turned));
        },
        iter: 100);

    [Fact]
    public void Sha256_OtherOrderOfNamesAndWhiteSpace_IsTheSame() => Documents.Any.Sample(
        document =>
        {
            var again = ExchangeReader.Read(Shuffled(Plain(document), new Random(7))).Document!;

            Assert.Equal(document.Visits.Select(VisitDocument.Sha256), again.Visits.Select(VisitDocument.Sha256));
        },
        iter: 100);

    [Fact]
    public void Parse_OfCanonicalPieces_GivesThemBack() => Documents.Any.Sample(
        document =>
        {
            foreach (var visit in document.Visits)
            {
                Assert.Equal(VisitDocument.Canonical(visit), VisitDocument.Canonical(ExchangeReader.Parse<Visit>(VisitDocument.Canonical(visit))));
            }

            foreach (var system in document.Systems)
            {
                var text = ExchangeWriter.CanonicalOf(system);
                Assert.Equal(text, ExchangeWriter.CanonicalOf(ExchangeReader.Parse<WaterSystem>(text)));
            }
        },
        iter: 50);

    [Fact]
    public void Canonical_QuantityAsEntered_IsKept()
    {
        var json = Examples.Text("set-up").Replace("\"volumeL\": 10000,", "\"volumeL\": 10000, \"volumeLEntered\": { \"value\": 2641.72, \"unit\": \"[gal_us]\" },", StringComparison.Ordinal);

        var text = ExchangeWriter.Write(ExchangeReader.Read(json).Document!);

        Assert.Contains("\"volumeL\":10000,\"volumeLEntered\":{\"unit\":\"[gal_us]\",\"value\":2641.72}", text, StringComparison.Ordinal);
    }

    [Fact]
    public void WithIds_MissingIdentities_AreFilledAlikeEveryTime()
    {
        var visit = ExchangeReader.Read(Examples.VisitWith("\"actions\": [{ \"text\": \"a\" }, { \"text\": \"a\" }]", "\"recommendations\": [{ \"text\": \"r\" }]")).Document!.Visits[0];

        var once = VisitDocument.WithIds(visit);
        var twice = VisitDocument.WithIds(visit);

        Assert.Equal(VisitDocument.Sha256(once), VisitDocument.Sha256(twice));
        Guid[] ids = [.. once.Systems[0].Actions.Select(a => a.Id!.Value), once.Recommendations[0].Id!.Value];
        Assert.Equal(3, ids.Distinct().Count());
        Assert.All(ids, id => Assert.Equal((7, 0x8), (id.Version, id.Variant & 0xC)));
        Assert.Same(once, VisitDocument.WithIds(once));

        // The first 48 bits are the visit's time in Unix milliseconds (RFC 9562 section 5.7).
        Assert.Equal(new DateTimeOffset(visit.Arrived.Utc).ToUnixTimeMilliseconds().ToString("x12", CultureInfo.InvariantCulture), ids[0].ToString("N")[..12]);
    }
}
