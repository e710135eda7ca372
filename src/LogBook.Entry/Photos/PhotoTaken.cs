using LogBook.Domain.Languages;

namespace LogBook.Entry.Photos;

/// <summary>What became of a picture that was chosen.</summary>
/// <param name="Id">Identity of the photo; null where it was not kept.</param>
/// <param name="Sha256">Hash of what is kept.</param>
/// <param name="Problem">Why it was not kept.</param>
public sealed record PhotoTaken(Guid? Id, string? Sha256, Text? Problem);
