namespace LogBook.Application.DueLists;

/// <summary>A recommendation that nobody has answered.</summary>
public sealed record OpenRecommendation(Guid Visit, DateOnly Since, string Text, string? Consequence);
