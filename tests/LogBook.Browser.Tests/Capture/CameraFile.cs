using System.Text;

namespace LogBook.Browser.Tests.Capture;

/// <summary>What a camera sees: one colour, as an uncompressed film that Chromium takes for its camera.</summary>
public sealed class CameraFile : IDisposable
{
    private const int Width = 320;
    private const int Height = 240;

    private CameraFile(string path) => Path = path;

    /// <summary>The file.</summary>
    public string Path { get; }

    /// <summary>Switches of a browser whose camera sees it and may be used without a question.</summary>
    public IReadOnlyList<string> Flags => ["--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream", "--use-file-for-fake-video-capture=" + Path];

    /// <summary>A film of pure green (BT.601: Y 145, Cb 54, Cr 34).</summary>
    public static CameraFile Green()
    {
        var path = System.IO.Path.Combine(System.IO.Path.GetTempPath(), $"logbook-camera-{Guid.CreateVersion7():N}.y4m");
        using var film = File.Create(path);
        film.Write(Encoding.ASCII.GetBytes($"YUV4MPEG2 W{Width} H{Height} F10:1 Ip A1:1 C420jpeg\n"));
        for (var frame = 0; frame < 4; frame++)
        {
            film.Write("FRAME\n"u8);
            film.Write(Enumerable.Repeat((byte)145, Width * Height).ToArray());
            film.Write(Enumerable.Repeat((byte)54, Width * Height / 4).ToArray());
            film.Write(Enumerable.Repeat((byte)34, Width * Height / 4).ToArray());
        }

        return new CameraFile(path);
    }

    /// <inheritdoc />
    public void Dispose() => File.Delete(Path);
}
