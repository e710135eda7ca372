namespace LogBook.Web.Hosting;

/// <summary>Sends people to the first-run page while the installation has no firm.</summary>
public sealed class FirstRunGate(RequestDelegate next, FirmNames firm)
{
    /// <summary>Address of the first-run page.</summary>
    public const string Path = "/first-run";

    /// <summary>Lets a request pass or sends it to the first-run page.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var path = context.Request.Path;
        var isPage = HttpMethods.IsGet(context.Request.Method)
            && !System.IO.Path.HasExtension(path.Value)
            && !path.StartsWithSegments(Path, StringComparison.Ordinal)
            && !path.StartsWithSegments("/account", StringComparison.Ordinal)
            && !path.StartsWithSegments("/health", StringComparison.Ordinal)
            && !path.StartsWithSegments("/help", StringComparison.Ordinal)
            && !path.StartsWithSegments("/api", StringComparison.Ordinal)
            && !path.StartsWithSegments("/_blazor", StringComparison.Ordinal);
        if (!firm.IsSetUp && isPage)
        {
            context.Response.Redirect(Path);
            return Task.CompletedTask;
        }

        return next(context);
    }
}
