namespace LogBook.Papers;

/// <summary>Where a text stands in its column.</summary>
public enum PaperAlign
{
    /// <summary>At the left edge.</summary>
    Left,

    /// <summary>At the right edge, as figures do.</summary>
    Right,

    /// <summary>In the middle, as tick boxes do.</summary>
    Centre,
}
