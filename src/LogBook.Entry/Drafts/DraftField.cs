namespace LogBook.Entry.Drafts;

/// <summary>One field of a draft as the person left it; a text that is no number yet is kept as well.</summary>
public sealed record DraftField
{
    /// <summary>As typed or chosen.</summary>
    public string Text { get; init; } = string.Empty;

    /// <summary>UCUM unit chosen for it; an empty text marks a number without a unit.</summary>
    public string? Unit { get; init; }

    /// <summary>The person's answer where the text could be two numbers.</summary>
    public double? Choice { get; init; }

    /// <summary>What was entered first, when it was asked again.</summary>
    public double? First { get; init; }

    /// <summary>Whether the person confirmed the value after being asked.</summary>
    public bool Confirmed { get; init; }

    /// <summary>Keys typed since the field was entered, kept so that a killed browser loses none.</summary>
    public string? Typing { get; init; }
}
