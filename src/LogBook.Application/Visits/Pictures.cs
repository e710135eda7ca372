using SkiaSharp;

namespace LogBook.Application.Visits;

/// <summary>Judges pictures by their content, reads their size before decoding, and makes them anew.</summary>
internal static class Pictures
{
    private const int LongestSide = 2048;
    private const int SmallSide = 240;
    private const int Quality = 85;

    /// <summary>Reads up to <see cref="PhotoStore.MostBytes"/>; null where there is more.</summary>
    public static async Task<byte[]?> ReadAsync(Stream content, CancellationToken cancellationToken)
    {
        using var kept = new MemoryStream();
        var buffer = new byte[64 * 1024];
        int read;
        while ((read = await content.ReadAsync(buffer, cancellationToken)) > 0)
        {
            if (kept.Length + read > PhotoStore.MostBytes)
            {
                return null;
            }

            kept.Write(buffer, 0, read);
        }

        return kept.ToArray();
    }

    /// <summary>The picture made anew: no location, no other tags.</summary>
    public static (PhotoOutcome Outcome, byte[]? Picture) Remade(byte[] bytes)
    {
        using var data = SKData.CreateCopy(bytes);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.EncodedFormat is not (SKEncodedImageFormat.Jpeg or SKEncodedImageFormat.Png))
        {
            return (PhotoOutcome.NotAPicture, null);
        }

        if ((long)codec.Info.Width * codec.Info.Height > PhotoStore.MostPixels)
        {
            return (PhotoOutcome.TooManyPixels, null);
        }

        // A JPEG is decoded small at once; a PNG can only be decoded whole.
        var size = codec.GetScaledDimensions(Math.Min(1f, (float)LongestSide / Math.Max(codec.Info.Width, codec.Info.Height)));
        using var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        if (codec.GetPixels(bitmap.Info, bitmap.GetPixels()) != SKCodecResult.Success)
        {
            return (PhotoOutcome.NotAPicture, null);
        }

        using var upright = Upright(bitmap, codec.EncodedOrigin);
        using var encoded = upright.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return (PhotoOutcome.Stored, encoded.ToArray());
    }

    /// <summary>A small JPEG of a picture that was made anew; null where it cannot be read.</summary>
    public static byte[]? Small(byte[] picture)
    {
        using var whole = SKBitmap.Decode(picture);
        if (whole is null)
        {
            return null;
        }

        var scale = Math.Min(1f, (float)SmallSide / Math.Max(whole.Width, whole.Height));
        using var small = whole.Resize(
            new SKImageInfo(Math.Max(1, (int)(whole.Width * scale)), Math.Max(1, (int)(whole.Height * scale))), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using var encoded = small.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return encoded.ToArray();
    }

    // The turn stood in a tag that is not kept.
    private static SKImage Upright(SKBitmap bitmap, SKEncodedOrigin origin)
    {
        var scale = Math.Min(1f, (float)LongestSide / Math.Max(bitmap.Width, bitmap.Height));
        var (width, height) = ((int)Math.Round(bitmap.Width * scale), (int)Math.Round(bitmap.Height * scale));
        var turned = origin is SKEncodedOrigin.RightTop or SKEncodedOrigin.LeftBottom;
        using var surface = SKSurface.Create(new SKImageInfo(turned ? height : width, turned ? width : height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        var canvas = surface.Canvas;
        canvas.Clear(SKColors.White);
        switch (origin)
        {
            case SKEncodedOrigin.BottomRight:
                canvas.RotateDegrees(180, width / 2f, height / 2f);
                break;
            case SKEncodedOrigin.RightTop:
                canvas.Translate(height, 0);
                canvas.RotateDegrees(90);
                break;
            case SKEncodedOrigin.LeftBottom:
                canvas.Translate(0, width);
                canvas.RotateDegrees(-90);
                break;
        }

        using var image = SKImage.FromBitmap(bitmap);
        canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        return surface.Snapshot();
    }

    /// <summary>Writes a file that is either whole or not there.</summary>
    public static async Task WriteAsync(string path, byte[] picture, CancellationToken cancellationToken)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var half = path + ".part";
        await using (var file = new FileStream(half, FileMode.CreateNew, FileAccess.Write))
        {
            await file.WriteAsync(picture, cancellationToken);
            file.Flush(flushToDisk: true);
        }

        File.Move(half, path);
    }
}
