using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using LogBook.Application.Mail;
using LogBook.Application.Summaries;
using LogBook.Application.Tests.Mail;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Summaries;
using LogBook.Domain.Visits;
using LogBook.Testing;
using Microsoft.Extensions.Options;
using MimeKit;

namespace LogBook.Application.Tests.Summaries;

/// <summary>Hostile words in every text of a visit and its set-up.</summary>
public sealed partial class SummaryInjectionTests
{
    private static readonly string[] KnownTags =
        ["!DOCTYPE", "html", "head", "meta", "title", "style", "body", "main", "h1", "h2", "h3", "p", "dl", "dt", "dd", "ul", "li", "strong", "br", "table", "thead", "tbody", "tr", "th", "td"];

    private static readonly string[] KnownAttributes = ["lang", "charset", "name", "content", "class", "scope", "html"];

    public static TheoryData<string> Corpus =>
    [
        "=1+1", "+1+1", "-1+1", "@SUM(A1)", "\tx", "a\0b",
        "<script>alert(1)</script>",
        "</style></title><img/src=x onerror=alert(1)>",
        "\" onmouseover=\"alert(1)",
        "&lt;b&gt; & '",
        "x\r\nBcc: v@x.example\r\n\r\n<b>y",
        "\r\n\r\nWhat we need from you\r\n---------------------",
        "\u202Etxt.exe\u2066 \u200F",
        new string('x', 10_000),
    ];

    [Theory]
    [MemberData(nameof(Corpus))]
    [Trait("goal", "S7")]
    public async Task Render_HostileWordsInAnyText_AreNeverMarkup(string hostile)
    {
        var source = await RichVisit.SourceAsync(Language.English);
        var expected = SummaryPlainText.Render(SummaryBuilder.Build(source, Language.English)).Split('\n').Count(line => line.StartsWith("---", StringComparison.Ordinal));
        var visits = Variants(RichVisit.Visit, ExchangeJson.Default.Visit, hostile).Select(visit => source with { Visit = visit }).ToList();
        var setUps = Variants(source.Firm.Document, ExchangeJson.Default.ExchangeDocument, hostile).Select(document => source with { Firm = new FirmSetUp(document) }).ToList();
        SummarySource[] others =
        [
            source with { FirmName = hostile },
            source with { Findings = [RichVisit.FindingOf(FindingKinds.WaterLoss, Severity.Act, hostile)] },
            source with { Figures = [.. source.Figures.Select(figure => figure with { About = hostile })] },
        ];
        var shown = 0;

        foreach (var variant in visits.Concat(setUps).Concat(others).Where(v => v.Firm.Sites.ContainsKey(v.Visit.Site) && IsZone(v.Firm.Sites[v.Visit.Site].TimeZone)))
        {
            var summary = SummaryBuilder.Build(variant, Language.English);
            var html = SummaryHtml.Render(summary);
            var plain = SummaryPlainText.Render(summary);

            Assert.All(Tags().Matches(html), tag => Assert.Contains(tag.Groups[1].Value, KnownTags));
            Assert.All(Tags().Matches(html).SelectMany(tag => Attributes().Matches(tag.Groups[2].Value)), attribute => Assert.Contains(attribute.Groups[1].Value, KnownAttributes));
            Assert.Single(Style().Matches(html));
            Assert.Equal(expected, plain.Split('\n').Count(line => line.StartsWith("---", StringComparison.Ordinal)));
            Assert.DoesNotContain('\r', plain);
            Assert.DoesNotContain(SummaryHeader.Subject(summary), c => char.IsControl(c) || c is '\u202E' or '\u2066');
            shown += plain.Contains(hostile.ReplaceLineEndings("\n    "), StringComparison.Ordinal) ? 1 : 0;
        }

        // Not a test of nothing: the words were shown from most of the places that a summary takes words from.
        Assert.InRange(shown, 25, visits.Count + setUps.Count + others.Length);
    }

    [Theory]
    [MemberData(nameof(Corpus))]
    [Trait("goal", "S7")]
    public async Task Send_HostileWordsInSubjectNameAndBody_AddNoHeaderAndNoRecipient(string hostile)
    {
        await using var house = await MailHouse.StartAsync();
        await house.ReceiveAsync(SampleFirm.Visit());
        await house.ChangeAsync(row => row.RecipientName = row.Subject = row.HtmlBody = row.TextBody = hostile);
        var folder = Path.Combine(house.Database.Folder, "mail");

        Assert.Equal(1, await house.Worker(new FolderTransport(Options.Create(new MailOptions { Folder = folder }))).SendDueAsync());

        var message = await MimeMessage.LoadAsync(Assert.Single(Directory.GetFiles(folder)));
        Assert.Equal(
            ["Auto-Submitted", "Content-Type", "Date", "From", "MIME-Version", "Message-Id", "Subject", "To"],
            message.Headers.Concat(message.Body!.Headers).Select(header => header.Field).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal("estates@yaffleford.example", Assert.Single(message.To.Mailboxes).Address);
        Assert.InRange(message.Subject!.Length, 1, 251);
        Assert.Equal(hostile.ReplaceLineEndings("\n").TrimEnd('\n'), message.TextBody!.ReplaceLineEndings("\n").TrimEnd('\n'));
    }

    // Each text of the document in turn is the hostile one; codes of enumerations, times and identities take no words.
    private static IEnumerable<T> Variants<T>(T of, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type, string hostile)
    {
        var original = JsonSerializer.SerializeToNode(of, type)!;
        for (var i = 0; i < Texts(original).Count; i++)
        {
            var copy = original.DeepClone();
            Texts(copy)[i].ReplaceWith(hostile);
            if (Read(copy, type) is { } variant)
            {
                yield return variant;
            }
        }
    }

    private static T? Read<T>(JsonNode json, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type)
    {
        try
        {
            return json.Deserialize(type);
        }
        catch (JsonException)
        {
            return default;
        }
    }

    private static List<JsonValue> Texts(JsonNode? node) => node switch
    {
        JsonObject members => [.. members.SelectMany(member => Texts(member.Value))],
        JsonArray items => [.. items.SelectMany(Texts)],
        JsonValue value when value.GetValueKind() == JsonValueKind.String => [value],
        _ => [],
    };

    private static bool IsZone(string zone) => TimeZoneInfo.TryFindSystemTimeZoneById(zone, out _);

    [GeneratedRegex("</?([!A-Za-z0-9]+)([^>]*)>")]
    private static partial Regex Tags();

    [GeneratedRegex("\\s([^\\s=\"]+)(?:=\"[^\"]*\")?")]
    private static partial Regex Attributes();

    [GeneratedRegex("<style>")]
    private static partial Regex Style();
}
