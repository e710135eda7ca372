using System.Diagnostics;
using System.Globalization;

namespace LogBook.Application.Tests.Command;

/// <summary>The built command as a process of its own, in a folder of its own.</summary>
internal sealed class LogbookCommand : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("logbook-command-");

    /// <summary>Folder that is deleted afterwards; the current one of the process.</summary>
    public string Folder => _folder.FullName;

    /// <summary>Path of an example of the exchange format.</summary>
    public static string Example(string name) => Path.Combine(AppContext.BaseDirectory, "examples", name + ".json");

    public string At(string name) => Path.Combine(Folder, name);

    public Task<CommandResult> RunAsync(params string[] arguments) => RunWithInputAsync(null, arguments);

    /// <summary>Runs, and presses Ctrl+C (SIGINT) as soon as a file appears in the folder.</summary>
    public async Task<CommandResult> InterruptAsync(string onceThereIs, params string[] arguments)
    {
        using var watcher = new FileSystemWatcher(Folder);
        var appeared = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        void Look(string? name)
        {
            if (name == onceThereIs)
            {
                appeared.TrySetResult();
            }
        }

        watcher.Created += (_, made) => Look(made.Name);
        watcher.EnableRaisingEvents = true;
        return await RunAsync(
            null,
            async process =>
            {
                if (await Task.WhenAny(appeared.Task, process.WaitForExitAsync()) == appeared.Task)
                {
                    using var kill = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)])!;
                    await kill.WaitForExitAsync();
                }
            },
            arguments,
            hearsInterrupts: true);
    }

    public Task<CommandResult> RunWithInputAsync(string? input, params string[] arguments) => RunAsync(input, _ => Task.CompletedTask, arguments);

    private async Task<CommandResult> RunAsync(string? input, Func<Process, Task> meanwhile, string[] arguments, bool hearsInterrupts = false)
    {
        var dotnet = Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path) == "dotnet" ? path : "dotnet";
        var start = new ProcessStartInfo(hearsInterrupts ? "env" : dotnet)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Folder,
        };
        if (hearsInterrupts)
        {
            // A shell starts what runs in the background deaf to SIGINT, and its children inherit that.
            start.ArgumentList.Add("--default-signal=INT");
            start.ArgumentList.Add(dotnet);
        }

        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "logbook.dll"));
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        var before = ChildrenSeconds();
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        if (input is not null)
        {
            await process.StandardInput.WriteLineAsync(input);
        }

        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        await meanwhile(process);
        await process.WaitForExitAsync();
        return new CommandResult(process.ExitCode, await output, await errors, clock.Elapsed.TotalSeconds, ChildrenSeconds() - before);
    }

    /// <summary>Runs what must succeed without a word on the error stream.</summary>
    public async Task<string> MustAsync(params string[] arguments)
    {
        var result = await RunAsync(arguments);
        Assert.Equal("", result.Errors);
        Assert.Equal(0, result.ExitCode);
        return result.Output;
    }

    public void Dispose() => _folder.Delete(recursive: true);

    // Processor seconds of the children that have ended, where the system tells (Linux counts them in hundredths).
    private static double? ChildrenSeconds()
    {
        if (!OperatingSystem.IsLinux())
        {
            return null;
        }

        var stat = File.ReadAllText("/proc/self/stat");
        var fields = stat[(stat.LastIndexOf(')') + 2)..].Split(' ');
        return (double.Parse(fields[13], CultureInfo.InvariantCulture) + double.Parse(fields[14], CultureInfo.InvariantCulture)) / 100;
    }
}
