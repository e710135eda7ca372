namespace LogBook.Application.Data;

/// <summary>The service firm of this installation; one row.</summary>
public sealed class FirmRow
{
    public int Id { get; set; }

    public string Name { get; set; } = "";

    /// <summary>Holds invented data; never mixed with a real firm's.</summary>
    public bool IsDemo { get; set; }

    public DateTime CreatedAt { get; set; }

    public bool FirstRunDone { get; set; }

    /// <summary>Demo only: where its clock starts, so that "now" is just after its last visit.</summary>
    public DateTime? DemoClockFrom { get; set; }

    /// <summary>Share of visits drawn for a closer look; the usual one when null.</summary>
    public double? AuditShare { get; set; }

    /// <summary>Counts changes of the set-up; a cached set-up of another count is read again.</summary>
    public long SetUpStamp { get; set; }

    /// <summary>Moment that the stored findings about meters, lots and people were made for.</summary>
    public DateTime? RoundAssessedAt { get; set; }
}
