using LogBook.Entry.Plans;

namespace LogBook.Entry.Closing;

/// <summary>Something to settle before a visit is closed, or to leave open with a reason.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Words">What it is, in the form's language.</param>
/// <param name="Key">Field that settles it.</param>
/// <param name="System">Index of the system.</param>
/// <param name="Step">Step where the field stands.</param>
/// <param name="OfEachVisit">Whether it is one of what each visit reads or says, which is told together with the others of its step.</param>
public sealed record OpenPoint(string Code, string Words, string Key, int System, EntryStep Step, bool OfEachVisit = false);
