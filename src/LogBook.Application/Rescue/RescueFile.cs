namespace LogBook.Application.Rescue;

/// <summary>What a tablet wrote down because it cannot send any more: closed visits that wait, drafts, and the photos of both.</summary>
public sealed record RescueFile
{
    /// <summary>Name of the format: <see cref="RescueReader.Format"/>.</summary>
    public required string Format { get; init; }

    /// <summary>Version of the format.</summary>
    public required int Version { get; init; }

    /// <summary>When it was written, by the tablet's clock as far as that was set right by the server's.</summary>
    public DateTimeOffset? WrittenAt { get; init; }

    /// <summary>Name of the tablet.</summary>
    public string? Tablet { get; init; }

    /// <summary>Code of the person whose PIN was given; null when nobody's was.</summary>
    public string? By { get; init; }

    /// <summary>Number of this file among those written at once, from 1.</summary>
    public int Part { get; init; } = 1;

    /// <summary>How many files were written at once.</summary>
    public int Of { get; init; } = 1;

    /// <summary>Closed visits that stay on the tablet, because nobody gave a PIN.</summary>
    public int VisitsLeft { get; init; }

    /// <summary>Photos of those visits and of the drafts that stay on the tablet for the same reason.</summary>
    public int PhotosLeft { get; init; }

    /// <summary>Sites of visits and drafts that the tablet itself could not read any more.</summary>
    public IReadOnlyList<string> Unreadable { get; init; } = [];

    /// <summary>Closed visits.</summary>
    public IReadOnlyList<RescueVisit> Visits { get; init; } = [];

    /// <summary>Drafts.</summary>
    public IReadOnlyList<RescueDraft> Drafts { get; init; } = [];

    /// <summary>Photos of the visits and drafts of this file.</summary>
    public IReadOnlyList<RescuePhoto> Photos { get; init; } = [];

    /// <summary>Photos of one visit or draft.</summary>
    public IEnumerable<RescuePhoto> PhotosOf(Guid visit) => Photos.Where(photo => photo.Visit == visit);
}
