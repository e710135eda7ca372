namespace LogBook.Domain.Programmes;

/// <summary>Where a result stands against the range aimed at.</summary>
public enum RangeStanding
{
    /// <summary>No range is set for it.</summary>
    NoRange,

    /// <summary>Inside, ends included.</summary>
    Inside,

    /// <summary>Above the upper end.</summary>
    Above,

    /// <summary>Below the lower end.</summary>
    Below,

    /// <summary>A censored, unquantified or untaken result, or a foreign unit: it cannot be told.</summary>
    Undecided,
}
