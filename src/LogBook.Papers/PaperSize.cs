namespace LogBook.Papers;

/// <summary>The sheet.</summary>
public enum PaperSize
{
    /// <summary>210 mm by 297 mm.</summary>
    A4,

    /// <summary>8.5 in by 11 in.</summary>
    Letter,
}
