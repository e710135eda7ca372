namespace LogBook.Domain.Clocks;

/// <summary>An authority was told of a result: who told whom, when and how.</summary>
/// <param name="Visit">Visit that holds the result.</param>
/// <param name="Test">Code of the test.</param>
/// <param name="Rule">Code of the rule that wants it told.</param>
/// <param name="At">When it was told, UTC.</param>
/// <param name="By">Who told it.</param>
/// <param name="To">Whom.</param>
/// <param name="How">How, and what proves it: reference number, name of who took the call.</param>
public sealed record Notification(Guid Visit, string Test, string Rule, DateTime At, string By, string To, string How);
