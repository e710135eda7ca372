using LogBook.Domain.Clocks;

namespace LogBook.Application.RecordPacks;

/// <summary>How long the records of one site are kept.</summary>
/// <param name="Site">Code.</param>
/// <param name="Name">Name.</param>
/// <param name="InUse">Whether the site is still looked after.</param>
/// <param name="Visits">Visits on record, void ones too.</param>
/// <param name="FirstEntry">Day of the first one, in the site's zone.</param>
/// <param name="LastEntry">Day of the last one.</param>
/// <param name="Keeping">How long, and by what.</param>
/// <param name="Hold">Legal hold as it stands; null where there never was one.</param>
/// <param name="IsOver">Whether nothing on file asks for them any more.</param>
public sealed record KeptSite(string Site, string Name, bool InUse, int Visits, DateOnly FirstEntry, DateOnly LastEntry, RetentionPeriod Keeping, LegalHold? Hold, bool IsOver);
