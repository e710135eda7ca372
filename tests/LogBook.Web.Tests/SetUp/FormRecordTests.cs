using System.Text.Json.Nodes;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Testing;
using LogBook.Web.Features.SetUp;
using LogBook.Web.Features.SetUp.Forms;

namespace LogBook.Web.Tests.SetUp;

/// <summary>Forms against the exchange format: every field can be asked for, and none is lost on the way through.</summary>
public sealed class FormRecordTests
{
    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    [InlineData(Language.Portuguese)]
    public void EveryRecord_ThroughItsForm_ComesBackTheSame(Language language)
    {
        var count = 0;
        foreach (var (fields, record) in Records())
        {
            var (json, issues) = FormWriter.Write(fields, FormReader.Read(fields, record, language), language);
            Assert.Empty(issues);
            Assert.True(JsonNode.DeepEquals(record, json), $"{record.ToJsonString()}\n{json.ToJsonString()}");
            count++;
        }

        Assert.True(count >= 10, $"only {count} records");
    }

    [Theory]
    [InlineData("customer")]
    [InlineData("person")]
    [InlineData("product")]
    [InlineData("instrument")]
    [InlineData("lot")]
    [InlineData("rule")]
    [InlineData("site")]
    [InlineData("test")]
    [InlineData("system")]
    [InlineData("programme")]
    public void EveryField_OfTheFormat_IsInTheForm(string shape)
    {
        var schema = JsonNode.Parse(ExchangeSchema.Json())!.AsObject();
        var fields = shape == "programme" ? SystemForms.Programme : SetUpList.All.First(list => list.Member == (shape == "person" ? "people" : shape + "s")).Fields;
        var missing = new List<string>();
        Compare(schema, schema["$defs"]![shape]!.AsObject(), fields, shape, missing);

        // Programmes of a system have their own page.
        Assert.Equal(shape == "system" ? ["system.programmes"] : [], missing);
    }

    private static void Compare(JsonObject schema, JsonObject shape, IReadOnlyList<FormField> fields, string path, List<string> missing)
    {
        foreach (var (name, value) in shape["properties"]!.AsObject())
        {
            if (name.EndsWith("Entered", StringComparison.Ordinal))
            {
                continue;
            }

            var field = fields.FirstOrDefault(field => field.Name == name);
            if (field is null)
            {
                missing.Add($"{path}.{name}");
            }
            else if (field.Kind is FormKind.Rows or FormKind.Group && Inner(schema, value!.AsObject()) is { } inner)
            {
                Compare(schema, inner, field.Fields, $"{path}.{name}", missing);
            }
        }
    }

    private static JsonObject? Inner(JsonObject schema, JsonObject value)
    {
        var text = value.ToJsonString();
        var at = text.IndexOf("#/$defs/", StringComparison.Ordinal);
        return at < 0 ? null : schema["$defs"]![text[(at + 8)..text.IndexOf('"', at)]]!.AsObject();
    }

    private static IEnumerable<(IReadOnlyList<FormField> Fields, JsonObject Record)> Records()
    {
        using var stream = SampleFirm.SetUp();
        var document = JsonNode.Parse(stream)!.AsObject();
        foreach (var list in SetUpList.All)
        {
            foreach (var record in document[list.Member] as JsonArray ?? [])
            {
                yield return (list.Fields, record!.AsObject());
                foreach (var programme in record["programmes"] as JsonArray ?? [])
                {
                    yield return (SystemForms.Programme, programme!.AsObject());
                }
            }
        }
    }
}
