namespace LogBook.Domain.Rounds.Planning;

/// <summary>An open action with a day by which it was promised.</summary>
/// <param name="Text">What is to be done.</param>
/// <param name="Due">Day promised.</param>
/// <param name="Owner">Who promised it, as written.</param>
public sealed record PromiseAhead(string Text, DateOnly Due, string? Owner);
