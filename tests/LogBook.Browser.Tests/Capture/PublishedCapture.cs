using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Browser.Tests.Capture;

/// <summary>
/// Serves the tablet's files from a published LogBook instead of those of the last build, so that times are those of what a technician
/// has: LOGBOOK_PUBLISHED names the folder that <c>deploy/publish.sh</c> has made.
/// </summary>
public sealed class PublishedCapture : IStartupFilter
{
    private const string Capture = "/capture";
    private const string Parts = "/capture/_content";

    private readonly string _root;
    private readonly FileExtensionContentTypeProvider _types = new();

    private PublishedCapture(string folder)
    {
        _root = Path.GetFullPath(Path.Combine(folder, "web", "wwwroot"));
        Assert.True(File.Exists(Path.Combine(_root, "capture", "assets.js")), $"No published tablet in {_root}.");
        _types.Mappings[".dat"] = "application/octet-stream";
        _types.Mappings[".webmanifest"] = "application/manifest+json";
    }

    /// <summary>Where it is published; null when the build is tested.</summary>
    public static string? Folder => Environment.GetEnvironmentVariable("LOGBOOK_PUBLISHED");

    /// <summary>Adds it to a host, when it is asked for.</summary>
    /// <param name="services">Services of the host.</param>
    public static void AddTo(IServiceCollection services)
    {
        if (Folder is { } folder)
        {
            services.AddSingleton<IStartupFilter>(new PublishedCapture(folder));
        }
    }

    /// <inheritdoc />
    public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
    {
        app.Use(ServeAsync);
        next(app);
    };

    // Pages stay with the host, which knows their headers.
    private async Task ServeAsync(HttpContext context, RequestDelegate next)
    {
        var path = context.Request.Path;
        if (!path.StartsWithSegments(Capture, StringComparison.Ordinal) || path.Value!.EndsWith(".html", StringComparison.Ordinal))
        {
            await next(context);
            return;
        }

        var place = path.StartsWithSegments(Parts, StringComparison.Ordinal, out var rest) ? "_content" + rest : path.Value.TrimStart('/');
        var file = Path.GetFullPath(Path.Combine(_root, place));
        if (!file.StartsWith(_root, StringComparison.Ordinal) || !File.Exists(file) || !_types.TryGetContentType(file, out var type))
        {
            await next(context);
            return;
        }

        context.Response.ContentType = type;
        await context.Response.SendFileAsync(file);
    }
}
