using System.Globalization;
using System.Text.Json.Serialization;

namespace LogBook.Domain.Visits;

/// <summary>Value of a setting as a controller shows it: a number, a text, or none where it has no such setting.</summary>
[JsonConverter(typeof(SettingValueConverter))]
public sealed record SettingValue
{
    private SettingValue(double? number, string? text)
    {
        Number = number;
        Text = text;
    }

    /// <summary>The controller has no such setting.</summary>
    public static SettingValue None { get; } = new(null, null);

    /// <summary>The number, when it is one.</summary>
    public double? Number { get; }

    /// <summary>The text, when it is one.</summary>
    public string? Text { get; }

    /// <summary>Whether the controller has no such setting.</summary>
    public bool IsNone => Number is null && Text is null;

    /// <summary>A number.</summary>
    /// <param name="number">Finite.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is not finite.</exception>
    public static SettingValue Of(double number) =>
        double.IsFinite(number) ? new(number, null) : throw new ArgumentOutOfRangeException(nameof(number));

    /// <summary>A text; "none" is <see cref="None"/>.</summary>
    /// <param name="text">Text as shown; lists are joined with commas.</param>
    /// <returns>The value.</returns>
    public static SettingValue Of(string text) => text == "none" ? None : new(null, text);

    /// <inheritdoc />
    public override string ToString() => Number?.ToString("R", CultureInfo.InvariantCulture) ?? Text ?? "none";
}
