namespace LogBook.Application.Tokens;

/// <summary>What a personal access token may be used for; never more than its owner may do.</summary>
public static class TokenScopes
{
    /// <summary>Read round, visits, findings and exports.</summary>
    public const string Read = "read";

    /// <summary>Hand in visits and photos.</summary>
    public const string Visits = "visits";

    /// <summary>Import documents.</summary>
    public const string Import = "import";

    /// <summary>Marks the credential of a tablet, which those who keep the set-up may end for others; allows nothing by itself.</summary>
    public const string Tablet = "tablet";

    /// <summary>All that a person may give to a token.</summary>
    public static IReadOnlyList<string> All { get; } = [Read, Visits, Import];
}
