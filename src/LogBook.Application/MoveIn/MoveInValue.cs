namespace LogBook.Application.MoveIn;

/// <summary>One value of a row.</summary>
/// <param name="Meaning">What it is.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Number">The number; null where there is none.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Qualifier">"&lt;" or "&gt;".</param>
/// <param name="NotTaken">Why there is no number; null where there is one.</param>
/// <param name="NotQuantifiable">Done, and nothing could be counted.</param>
internal sealed record MoveInValue(ColumnMeaning Meaning, MoveInPlace At, double? Number, string? Unit, string? Qualifier = null, string? NotTaken = null, bool NotQuantifiable = false)
{
    /// <summary>What it is about: two values of one visit with the same key are the same thing twice.</summary>
    public string Key => $"{Meaning.Kind}|{Meaning.Code}|{Meaning.At}";

    /// <summary>Whether another value says the same.</summary>
    public bool SaysTheSame(MoveInValue other) => Number == other.Number && Unit == other.Unit && Qualifier == other.Qualifier && NotTaken == other.NotTaken && NotQuantifiable == other.NotQuantifiable;
}
