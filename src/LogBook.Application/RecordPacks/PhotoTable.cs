using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>Every photo that a visit names: its file, or why there is none.</summary>
internal static class PhotoTable
{
    public static RecordTable Of(RecordWords words)
    {
        var visits = words.Pack.Visits.ToDictionary(entry => entry.Visit.Id, entry => entry.Visit);
        return new(
            RecordTexts.Photos,
            [
                new(RecordTexts.Day, 0), new(RecordTexts.What, 2), new(RecordTexts.Picture, 1.5), new(RecordTexts.File, 3), new(RecordTexts.FileHash, 3), new(RecordTexts.NamedHash, 0), new(RecordTexts.TakenAt, 0),
                new(RecordTexts.Photo, 0), new(RecordTexts.Visit, 0),
            ],
            [
                .. words.Pack.Photos.Select(photo => new RecordRow(
                    [
                        visits.TryGetValue(photo.Visit, out var visit) ? words.DayOf(visit) : null,
                        photo.Of,
                        PictureOf(words, photo),
                        photo.File ?? "",
                        photo.FileSha256 ?? "",
                        photo.Sha256 ?? "",
                        photo.TakenAt is { } at ? words.Wall(at) : null,
                        photo.Id.ToString(),
                        photo.Visit.ToString(),
                    ],
                    visit is null ? null : words.GroupOf(visit))),
            ],
            RecordTexts.PhotosIntro);
    }

    /// <summary>How many pictures are in the pack, and how many are not.</summary>
    public static string CountsOf(RecordWords words)
    {
        var missing = words.Pack.Photos.Count(photo => photo.File is null);
        return words[RecordTexts.PicturesIn, words.Pack.Photos.Count - missing, missing];
    }

    private static string PictureOf(RecordWords words, PackPhoto photo)
    {
        var state = words[RecordTexts.NameOf(photo.State)];
        return photo is { IsOfEarlierVersion: true, State: PackPhotoState.Included } ? words[RecordTexts.EarlierVersion, state] : state;
    }
}
