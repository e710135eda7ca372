namespace LogBook.Domain.Numbers;

/// <summary>What became of a typed text.</summary>
public enum NumberReadingKind
{
    /// <summary>Nothing was typed.</summary>
    Empty,

    /// <summary>One meaning only.</summary>
    Understood,

    /// <summary>More than one meaning, or an unusual way of writing: the person says which.</summary>
    Ask,

    /// <summary>Not a number; the text stays as typed.</summary>
    NotANumber,

    /// <summary>More digits than a number can keep.</summary>
    TooManyDigits,
}
