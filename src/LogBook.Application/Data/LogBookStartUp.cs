namespace LogBook.Application.Data;

/// <summary>What happens before the first request: schema, automatic backup, checks of the engine's settings, due assessments.</summary>
public sealed class LogBookStartUp
{
    /// <summary>Brings the database to this program's schema and checks it; refuses one that a newer LogBook wrote.</summary>
    public Task RunAsync(CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
