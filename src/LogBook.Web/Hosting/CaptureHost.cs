using LogBook.Web.Security;

namespace LogBook.Web.Hosting;

/// <summary>Serves the form that works without signal. Its files hold nothing of the firm, so nobody has to sign in for them.</summary>
public static class CaptureHost
{
    private const string Parts = "/_content";

    /// <summary>Maps its one page; the files are static assets.</summary>
    public static void MapCapture(this IEndpointRouteBuilder routes) =>
        routes.MapFallbackToFile(SecurityHeaders.CapturePath + "/{*path:nonfile}", "capture/index.html").AllowAnonymous();

    /// <summary>The form asks for the files of its parts under its own address; the host has them once, for the pages too.</summary>
    public static void UseCaptureParts(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        if (context.Request.Path.StartsWithSegments(SecurityHeaders.CapturePath + Parts, StringComparison.Ordinal, out var rest))
        {
            context.Request.Path = Parts + rest;
        }

        return next(context);
    });
}
