namespace LogBook.Domain.Tests.Reference;

/// <summary>A chapter of the reference: how each of its rows is computed with the product's own code, or why it is not.</summary>
public sealed class ReferenceChapter(
    string file,
    IReadOnlyDictionary<string, Func<ReferenceRow, object>> byCalc,
    IReadOnlyDictionary<string, string>? excluded = null)
{
    public string File => file;

    public IReadOnlyList<ReferenceRow> Rows { get; } = ReferenceTable.Rows(file);

    /// <summary>Rows that are asserted.</summary>
    public IEnumerable<ReferenceRow> Asserted => Rows.Where(row => WhyExcluded(row) is null);

    /// <summary>Ids of the rows that are asserted, for theories.</summary>
    public TheoryData<string> Ids => new(Asserted.Select(row => row.Id));

    /// <summary>Why a row is not asserted; null for a row that is.</summary>
    public string? WhyExcluded(ReferenceRow row) =>
        row.IsFromMemory ? "from memory: not confirmed by anything readable" : excluded?.GetValueOrDefault(row.Id);

    /// <summary>Computes a row and checks it against its own tolerance.</summary>
    public void Check(string id)
    {
        var row = Rows.Single(candidate => candidate.Id == id);
        var compute = byCalc.GetValueOrDefault(row.Id) ?? byCalc.GetValueOrDefault(row.Calc)
            ?? throw new InvalidOperationException($"{row.Id} {row.Calc}: no computation and no reason for leaving it out.");
        row.Check(compute(row));
    }
}
