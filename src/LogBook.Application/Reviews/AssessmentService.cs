using LogBook.Application.Data;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace LogBook.Application.Reviews;

/// <summary>
/// Assesses what is due once a minute while the server runs: a change of the set-up only marks systems as due, and what time alone
/// opens (a date that passes, a summary that is not taken) comes with no visit.
/// </summary>
public sealed partial class AssessmentService(AssessmentKeeper assessments, TimeProvider clock, ILogger<AssessmentService> log) : BackgroundService
{
    /// <summary>Time between two looks.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromMinutes(1);

    private static readonly Viewer Self = Viewer.System("clock");

    /// <inheritdoc />
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Pause, clock);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                await assessments.AssessDueAsync(Self, null, stoppingToken);
            }
            catch (Exception fault) when (fault is not OperationCanceledException)
            {
                // A fault of a rule or a database out of reach: the systems stay due, and the next look tries again.
                NotAssessed(log, fault);
            }
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "What is due could not be assessed; it stays due.")]
    private static partial void NotAssessed(ILogger log, Exception fault);
}
