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

    /// <summary>A tablet: reads rounds and single visits. Those who keep the set-up may end it for others.</summary>
    public const string Tablet = "tablet";

    /// <summary>All that a person may give to a token.</summary>
    public static IReadOnlyList<string> All { get; } = [Read, Visits, Import];
}
