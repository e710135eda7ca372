namespace LogBook.Entry.Plans;

/// <summary>A field that a step waits for.</summary>
/// <param name="Key">Key of the field.</param>
/// <param name="Done">Whether it was filled, or said why not.</param>
/// <param name="Asked">Whether its absence is asked about at the close.</param>
/// <param name="IsTest">Whether it is a test result.</param>
public sealed record ExpectedField(string Key, bool Done, bool Asked = false, bool IsTest = false);
