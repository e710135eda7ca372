namespace LogBook.Application.TakeOver;

/// <summary>What somebody who knows a site wrote down.</summary>
/// <param name="Day">Day at the site.</param>
/// <param name="By">Who was there.</param>
/// <param name="About">What it concerns; null for the visit as a whole.</param>
/// <param name="Text">The words.</param>
/// <param name="Visit">Visit that holds them.</param>
public sealed record TakeOverNote(DateOnly Day, string By, string? About, string Text, Guid Visit);
