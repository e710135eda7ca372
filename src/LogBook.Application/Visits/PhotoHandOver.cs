using LogBook.Application.Data;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace LogBook.Application.Visits;

/// <summary>Looks once a minute whether a picture was left with a draft whose visit has been received: a full disk or a restart got in between.</summary>
public sealed partial class PhotoHandOver(DraftPhotos photos, TimeProvider clock, ILogger<PhotoHandOver> log) : BackgroundService
{
    /// <summary>Time between two looks.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromMinutes(1);

    private static readonly Viewer Self = Viewer.System("photos");

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Pause, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                await photos.HandOverLeftAsync(Self, stoppingToken);
            }
            catch (Exception fault) when (fault is not OperationCanceledException)
            {
                // The disk is still full, or the database out of reach: the pictures stay, and the next look tries again.
                NotHandedOver(log, fault);
            }
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "Pictures of drafts could not be handed over; they stay.")]
    private static partial void NotHandedOver(ILogger log, Exception fault);
}
