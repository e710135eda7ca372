namespace LogBook.Application.Data;

/// <summary>
/// What the records of a system tell about meters, lots and people it shares with others, kept so that a new visit at one system can be
/// weighed against all others without reading their documents. Rebuilt with the assessment of the system.
/// </summary>
public sealed class ClueRow : ICustomerOwned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int SystemId { get; set; }

    /// <summary>Clues as JSON.</summary>
    public string Clues { get; set; } = "";

    /// <summary>Shifts of meters and lots that the stored assessment of the system has seen, as JSON; empty for none.</summary>
    public string Seen { get; set; } = "";

    public string EngineVersion { get; set; } = "";
}
