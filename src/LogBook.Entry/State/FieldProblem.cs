namespace LogBook.Entry.State;

/// <summary>Something to correct or to read again at a field.</summary>
/// <param name="Key">Key of the field or of its group; null when it belongs to no field of the form.</param>
/// <param name="Code">Stable code.</param>
/// <param name="Message">Field, value and what is expected.</param>
/// <param name="Blocks">False for "Please read again".</param>
/// <param name="CameBack">Whether only the receiver said so: the form cannot tell whether it was corrected since.</param>
public sealed record FieldProblem(string? Key, string Code, string Message, bool Blocks, bool CameBack = false);
