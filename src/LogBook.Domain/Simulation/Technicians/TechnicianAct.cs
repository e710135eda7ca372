namespace LogBook.Domain.Simulation.Technicians;

/// <summary>One dated line of what a technician does or fails to do; it belongs to the visits from <see cref="On"/> to <see cref="Until"/>.</summary>
public sealed record TechnicianAct
{
    /// <summary>Day, or first day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Last day, when it lasts.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>What.</summary>
    public required TechnicianActKind Act { get; init; }

    /// <summary>Code of the part, test or output concerned.</summary>
    public string? Part { get; init; }

    /// <summary>Number that belongs to it.</summary>
    public double Value { get; init; }

    /// <summary>Text that belongs to it.</summary>
    public string? Text { get; init; }

    /// <summary>Why, for readers.</summary>
    public string? Note { get; init; }

    /// <summary>Whether it belongs to a day.</summary>
    /// <param name="day">Day of a visit in the site's zone.</param>
    /// <returns>True from <see cref="On"/> to <see cref="Until"/>.</returns>
    public bool Covers(DateOnly day) => day >= On && day <= (Until ?? On);
}
