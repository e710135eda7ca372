using LogBook.Application.Data;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace LogBook.Application.Mail;

/// <summary>Looks into the outbox every few seconds while the server runs.</summary>
public sealed class OutboxService(OutboxWorker worker, ILogger<OutboxService> log) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(5);

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Pause);
        do
        {
            try
            {
                await worker.SendDueAsync(stoppingToken);
            }
            catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
            {
                return;
            }
            catch (Exception fault)
            {
                // A fault here (a full disk, a database out of reach) passes or is fixed by a person; mail must go on after it.
                log.LogError(fault, "The mail queue could not be worked through");
            }
        }
        while (await timer.WaitForNextTickAsync(stoppingToken));
    }
}
