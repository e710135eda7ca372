namespace LogBook.Application.Data;

/// <summary>Codes are compared without regard to case: what is indexed is their upper-case form, the same on both providers.</summary>
public static class CodeKeys
{
    /// <summary>Key of a code.</summary>
    public static string Of(string code) => code.Trim().ToUpperInvariant();
}
