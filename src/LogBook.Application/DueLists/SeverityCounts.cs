namespace LogBook.Application.DueLists;

/// <summary>Open findings by severity.</summary>
public sealed record SeverityCounts(int Act, int Plan, int Watch)
{
    /// <summary>All of them.</summary>
    public int Total => Act + Plan + Watch;
}
