using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using LogBook.Domain.Exchange;

namespace LogBook.Domain.Tests.Exchange;

/// <summary>The shape table and the records say the same: compared through the published schema.</summary>
public sealed class ShapeTableTests
{
    [Fact]
    public void Table_RecordsOfTheDocument_HaveTheSameFields()
    {
        using var schema = JsonDocument.Parse(ExchangeSchema.Json());
        var differences = new List<string>();

        Compare(typeof(ExchangeDocument), schema.RootElement.GetProperty("$defs").GetProperty("document"), schema.RootElement, [], differences);

        Assert.Empty(differences);
    }

    private static void Compare(Type type, JsonElement shape, JsonElement schema, HashSet<Type> seen, List<string> differences)
    {
        if (!seen.Add(type))
        {
            return;
        }

        var info = (JsonTypeInfo)ExchangeJson.Default.GetTypeInfo(type)!;
        var inTable = shape.GetProperty("properties").EnumerateObject().Where(p => !p.Name.EndsWith("Entered", StringComparison.Ordinal)).ToDictionary(p => p.Name, p => p.Value);
        var inRecord = info.Properties.Where(p => !p.IsExtensionData).ToDictionary(p => p.Name);
        differences.AddRange(inTable.Keys.Except(inRecord.Keys).Select(n => $"{type.Name} has no {n}"));
        differences.AddRange(inRecord.Keys.Except(inTable.Keys).Select(n => $"the table has no {type.Name}.{n}"));
        var required = shape.TryGetProperty("required", out var names) ? names.EnumerateArray().Select(n => n.GetString()!).ToHashSet() : [];
        differences.AddRange(inRecord.Values.Where(p => p.IsRequired && !required.Contains(p.Name)).Select(p => $"{type.Name}.{p.Name} is required only by the record"));
        foreach (var (name, property) in inRecord)
        {
            if (inTable.TryGetValue(name, out var value))
            {
                CompareValue(property.PropertyType, value, schema, $"{type.Name}.{name}", seen, differences);
            }
        }
    }

    private static void CompareValue(Type type, JsonElement value, JsonElement schema, string where, HashSet<Type> seen, List<string> differences)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            CompareValue(type.GetGenericArguments()[0], value.GetProperty("items"), schema, where, seen, differences);
        }
        else if (type.IsEnum)
        {
            var members = type.GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => f.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name);
            var choices = value.GetProperty("enum").EnumerateArray().Where(c => c.ValueKind != JsonValueKind.Null).Select(c => c.GetString()!);
            if (!members.Order(StringComparer.Ordinal).SequenceEqual(choices.Order(StringComparer.Ordinal)))
            {
                differences.Add($"{where}: the closed lists differ");
            }
        }
        else if (value.TryGetProperty("$ref", out var reference) || (value.TryGetProperty("anyOf", out var any) && any[0].TryGetProperty("$ref", out reference)))
        {
            Compare(type, schema.GetProperty("$defs").GetProperty(reference.GetString()!["#/$defs/".Length..]), schema, seen, differences);
        }
    }
}
