using System.Buffers.Binary;
using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using LogBook.Application.Tokens;
using SkiaSharp;

namespace LogBook.Web.Tests.Api;

[Trait("goal", "S6")]
public sealed class PhotosApiTests(VisitsApiTests.Started host) : IClassFixture<VisitsApiTests.Started>
{
    private Guid _visit;

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    public async Task Post_PictureOfAVisit_IsKeptAnewUnderAnOwnName(SKEncodedImageFormat format)
    {
        var photo = Guid.CreateVersion7();
        var picture = WithLocation(Picture(640, 480, format), format);
        using var client = await host.ClientAsync(TokenScopes.Visits);
        await AddVisitAsync(client, photo, Convert.ToHexStringLower(SHA256.HashData(picture)));

        using var first = await PostAsync(client, photo, picture);
        using var again = await PostAsync(client, photo, picture);

        Assert.Equal(HttpStatusCode.Created, first.StatusCode);
        Assert.Equal(HttpStatusCode.OK, again.StatusCode);
        var kept = new DirectoryInfo(Path.Combine(host.App.Folder, "photos")).GetFiles().MaxBy(file => file.Name)!;
        var bytes = await File.ReadAllBytesAsync(kept.FullName);
        Assert.DoesNotContain("GPSLatitude", Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
        Assert.DoesNotContain(photo.ToString("N"), kept.Name, StringComparison.OrdinalIgnoreCase);
        using var read = SKBitmap.Decode(bytes);
        Assert.Equal((640, 480), (read.Width, read.Height));
    }

    [Fact]
    public async Task Post_LargePicture_IsMadeSmaller()
    {
        var photo = Guid.CreateVersion7();
        using var client = await host.ClientAsync(TokenScopes.Visits);
        await AddVisitAsync(client, photo, null);

        using var answer = await PostAsync(client, photo, Picture(4000, 3000, SKEncodedImageFormat.Jpeg));

        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var kept = new DirectoryInfo(Path.Combine(host.App.Folder, "photos")).GetFiles().MaxBy(file => file.Name)!;
        using var read = SKBitmap.Decode(kept.FullName);

        // A JPEG is decoded at the nearest eighth of its size, so the longest side ends at or somewhat below the limit.
        Assert.InRange(read.Width, 1024, 2048);
        Assert.Equal(4.0 / 3, (double)read.Width / read.Height, 2);
    }

    [Fact]
    public async Task Post_NoPictureByContent_IsRefusedWhateverItsName()
    {
        var photo = Guid.CreateVersion7();
        using var client = await host.ClientAsync(TokenScopes.Visits);
        await AddVisitAsync(client, photo, null);

        using var answer = await PostAsync(client, photo, Encoding.UTF8.GetBytes("<svg onload=alert(1)>"));

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
    }

    [Fact]
    public async Task Post_HeaderOfAHugePicture_IsRefusedBeforeDecoding()
    {
        var photo = Guid.CreateVersion7();
        using var client = await host.ClientAsync(TokenScopes.Visits);
        await AddVisitAsync(client, photo, null);

        // The header of a PNG says 30,000 by 30,000; hardly any data follows.
        var bomb = Picture(8, 8, SKEncodedImageFormat.Png);
        BinaryPrimitives.WriteInt32BigEndian(bomb.AsSpan(16), 30_000);
        BinaryPrimitives.WriteInt32BigEndian(bomb.AsSpan(20), 30_000);
        BinaryPrimitives.WriteUInt32BigEndian(bomb.AsSpan(29), Crc(bomb.AsSpan(12, 17)));
        using var answer = await PostAsync(client, photo, bomb);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
    }

    [Fact]
    public async Task Post_AnotherPictureThanTheVisitNames_IsRefused()
    {
        var photo = Guid.CreateVersion7();
        using var client = await host.ClientAsync(TokenScopes.Visits);
        await AddVisitAsync(client, photo, new string('a', 64));

        using var answer = await PostAsync(client, photo, Picture(20, 20, SKEncodedImageFormat.Png));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
    }

    [Fact]
    public async Task Post_PhotoThatNoVisitNames_IsNotFound()
    {
        using var client = await host.ClientAsync(TokenScopes.Visits);

        using var answer = await PostAsync(client, Guid.CreateVersion7(), Picture(20, 20, SKEncodedImageFormat.Png));

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Get_PictureOfAVisit_IsShownToThoseWhoSeeTheVisit()
    {
        var photo = Guid.CreateVersion7();
        using var client = await host.ClientAsync(TokenScopes.Visits);
        await AddVisitAsync(client, photo, null);
        using var owner = await host.App.SignedInAsync("a@alder.example");
        using var missing = await owner.GetAsync($"/api/v1/photos/{photo}");
        using var posted = await PostAsync(client, photo, Picture(640, 480, SKEncodedImageFormat.Jpeg));
        Assert.Equal(HttpStatusCode.NotFound, missing.StatusCode);

        using var own = await owner.GetAsync($"/api/v1/photos/{photo}");
        using var small = await owner.GetAsync($"/api/v1/photos/{photo}?small=true");
        using var other = await host.App.SignedInAsync("b@birch.example");
        using var foreign = await other.GetAsync($"/api/v1/photos/{photo}");
        using var nobody = host.App.CreateClient();
        using var closed = await nobody.GetAsync($"/api/v1/photos/{photo}");

        Assert.Equal((HttpStatusCode.OK, "image/jpeg", true), (own.StatusCode, own.Content.Headers.ContentType!.MediaType, own.Headers.CacheControl!.NoStore));
        Assert.Equal("nosniff", own.Headers.GetValues("X-Content-Type-Options").Single());
        using var large = SKBitmap.Decode(await own.Content.ReadAsByteArrayAsync());
        using var thumb = SKBitmap.Decode(await small.Content.ReadAsByteArrayAsync());
        Assert.Equal((640, 480), (large.Width, large.Height));
        Assert.InRange(thumb.Width, 1, 240);
        Assert.Equal(HttpStatusCode.NotFound, foreign.StatusCode);
        Assert.NotEqual(HttpStatusCode.OK, closed.StatusCode);
        Assert.Contains($"/api/v1/photos/{photo:D}?small=true", await owner.GetStringAsync($"/visits/{_visit}"), StringComparison.Ordinal);
    }

    private async Task AddVisitAsync(HttpClient client, Guid photo, string? hash)
    {
        var id = Guid.CreateVersion7();
        var json = $$"""
            {"id": "{{id}}", "site": "SIT-A", "technician": "TEC", "arrived": "2025-07-02T08:00:00+01:00", "left": "2025-07-02T09:00:00+01:00",
             "systems": [{"system": "CT1"}], "photos": [{"id": "{{photo}}", "of": "CT1"{{(hash is null ? "" : $", \"sha256\": \"{hash}\"")}}}]}
            """;
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/v1/visits") { Content = new StringContent(json, Encoding.UTF8, "application/json") };
        request.Headers.Add("Idempotency-Key", $"{id}/1");
        using var answer = await client.SendAsync(request);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        _visit = id;
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, Guid photo, byte[] picture)
    {
        using var content = new ByteArrayContent(picture);
        content.Headers.ContentType = new MediaTypeHeaderValue("image/jpeg");
        return await client.PostAsync($"/api/v1/photos/{photo}", content);
    }

    private static byte[] Picture(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height);
        bitmap.Erase(SKColors.SteelBlue);
        using var data = bitmap.Encode(format, 90);
        return data.ToArray();
    }

    // A comment segment in a JPEG, a text chunk in a PNG: a place where senders leave where they are.
    private static byte[] WithLocation(byte[] picture, SKEncodedImageFormat format)
    {
        var text = Encoding.ASCII.GetBytes("GPSLatitude\04711");
        if (format == SKEncodedImageFormat.Jpeg)
        {
            return [.. picture[..2], 0xFF, 0xFE, 0, (byte)(text.Length + 2), .. text, .. picture[2..]];
        }

        byte[] named = [.. "tEXt"u8, .. text];
        var chunk = new byte[8 + named.Length];
        BinaryPrimitives.WriteInt32BigEndian(chunk, text.Length);
        named.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(4 + named.Length), Crc(named));
        const int AfterHeader = 33;
        return [.. picture[..AfterHeader], .. chunk, .. picture[AfterHeader..]];
    }

    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        // CRC-32 as in the PNG specification, annex D.
        var crc = 0xFFFFFFFFu;
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) != 0 ? 0xEDB88320u ^ (crc >> 1) : crc >> 1;
            }
        }

        return crc ^ 0xFFFFFFFFu;
    }
}
