namespace LogBook.Web.Security;

/// <summary>Headers that every answer carries, refusals and files included.</summary>
/// <remarks>
/// Styles may stand inline because the component library sets them so; scripts may not. The offline form alone compiles
/// WebAssembly, for which browsers ask for a word of its own that does not allow evaluating text.
/// </remarks>
public static class SecurityHeaders
{
    private const string BeforeScripts = "default-src 'none'; script-src 'self'";

    private const string AfterScripts =
        "; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; manifest-src 'self'; " +
        "worker-src 'self'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'; object-src 'none'";

    /// <summary>Policy of pages.</summary>
    public const string PagePolicy = BeforeScripts + AfterScripts;

    /// <summary>Policy under <see cref="CapturePath"/>.</summary>
    public const string CapturePolicy = BeforeScripts + " 'wasm-unsafe-eval'" + AfterScripts;

    /// <summary>Where the offline form lives.</summary>
    public const string CapturePath = "/capture";

    private static readonly (string Name, string Value)[] Always =
    [
        ("X-Content-Type-Options", "nosniff"),
        ("X-Frame-Options", "DENY"),
        ("Referrer-Policy", "same-origin"),
        ("Permissions-Policy", "accelerometer=(), autoplay=(), browsing-topics=(), camera=(self), display-capture=(), geolocation=(), gyroscope=(), magnetometer=(), microphone=(), midi=(), payment=(), usb=()"),
        ("Cross-Origin-Opener-Policy", "same-origin"),
        ("Cross-Origin-Resource-Policy", "same-origin"),
        ("X-Permitted-Cross-Domain-Policies", "none"),
    ];

    /// <summary>Adds the headers just before an answer starts, so that error handlers, which clear headers, cannot lose them.</summary>
    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(static state => Set((HttpContext)state), context);
        return next(context);
    });

    private static Task Set(HttpContext context)
    {
        var headers = context.Response.Headers;
        foreach (var (name, value) in Always)
        {
            headers[name] = value;
        }

        headers.ContentSecurityPolicy = context.Request.Path.StartsWithSegments(CapturePath, StringComparison.Ordinal) ? CapturePolicy : PagePolicy;
        if (!headers.ContainsKey("Cache-Control"))
        {
            // What a person may see must not stay behind on a shared tablet.
            headers.CacheControl = "no-store";
        }

        return Task.CompletedTask;
    }
}
