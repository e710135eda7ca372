using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace LogBook.Application.Notices;

/// <summary>Looks every few minutes whether a morning's messages are to be written.</summary>
public sealed class DigestService(DigestWriter writer, ILogger<DigestService> log, TimeProvider clock) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromMinutes(10);

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Pause, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                await writer.QueueDueAsync(stoppingToken);
            }
            catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
            {
                return;
            }
            catch (Exception fault)
            {
                // The day's message comes ten minutes later; the reason stands in the log.
                log.LogError(fault, "The morning's messages could not be written");
            }
        }
    }
}
