namespace LogBook.Application.Data;

/// <summary>The clocks that run for a system under rules, so that a list of all of them reads no document. Rebuilt with the assessment of the system.</summary>
public sealed class ClockRow : ICustomerOwned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int SystemId { get; set; }

    /// <summary>Clocks as JSON.</summary>
    public string Clocks { get; set; } = "";

    public string EngineVersion { get; set; } = "";
}
