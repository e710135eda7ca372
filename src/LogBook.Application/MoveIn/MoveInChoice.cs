namespace LogBook.Application.MoveIn;

/// <summary>One answer that a question takes.</summary>
/// <param name="Key">Key of the answer.</param>
/// <param name="Says">What it means, in the reader's language.</param>
public sealed record MoveInChoice(string Key, string Says);
