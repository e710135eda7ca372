using LogBook.Domain.Sites;

namespace LogBook.Entry.Looks;

/// <summary>How a person wants the form on this device: gloves, hand, brightness, units. It is no part of the visit.</summary>
public sealed record FormLooks
{
    /// <summary>Larger targets and wider gaps.</summary>
    public bool Gloves { get; init; }

    /// <summary>The tablet is held in the right hand and the left one types.</summary>
    public bool LeftHand { get; init; }

    /// <summary>True for dark, false for light, null as the device has it.</summary>
    public bool? Dark { get; init; }

    /// <summary>Several towers side by side in one table of tests.</summary>
    public bool SideBySide { get; init; }

    /// <summary>Units to begin with; null as the site has them.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>Reads what the device kept.</summary>
    /// <param name="text">From <see cref="Write"/>; anything else is no wish.</param>
    /// <returns>The looks.</returns>
    public static FormLooks Read(string? text)
    {
        var words = (text ?? string.Empty).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return new FormLooks
        {
            Gloves = words.Contains("gloves"),
            LeftHand = words.Contains("left"),
            Dark = words.Contains("dark") ? true : words.Contains("light") ? false : null,
            SideBySide = words.Contains("side"),
            Units = words.Contains("metric") ? UnitSystem.Metric : words.Contains("us") ? UnitSystem.Us : words.Contains("imperial") ? UnitSystem.Imperial : null,
        };
    }

    /// <summary>A text for the device to keep.</summary>
    /// <returns>Words, or none.</returns>
    public string Write() => string.Join(
        ' ',
        new[]
        {
            Gloves ? "gloves" : null,
            LeftHand ? "left" : null,
            SideBySide ? "side" : null,
            Dark switch
            {
                true => "dark",
                false => "light",
                null => null,
            },
            Units switch
            {
                UnitSystem.Metric => "metric",
                UnitSystem.Us => "us",
                UnitSystem.Imperial => "imperial",
                _ => null,
            },
        }.OfType<string>());
}
