using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Exchange;

/// <summary>Reads and writes a <see cref="Moment"/> as its own text.</summary>
public sealed class MomentConverter : JsonConverter<Moment>
{
    /// <inheritdoc />
    public override Moment Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Moment.TryParse(reader.GetString(), out var moment) ? moment : throw new JsonException("An RFC 3339 time with offset is expected.");

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, Moment value, JsonSerializerOptions options) => writer.WriteStringValue(value.Text);
}
