namespace LogBook.Domain.Numbers;

/// <summary>What was understood of a typed text.</summary>
/// <param name="Kind">What became of it.</param>
/// <param name="Value">The number, when there is one meaning.</param>
/// <param name="Qualifier">"&lt;" or "&gt;" where it stood before the number.</param>
/// <param name="Choices">Possible meanings, the likelier first, when the person is asked.</param>
public sealed record NumberReading(NumberReadingKind Kind, double? Value, string? Qualifier, IReadOnlyList<double> Choices)
{
    /// <summary>Nothing typed.</summary>
    public static NumberReading Empty { get; } = new(NumberReadingKind.Empty, null, null, []);

    /// <summary>The number after the person's answer, if one was needed.</summary>
    /// <param name="choice">The answer; it counts only when it is one of the choices.</param>
    /// <returns>The number, or null while there is none.</returns>
    public double? Settled(double? choice) => Kind switch
    {
        NumberReadingKind.Understood => Value,
        NumberReadingKind.Ask when choice is { } chosen && Choices.Contains(chosen) => chosen,
        _ => null,
    };
}
