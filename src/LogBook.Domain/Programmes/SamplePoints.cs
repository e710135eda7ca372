namespace LogBook.Domain.Programmes;

/// <summary>Standard sample points; a system may name further ones.</summary>
public static class SamplePoints
{
    /// <summary>Make-up water.</summary>
    public const string MakeUp = "make-up";

    /// <summary>Recirculating water.</summary>
    public const string Tower = "tower";

    /// <summary>Bleed.</summary>
    public const string Bleed = "bleed";

    /// <summary>Behind the softener.</summary>
    public const string Softened = "softened";

    /// <summary>Before the softener.</summary>
    public const string Raw = "raw";
}
