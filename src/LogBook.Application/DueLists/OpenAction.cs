namespace LogBook.Application.DueLists;

/// <summary>An action that is still open.</summary>
public sealed record OpenAction(Guid Visit, DateOnly Since, string System, string? For, string Text, string? Owner, DateOnly? Due);
