namespace LogBook.Domain.Rounds.Planning;

/// <summary>Who or what is off on some days.</summary>
public enum DaysOffKind
{
    /// <summary>A person is away.</summary>
    Person,

    /// <summary>Nobody of the firm works: a public holiday, the days between the years.</summary>
    Firm,

    /// <summary>A site cannot be visited: shut for works, nobody there to open.</summary>
    Site,

    /// <summary>Some or all sites of a person go to a colleague for some days, though the person is there.</summary>
    Lent,
}
