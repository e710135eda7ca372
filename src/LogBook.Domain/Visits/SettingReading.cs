namespace LogBook.Domain.Visits;

/// <summary>One setting as found and as left.</summary>
public sealed record SettingReading
{
    /// <summary>Field of the programme, or output and field ("biocide-1/starts").</summary>
    public required string Name { get; init; }

    /// <summary>As found; none means that the controller has no such setting.</summary>
    public SettingValue? Found { get; init; }

    /// <summary>As left.</summary>
    public SettingValue? Left { get; init; }

    /// <summary>Not looked at.</summary>
    public bool? NotRead { get; init; }

    /// <summary>Unit, where the controller shows another.</summary>
    public string? Unit { get; init; }

    /// <summary>The controller's last digit.</summary>
    public double? Step { get; init; }

    /// <summary>Why it was changed.</summary>
    public string? Reason { get; init; }
}
