using SkiaSharp;

namespace LogBook.Testing;

/// <summary>Pictures to send: grains of many colours, so that a JPEG of one is about as large as a photo's.</summary>
public static class SamplePicture
{
    /// <summary>A JPEG.</summary>
    /// <param name="width">Pixels.</param>
    /// <param name="height">Pixels.</param>
    /// <param name="seed">Another one, another picture.</param>
    public static byte[] Jpeg(int width, int height, int seed = 1)
    {
        var random = new Random(seed);
        using var small = new SKBitmap(Math.Max(1, width / 4), Math.Max(1, height / 4));
        small.Pixels = [.. Enumerable.Range(0, small.Width * small.Height).Select(_ => new SKColor((byte)random.Next(256), (byte)random.Next(256), (byte)random.Next(256)))];
        using var large = small.Resize(new SKImageInfo(width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.None));
        using var data = large.Encode(SKEncodedImageFormat.Jpeg, 90);
        return data.ToArray();
    }
}
