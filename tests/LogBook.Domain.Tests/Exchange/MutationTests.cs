using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;

namespace LogBook.Domain.Tests.Exchange;

/// <summary>Every value of the examples is replaced by something else: the reader must neither break nor part from the schema.</summary>
public sealed class MutationTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(
        ExchangeSchema.Json().Replace("urn:logbook:exchange:1", "urn:logbook:exchange:1:mutations", StringComparison.Ordinal));

    private static readonly string[] Replacements =
        ["null", "-1", "1.5", "\"\"", "\"x\"", "[]", "{}", "true", "[null]", "\"2025-01-06\"", "{\"value\":1,\"unit\":\"L\"}"];

    [Theory]
    [InlineData("set-up")]
    [InlineData("visit")]
    [InlineData("finding")]
    public void ReadAndCheck_AnyValueReplaced_AnswersAsTheSchemaDoes(string name)
    {
        var root = JsonNode.Parse(Examples.Text(name))!;
        var firm = Examples.Firm();
        var parted = new List<string>();
        var turn = 0;
        foreach (var node in Values(root).Where(n => n.Parent is not null).ToList())
        {
            var place = node.GetPath();

            // Two replacements for each value, by turns: all of them everywhere take a minute and agree too.
            for (var i = 0; i < 2; i++)
            {
                var replacement = Replacements[turn++ % Replacements.Length];
                var changed = root.DeepClone();
                var target = Values(changed).First(n => n.GetPath() == place);
                target.ReplaceWith(JsonNode.Parse(replacement));
                var json = changed.ToJsonString();
                using var document = JsonDocument.Parse(json);

                var isRead = ExchangeReader.Read(json).Issues.Count == 0;
                ExchangeReader.ReadAndCheck(json, firm);

                if (isRead != Schema.Evaluate(document.RootElement).IsValid)
                {
                    parted.Add($"{place} = {replacement}: reader {(isRead ? "accepts" : "refuses")}");
                }
            }
        }

        Assert.Empty(parted);
    }

    private static IEnumerable<JsonNode> Values(JsonNode node)
    {
        yield return node;
        var inner = node switch
        {
            JsonObject members => members.Select(m => m.Value),
            JsonArray items => items,
            _ => [],
        };
        foreach (var child in inner.Where(c => c is not null))
        {
            foreach (var value in Values(child!))
            {
                yield return value;
            }
        }
    }
}
