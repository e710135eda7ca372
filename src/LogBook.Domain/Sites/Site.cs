namespace LogBook.Domain.Sites;

/// <summary>A place with one or more water systems.</summary>
public sealed record Site
{
    /// <summary>Unique within the firm.</summary>
    public required string Code { get; init; }

    /// <summary>Code of the customer who owns it.</summary>
    public required string Customer { get; init; }

    /// <summary>Name of the place.</summary>
    public required string Name { get; init; }

    /// <summary>IANA name; days of this site are days in this zone.</summary>
    public required string TimeZone { get; init; }

    /// <summary>Days between visits by contract.</summary>
    public double? VisitEveryDays { get; init; }

    /// <summary>Units shown to people of this site.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>Code of the technician whose round it is on.</summary>
    public string? AssignedTo { get; init; }

    /// <summary>Hours within which the summary is promised.</summary>
    public double? SummaryWithinHours { get; init; }

    /// <summary>Day of the calendar month, 1 to 28, by whose end the summaries of all visits of the month before are promised.</summary>
    public int? SummaryByMonthDay { get; init; }

    /// <summary>False where the site forbids photos.</summary>
    public bool? PhotosAllowed { get; init; }

    /// <summary>Where it is.</summary>
    public string? Address { get; init; }

    /// <summary>Keys, hours, whom to ask.</summary>
    public string? AccessNotes { get; init; }
}
