using LogBook.Domain.Languages;
using LogBook.Entry.State;
using Microsoft.AspNetCore.Components.Forms;

namespace LogBook.Entry.Photos;

/// <summary>Hands a chosen picture to the host and notes it in the draft.</summary>
internal static class PhotoTaking
{
    // Read a little beyond the host's own limit, so that the host can say that it was too large.
    private const long MostBytes = 11 * 1024 * 1024;

    /// <summary>Keeps a picture.</summary>
    /// <param name="state">The form.</param>
    /// <param name="desk">Where pictures are kept.</param>
    /// <param name="file">The picture.</param>
    /// <param name="key">Gives the key of the photo in the draft, once the picture is kept.</param>
    /// <returns>What went wrong; null when it is kept.</returns>
    public static async Task<Text?> TakeAsync(FormState state, IPhotoDesk desk, IBrowserFile file, Func<string> key)
    {
        try
        {
            if (file.Size > MostBytes)
            {
                return PhotoTexts.TooLarge;
            }

            await using var content = file.OpenReadStream(MostBytes);
            var taken = await desk.KeepAsync(content);
            if (taken.Id is { } id)
            {
                var at = key();
                state.Draft.SetText(at + "Sha256", taken.Sha256);
                state.Draft.SetText(at + "TakenAt", Domain.Exchange.Moment.OfUtc(state.Clock.GetUtcNow().UtcDateTime).Text);
                state.SetText(at, id.ToString("D"));
            }

            return taken.Problem;
        }
        catch (Exception exception) when (exception is IOException or Microsoft.JSInterop.JSException)
        {
            // The line broke while the picture came over; everything else of the draft is untouched.
            return PhotoTexts.Failed;
        }
    }
}
