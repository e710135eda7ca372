using LogBook.Application.Data;
using LogBook.Web.Hosting;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Api;

/// <summary>Whether the program runs, and whether it can do its work.</summary>
public static class HealthEndpoints
{
    private static readonly Viewer Asker = Viewer.System("health");

    /// <summary>Maps the two addresses.</summary>
    public static void MapHealth(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/health/live", static () => Results.Text("alive")).AllowAnonymous().ExcludeFromDescription();
        routes.MapGet("/health/ready", ReadyAsync).AllowAnonymous().ExcludeFromDescription();
    }

    // Says nothing about why: that stands in the log, for those who may read it.
    private static async Task<IResult> ReadyAsync(LogBookStore store, HostSettings settings, ILogger<HostSettings> logger, CancellationToken cancellationToken)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        limit.CancelAfter(TimeSpan.FromSeconds(4));
        try
        {
            await store.ReadAsync(Asker, db => db.Roles.CountAsync(limit.Token), limit.Token);
            await TryDiskAsync(settings.DataFolder, limit.Token);
            return Results.Text("ready");
        }
        catch (Exception exception) when (exception is not OperationCanceledException || !cancellationToken.IsCancellationRequested)
        {
            logger.LogError(exception, "Not ready");
            return Problems.Of(StatusCodes.Status503ServiceUnavailable, "not-ready", "Records cannot be read or written now.");
        }
    }

    // A full disk lets reading go on for a long time.
    private static async Task TryDiskAsync(string folder, CancellationToken cancellationToken)
    {
        var path = Path.Combine(folder, "." + Guid.CreateVersion7().ToString("N") + ".ready");
        try
        {
            await using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, 4096, FileOptions.WriteThrough | FileOptions.DeleteOnClose);
            await file.WriteAsync(new byte[4096], cancellationToken);
            await file.FlushAsync(cancellationToken);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
