using LogBook.Domain.Visits;

namespace LogBook.Entry.Drafts;

/// <summary>A draft as it is kept on the device or in the database.</summary>
public sealed record DraftDocument
{
    /// <summary>Form of the document; 1.</summary>
    public int Form { get; init; } = 1;

    /// <summary>Identity of the visit, version 7.</summary>
    public required Guid Id { get; init; }

    /// <summary>Code of the site.</summary>
    public required string Site { get; init; }

    /// <summary>Code of the person.</summary>
    public required string Technician { get; init; }

    /// <summary>IANA name of the site's zone.</summary>
    public required string TimeZone { get; init; }

    /// <summary>The visit that is amended, or none.</summary>
    public Visit? Amended { get; init; }

    /// <summary>Last number given to a row of a list.</summary>
    public int LastRow { get; init; }

    /// <summary>Cautions that were shown and acknowledged.</summary>
    public IReadOnlyList<string> CautionsSeen { get; init; } = [];

    /// <summary>Every field that was touched.</summary>
    public IReadOnlyDictionary<string, DraftField> Fields { get; init; } = new Dictionary<string, DraftField>(StringComparer.Ordinal);
}
