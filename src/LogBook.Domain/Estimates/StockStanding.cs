namespace LogBook.Domain.Estimates;

/// <summary>How long a drum lasts, most urgent first.</summary>
public enum StockStanding
{
    /// <summary>Nothing is left that the pump can draw.</summary>
    Empty,

    /// <summary>Likely empty before the next visit.</summary>
    BeforeNext,

    /// <summary>May be empty before the next visit.</summary>
    PerhapsBeforeNext,

    /// <summary>May be empty before the visit after next.</summary>
    BeforeSecond,

    /// <summary>Its use, or the next visit, is not known.</summary>
    Unknown,

    /// <summary>Lasts beyond the visit after next.</summary>
    Lasts,
}
