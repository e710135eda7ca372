using LogBook.Domain.Clocks;
using LogBook.Domain.History;
using LogBook.Domain.Sites;

namespace LogBook.Application.RecordPacks;

/// <summary>The records of one site in one period, as they stand today.</summary>
public sealed record RecordPack
{
    /// <summary>The service firm.</summary>
    public required string FirmName { get; init; }

    /// <summary>The site.</summary>
    public required Site Site { get; init; }

    /// <summary>Its customer.</summary>
    public required string CustomerName { get; init; }

    /// <summary>First day, in the site's zone.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last day, in the site's zone.</summary>
    public required DateOnly To { get; init; }

    /// <summary>Last day on which clocks are judged: the last of the period, or today where that is earlier.</summary>
    public required DateOnly JudgedOn { get; init; }

    /// <summary>When the pack was made, UTC.</summary>
    public required DateTime MadeAt { get; init; }

    /// <summary>Who made it.</summary>
    public required string MadeBy { get; init; }

    /// <summary>Zone of the site.</summary>
    public required TimeZoneInfo Zone { get; init; }

    /// <summary>Set-up as far as the reader sees it, with retired records.</summary>
    public required FirmSetUp Firm { get; init; }

    /// <summary>Systems with all their visits and what their rules asked for.</summary>
    public required IReadOnlyList<PackSystem> Systems { get; init; }

    /// <summary>Visits of the period by arrival, void ones too.</summary>
    public required IReadOnlyList<PackVisit> Visits { get; init; }

    /// <summary>The agreed interval of visits; empty where none is agreed.</summary>
    public required IReadOnlyList<RuleSpell> Promises { get; init; }

    /// <summary>Photos that visits of the period name, with or without their pictures.</summary>
    public required IReadOnlyList<PackPhoto> Photos { get; init; }

    /// <summary>Day of the last entry of the site, whatever the period; null where there is none.</summary>
    public DateOnly? LastEntry { get; init; }

    /// <summary>How long the records are kept, and by what; null where there is none.</summary>
    public RetentionPeriod? Keeping { get; init; }

    /// <summary>Legal hold on the site's records; null for none, and for a reader who is not of the firm.</summary>
    public LegalHold? Hold { get; init; }

    /// <summary>Whether earlier versions are told; a customer sees the latest only.</summary>
    public required bool TellsVersions { get; init; }
}
