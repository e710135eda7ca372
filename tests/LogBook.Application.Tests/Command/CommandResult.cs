namespace LogBook.Application.Tests.Command;

/// <summary>What a run of the command came to.</summary>
internal sealed record CommandResult(int ExitCode, string Output, string Errors, double WallSeconds, double? ProcessorSeconds)
{
    public string[] ErrorLines => Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
