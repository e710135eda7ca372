namespace LogBook.Domain.Trends;

/// <summary>Patterns that a steady process hardly shows (Nelson 1984; Western Electric).</summary>
/// <remarks>All eight together alarm too often: use the first, second, fifth and sixth.</remarks>
public enum RunRule
{
    /// <summary>Nelson 1: one beyond 3 sigma.</summary>
    OneBeyondThree,

    /// <summary>Nelson 2: nine in a row on one side.</summary>
    NineOnOneSide,

    /// <summary>Nelson 3: six in a row steadily rising or falling.</summary>
    SixRisingOrFalling,

    /// <summary>Nelson 4: fourteen in a row alternating up and down.</summary>
    FourteenAlternating,

    /// <summary>Nelson 5: two of three beyond 2 sigma on the same side.</summary>
    TwoOfThreeBeyondTwo,

    /// <summary>Nelson 6: four of five beyond 1 sigma on the same side.</summary>
    FourOfFiveBeyondOne,

    /// <summary>Nelson 7: fifteen in a row within 1 sigma.</summary>
    FifteenWithinOne,

    /// <summary>Nelson 8: eight in a row beyond 1 sigma, both sides.</summary>
    EightBeyondOne,

    /// <summary>Western Electric 4: eight in a row on one side.</summary>
    EightOnOneSide,
}
