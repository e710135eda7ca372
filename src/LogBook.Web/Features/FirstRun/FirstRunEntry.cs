namespace LogBook.Web.Features.FirstRun;

/// <summary>What was written into the first-run form.</summary>
public sealed class FirstRunEntry
{
    public string? Code { get; set; }

    public string? Firm { get; set; }

    public string? Email { get; set; }

    public string? Password { get; set; }
}
