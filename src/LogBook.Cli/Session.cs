using LogBook.Application.Accounts;
using LogBook.Application.Data;
using LogBook.Application.Demo;
using LogBook.Application.Mail;
using LogBook.Domain.Outcomes;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace LogBook.Cli;

/// <summary>An open database for one command, with the same services as the server.</summary>
internal sealed class Session : IAsyncDisposable
{
    /// <summary>Refused input: errors stand on stderr as "path: message".</summary>
    public const int Refused = 1;

    /// <summary>Wrong use of the command.</summary>
    public const int WrongUse = 2;

    /// <summary>Stopped by Ctrl+C or a request to end: 128 + SIGINT, as shells have it.</summary>
    public const int Interrupted = 130;

    private readonly ServiceProvider _services;

    private Session(ServiceProvider services) => _services = services;

    /// <summary>Who acts, as it stands in the audit trail.</summary>
    public static Viewer Self { get; } = Viewer.System("command");

    /// <summary>Opens a database and brings it to this program's schema.</summary>
    /// <param name="database">Path of a SQLite file or a connection string.</param>
    /// <param name="prepare">False for work that must not touch the file first, such as a restore.</param>
    /// <param name="cancellationToken">Stops.</param>
    public static async Task<Session> OpenAsync(string database, bool prepare, CancellationToken cancellationToken)
    {
        var services = new ServiceCollection();
        services.AddLogging(log => log.SetMinimumLevel(LogLevel.Warning).AddSimpleConsole(console => console.SingleLine = true)

            // What EF would log as an error reaches the person as the one line of the exception.
            .AddFilter("Microsoft.EntityFrameworkCore", LogLevel.None));
        services.Configure<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        services.AddLogBook(new LogBookOptions { Database = database });
        services.AddLogBookMail(mail => mail.Folder = "mail", runs: false);
        services.AddSingleton<DemoImport>();
        services.AddLogBookAccounts();
        var session = new Session(services.BuildServiceProvider());
        if (prepare)
        {
            await session.Get<LogBookStartUp>().RunAsync(cancellationToken);
        }

        return session;
    }

    /// <summary>A service.</summary>
    public T Get<T>()
        where T : notnull => _services.GetRequiredService<T>();

    /// <summary>A scope for services that live for one act.</summary>
    public AsyncServiceScope Scope() => _services.CreateAsyncScope();

    /// <summary>Prints issues as "path: message" on stderr.</summary>
    public static int Refuse(IEnumerable<Issue> issues)
    {
        foreach (var issue in issues)
        {
            Console.Error.WriteLine(issue.Path.Length == 0 ? issue.Message : $"{issue.Path}: {issue.Message}");
        }

        return Refused;
    }

    /// <inheritdoc />
    public ValueTask DisposeAsync() => _services.DisposeAsync();
}
