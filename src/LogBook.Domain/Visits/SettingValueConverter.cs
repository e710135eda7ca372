using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Reads and writes a <see cref="SettingValue"/> as a JSON number, string, or "none".</summary>
public sealed class SettingValueConverter : JsonConverter<SettingValue>
{
    /// <inheritdoc />
    public override bool HandleNull => true;

    /// <inheritdoc />
    public override SettingValue Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.TokenType switch
    {
        JsonTokenType.Null => SettingValue.None,
        JsonTokenType.Number => SettingValue.Of(reader.GetDouble()),
        JsonTokenType.True => SettingValue.Of("true"),
        JsonTokenType.False => SettingValue.Of("false"),
        _ => SettingValue.Of(reader.GetString() ?? "none"),
    };

    /// <inheritdoc />
    public override void Write(Utf8JsonWriter writer, SettingValue value, JsonSerializerOptions options)
    {
        if (value.Number is { } number)
        {
            writer.WriteNumberValue(number);
        }
        else
        {
            writer.WriteStringValue(value.Text ?? "none");
        }
    }
}
