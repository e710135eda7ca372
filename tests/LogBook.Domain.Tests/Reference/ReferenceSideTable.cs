namespace LogBook.Domain.Tests.Reference;

/// <summary>A table beside the chapters, whose rows carry no tolerance of their own.</summary>
/// <param name="rows">How many rows it has, written by hand.</param>
/// <param name="tests">The tests that read it.</param>
/// <param name="notAsserted">Headings, parted by blanks, of the columns that no test reads.</param>
public sealed class ReferenceSideTable(int rows, (Type Class, string Name)[] tests, string notAsserted)
{
    public int Rows => rows;

    public IReadOnlyList<(Type Class, string Name)> Tests => tests;

    public IReadOnlyList<string> NotAsserted { get; } = notAsserted.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
