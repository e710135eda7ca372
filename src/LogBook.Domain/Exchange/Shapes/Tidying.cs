using System.Globalization;
using System.Text.Json;

namespace LogBook.Domain.Exchange.Shapes;

/// <summary>
/// Rewrites JSON so that the records read it as meant: null is absent (but "none" in the one field where it has a meaning),
/// whole numbers are written plainly. What the shape table refused is left out, or stands in with <see cref="StandIn"/>
/// where the records need something, so that the other checks can still look at the rest.
/// </summary>
internal sealed class Tidying
{
    /// <summary>Stands in for a text that is missing or wrong; what is said of it is noise.</summary>
    public const string StandIn = "\uFFFF";

    private readonly HashSet<string> _refused;
    private readonly Utf8JsonWriter _writer;

    private Tidying(Utf8JsonWriter writer, IEnumerable<string> refused)
    {
        _writer = writer;
        _refused = refused.ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The rewritten JSON.</summary>
    /// <param name="element">Any JSON value.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="refused">Paths that the shape table refused.</param>
    public static byte[] Of(JsonElement element, Shape shape, IEnumerable<string> refused)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream))
        {
            new Tidying(writer, refused).Write(element, shape, "");
        }

        return stream.ToArray();
    }

    private void Write(JsonElement element, Shape shape, string path)
    {
        _writer.WriteStartObject();
        var written = new HashSet<string>(StringComparer.Ordinal);
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var member in element.EnumerateObject())
            {
                if (shape.Find(member.Name) is { } field && (member.Value.ValueKind != JsonValueKind.Null || field.IsNullKept) && !written.Contains(field.Name))
                {
                    WriteMember(member.Value, field, path.Length == 0 ? field.Name : $"{path}.{field.Name}", written);
                }
            }
        }

        foreach (var field in shape.Fields)
        {
            if (field.IsRequired && !written.Contains(field.Name))
            {
                _writer.WritePropertyName(field.Name);
                WriteStandIn(field);
            }
        }

        _writer.WriteEndObject();
    }

    private void WriteMember(JsonElement value, Field field, string path, HashSet<string> written)
    {
        var goesDeeper = IsDeeper(value, field) && !(field.Kind == FieldKind.List && _refused.Contains(path));
        if (!goesDeeper && _refused.Contains(path))
        {
            return;
        }

        written.Add(field.Name);
        _writer.WritePropertyName(field.Name);
        Write(value, field, path);
    }

    private static bool IsDeeper(JsonElement value, Field field) =>
        (field.Kind == FieldKind.Object && value.ValueKind == JsonValueKind.Object) || (field.Kind == FieldKind.List && value.ValueKind == JsonValueKind.Array);

    private void Write(JsonElement value, Field field, string path)
    {
        switch (field.Kind)
        {
            case FieldKind.Object:
                Write(value, field.Shape!, path);
                break;
            case FieldKind.List:
                WriteList(value, field, path);
                break;
            case FieldKind.Integer:
                _writer.WriteNumberValue((int)value.GetDouble());
                break;
            case FieldKind.Setting when value.ValueKind == JsonValueKind.Null:
                _writer.WriteStringValue("none");
                break;
            default:
                value.WriteTo(_writer);
                break;
        }
    }

    private void WriteList(JsonElement value, Field field, string path)
    {
        _writer.WriteStartArray();
        var index = 0;
        foreach (var item in value.EnumerateArray())
        {
            var itemPath = string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]");
            index++;
            if (!IsDeeper(item, field.Item!) && _refused.Contains(itemPath))
            {
                WriteStandIn(field.Item!);
            }
            else
            {
                Write(item, field.Item!, itemPath);
            }
        }

        _writer.WriteEndArray();
    }

    /// <summary>Something that the records accept and the other checks say little of.</summary>
    private void WriteStandIn(Field field)
    {
        switch (field.Kind)
        {
            case FieldKind.Number or FieldKind.Integer:
                _writer.WriteNumberValue(field.Max ?? (field.IsAbove ? 1 : field.Min ?? 0));
                break;
            case FieldKind.Flag:
                _writer.WriteBooleanValue(false);
                break;
            case FieldKind.Choice:
                _writer.WriteStringValue(field.Choices[0]);
                break;
            case FieldKind.Date:
                _writer.WriteStringValue("2000-01-01");
                break;
            case FieldKind.Moment:
                _writer.WriteStringValue("2000-01-01T00:00:00Z");
                break;
            case FieldKind.ClockTime:
                _writer.WriteStringValue("00:00");
                break;
            case FieldKind.MonthDay:
                _writer.WriteStringValue("01-01");
                break;
            case FieldKind.Identity:
                _writer.WriteStringValue(Guid.Empty);
                break;
            case FieldKind.Object:
                Write(default, field.Shape!, "");
                break;
            case FieldKind.List:
                _writer.WriteStartArray();
                _writer.WriteEndArray();
                break;
            default:
                _writer.WriteStringValue(StandIn);
                break;
        }
    }
}
