using LogBook.Domain.Clocks;
using LogBook.Domain.Sites;

namespace LogBook.Application.RecordPacks;

/// <summary>What a record pack of a period would hold.</summary>
/// <param name="Site">The site.</param>
/// <param name="From">First day.</param>
/// <param name="To">Last day.</param>
/// <param name="Visits">Visits that count.</param>
/// <param name="Voided">Visits that were declared void.</param>
/// <param name="Readings">Readings of visits that count.</param>
/// <param name="Amendments">Amendments of visits of the period.</param>
/// <param name="Photos">Photos named.</param>
/// <param name="Pictures">How many of them have come in.</param>
/// <param name="PictureBytes">Size of those.</param>
/// <param name="FirstEntry">Day of the first visit on record, whatever the period; null where there is none.</param>
/// <param name="LastEntry">Day of the last one.</param>
/// <param name="Keeping">How long the records are kept, and by what; null without records.</param>
/// <param name="Hold">Legal hold as it stands; null where there never was one, or for a customer.</param>
public sealed record RecordPreview(
    Site Site, DateOnly From, DateOnly To, int Visits, int Voided, int Readings, int Amendments, int Photos, int Pictures, long PictureBytes, DateOnly? FirstEntry, DateOnly? LastEntry, RetentionPeriod? Keeping, LegalHold? Hold);
