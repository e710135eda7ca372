using System.Text;
using System.Text.Json;
using LogBook.Domain.Exchange.Shapes;

namespace LogBook.Domain.Exchange;

/// <summary>The published JSON Schema (2020-12) of the exchange format, made from the same table that the reader checks against.</summary>
/// <remarks>
/// It says all that one object can say of itself. Codes that must exist elsewhere, units a test takes, dates that must
/// agree and duplicated names are beyond a schema; the reader and <see cref="ExchangeCheck"/> tell them.
/// </remarks>
public static class ExchangeSchema
{
    private const string Url = "urn:logbook:exchange:1";

    /// <summary>The schema.</summary>
    /// <returns>JSON text with a line feed at its end, the same every time.</returns>
    public static string Json()
    {
        var shapes = new Dictionary<string, Shape>(StringComparer.Ordinal);
        Collect(ExchangeShapes.Document, shapes);
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            writer.WriteStartObject();
            writer.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            writer.WriteString("$id", Url);
            writer.WriteString("title", "LogBook exchange format, version 1");
            writer.WriteString("$ref", "#/$defs/document");
            writer.WriteStartObject("$defs");
            foreach (var shape in shapes.Values.OrderBy(s => s.Name, StringComparer.Ordinal))
            {
                writer.WriteStartObject(shape.Name);
                Write(writer, shape);
                writer.WriteEndObject();
            }

            writer.WriteEndObject();
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void Collect(Shape shape, Dictionary<string, Shape> shapes)
    {
        if (!shapes.TryAdd(shape.Name, shape))
        {
            return;
        }

        foreach (var field in shape.Fields)
        {
            for (var inner = field; inner is not null; inner = inner.Item)
            {
                if (inner.Shape is not null)
                {
                    Collect(inner.Shape, shapes);
                }
            }
        }
    }

    private static void Write(Utf8JsonWriter writer, Shape shape)
    {
        writer.WriteString("type", "object");
        writer.WriteStartObject("properties");
        foreach (var field in shape.Fields)
        {
            writer.WriteStartObject(field.Name);
            WriteValue(writer, field, mayBeNull: !field.IsRequired);
            writer.WriteEndObject();
        }

        writer.WriteEndObject();
        writer.WriteBoolean("additionalProperties", false);
        WriteNames(writer, "required", shape.Fields.Where(f => f.IsRequired).Select(f => f.Name));
        if (shape.OneOf.Count > 0)
        {
            writer.WriteStartArray("anyOf");
            foreach (var set in shape.OneOf)
            {
                WriteStanding(writer, shape, set);
            }

            writer.WriteEndArray();
        }

        WriteConditions(writer, shape);
    }

    private static void WriteConditions(Utf8JsonWriter writer, Shape shape)
    {
        if (shape.Demands.Count + shape.Needs.Count + shape.Exclusive.Count == 0)
        {
            return;
        }

        writer.WriteStartArray("allOf");
        foreach (var demand in shape.Demands)
        {
            writer.WriteStartObject();
            writer.WriteStartObject("if");
            writer.WriteStartObject("properties");
            writer.WriteStartObject(demand.Choice);
            writer.WriteString("const", demand.Value);
            writer.WriteEndObject();
            writer.WriteEndObject();
            WriteNames(writer, "required", [demand.Choice]);
            writer.WriteEndObject();
            writer.WritePropertyName("then");
            WriteStanding(writer, shape, demand.Fields);
            writer.WriteEndObject();
        }

        foreach (var (name, needs) in shape.Needs)
        {
            writer.WriteStartObject();
            writer.WritePropertyName("if");
            WriteStanding(writer, shape, [name]);
            writer.WriteStartObject("then");
            writer.WriteStartArray("anyOf");
            foreach (var need in needs.Split('|'))
            {
                WriteStanding(writer, shape, [need]);
            }

            writer.WriteEndArray();
            writer.WriteEndObject();
            writer.WriteEndObject();
        }

        foreach (var (name, other) in shape.Exclusive)
        {
            writer.WriteStartObject();
            writer.WritePropertyName("not");
            WriteStanding(writer, shape, [name, other]);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    /// <summary>A schema that holds when something stands in every one of some fields; null is absent, a flag must be true.</summary>
    private static void WriteStanding(Utf8JsonWriter writer, Shape shape, IReadOnlyList<string> names)
    {
        writer.WriteStartObject();
        WriteNames(writer, "required", names);
        writer.WriteStartObject("properties");
        foreach (var name in names)
        {
            var field = shape.Find(name)!;
            writer.WriteStartObject(name);
            if (field.Kind == FieldKind.Flag)
            {
                writer.WriteBoolean("const", true);
            }
            else
            {
                writer.WriteStartObject("not");
                writer.WriteString("type", "null");
                writer.WriteEndObject();
                if (field.Kind == FieldKind.List)
                {
                    writer.WriteNumber("minItems", 1);
                }
            }

            writer.WriteEndObject();
        }

        writer.WriteEndObject();
        writer.WriteEndObject();
    }

    private static void WriteValue(Utf8JsonWriter writer, Field field, bool mayBeNull)
    {
        switch (field.Kind)
        {
            case FieldKind.Object when mayBeNull:
                writer.WriteStartArray("anyOf");
                writer.WriteStartObject();
                writer.WriteString("$ref", "#/$defs/" + field.Shape!.Name);
                writer.WriteEndObject();
                writer.WriteStartObject();
                writer.WriteString("type", "null");
                writer.WriteEndObject();
                writer.WriteEndArray();
                break;
            case FieldKind.Object:
                writer.WriteString("$ref", "#/$defs/" + field.Shape!.Name);
                break;
            case FieldKind.Choice when field.Choices.Count == 1:
                writer.WriteString("const", field.Choices[0]);
                break;
            case FieldKind.Choice:
                writer.WriteStartArray("enum");
                foreach (var choice in field.Choices)
                {
                    writer.WriteStringValue(choice);
                }

                if (mayBeNull)
                {
                    writer.WriteNullValue();
                }

                writer.WriteEndArray();
                break;
            case FieldKind.List:
                WriteList(writer, field, mayBeNull);
                break;
            case FieldKind.Number or FieldKind.Integer:
                WriteType(writer, mayBeNull, field.Kind == FieldKind.Integer ? "integer" : "number");
                WriteBounds(writer, field);
                break;
            case FieldKind.Flag:
                WriteType(writer, mayBeNull, "boolean");
                break;
            case FieldKind.Setting:
                WriteType(writer, mayBeNull, "number", "string", "boolean");
                break;
            default:
                WriteType(writer, mayBeNull, "string");
                WritePattern(writer, field);
                break;
        }
    }

    private static void WriteList(Utf8JsonWriter writer, Field field, bool mayBeNull)
    {
        WriteType(writer, mayBeNull, "array");
        if (field.Count.Min > 0)
        {
            writer.WriteNumber("minItems", field.Count.Min);
        }

        if (field.Count.Max is { } max)
        {
            writer.WriteNumber("maxItems", max);
        }

        writer.WriteStartObject("items");
        WriteValue(writer, field.Item!, mayBeNull: false);
        writer.WriteEndObject();
    }

    private static void WriteBounds(Utf8JsonWriter writer, Field field)
    {
        if (field.Min is { } min)
        {
            writer.WriteNumber(field.IsAbove ? "exclusiveMinimum" : "minimum", min);
        }

        if (field.Max is { } max)
        {
            writer.WriteNumber("maximum", max);
        }
    }

    private static void WritePattern(Utf8JsonWriter writer, Field field)
    {
        var (format, pattern) = field.Kind switch
        {
            FieldKind.Date => ("date", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"),
            FieldKind.Moment => ("date-time", "^[0-9]{4}-[0-9]{2}-[0-9]{2}[Tt ][0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]{1,7})?([Zz]|[+-][0-9]{2}:[0-9]{2})$"),
            FieldKind.ClockTime => (null, "^(([01][0-9]|2[0-3]):[0-5][0-9]|24:00)$"),
            FieldKind.MonthDay => (null, "^(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$"),
            FieldKind.Identity => ("uuid", "^[0-9A-Fa-f]{8}(-[0-9A-Fa-f]{4}){3}-[0-9A-Fa-f]{12}$"),
            FieldKind.Mail => ("email", "^[^@\\s]+@[^@\\s]+$"),
            _ => ((string?)null, field.IsRequired ? "\\S" : null),
        };
        if (format is not null)
        {
            writer.WriteString("format", format);
        }

        if (pattern is not null)
        {
            writer.WriteString("pattern", pattern);
        }
    }

    private static void WriteType(Utf8JsonWriter writer, bool mayBeNull, params string[] types)
    {
        if (types.Length == 1 && !mayBeNull)
        {
            writer.WriteString("type", types[0]);
            return;
        }

        WriteNames(writer, "type", mayBeNull ? [.. types, "null"] : types);
    }

    private static void WriteNames(Utf8JsonWriter writer, string property, IEnumerable<string> names)
    {
        var all = names.ToList();
        if (all.Count == 0)
        {
            return;
        }

        writer.WriteStartArray(property);
        foreach (var name in all)
        {
            writer.WriteStringValue(name);
        }

        writer.WriteEndArray();
    }
}
