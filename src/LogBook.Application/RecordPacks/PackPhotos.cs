using LogBook.Application.Data;
using LogBook.Domain.Sites;

namespace LogBook.Application.RecordPacks;

/// <summary>Which photos a pack tells, and which of their pictures it takes along.</summary>
internal static class PackPhotos
{
    /// <summary>The photos of the visits of a pack, in the order of the rows.</summary>
    public static IEnumerable<PackPhoto> Of(Viewer viewer, Site site, IReadOnlyList<PackVisit> visits, IEnumerable<(Guid Visit, PhotoRow Photo)> rows)
    {
        var visitOf = visits.ToDictionary(visit => visit.Visit.Id);
        foreach (var (visitId, row) in rows)
        {
            if (!visitOf.TryGetValue(visitId, out var visit))
            {
                continue;
            }

            // Who is not of the firm sees the visits as they stand: photos that a correction took out are not told.
            var isStanding = visit.Visit.Photos.Any(photo => photo.Id == row.PhotoId);
            if (isStanding || viewer.IsOfFirm)
            {
                yield return new PackPhoto(visitId, row.PhotoId, row.Of, row.TakenAt, row.Sha256, StateOf(site, visit, row))
                {
                    IsOfEarlierVersion = !isStanding,
                    StoredAs = row.FileName,
                    Bytes = row.Bytes,
                    KeptSha256 = row.FileSha256,
                };
            }
        }
    }

    private static PackPhotoState StateOf(Site site, PackVisit visit, PhotoRow row) =>
        !visit.Counts ? PackPhotoState.OfVoidVisit
        : !visit.Versions.Any(version => version.Visit.Photos.Any(photo => photo.Id == row.PhotoId)) ? PackPhotoState.NotStanding
        : row.StoredAt is not null ? PackPhotoState.Included
        : site.PhotosAllowed == false ? PackPhotoState.NotAllowed
        : PackPhotoState.Awaited;
}
