namespace LogBook.Papers;

/// <summary>One cell of a table.</summary>
/// <param name="Text">What stands in it; lines are kept, long ones wrap.</param>
/// <param name="Bold">In bold.</param>
/// <param name="Tick">A tick box before the text: empty (false) or ticked (true); null for none.</param>
public readonly record struct PaperCell(string? Text, bool Bold = false, bool? Tick = null)
{
    /// <summary>A plain cell.</summary>
    public static implicit operator PaperCell(string? text) => new(text);
}
