using LogBook.Application.Data;
using LogBook.Application.Mail;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Summaries;
using LogBook.Application.Visits;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Options;

namespace LogBook.Application.Tests.Mail;

/// <summary>The sample firm with a mail queue, whose clock stands still until it is moved.</summary>
internal sealed class MailHouse : IAsyncDisposable
{
    private MailHouse()
    {
    }

    public SqliteDatabase Database { get; } = new();

    public LogBookStore Store => Database.Get<LogBookStore>();

    public SummaryReader Summaries => new(Store, Database.Get<SetUpStore>(), Database.Get<VisitReader>());

    public MailQuery Query => new(Store);

    public static async Task<MailHouse> StartAsync()
    {
        var house = new MailHouse();
        await house.Database.StartWithSampleFirmAsync();
        return house;
    }

    public static SmtpTransport Smtp(int port, int timeoutSeconds = 30, bool requireTls = false) => new(Options.Create(MailBy(port, timeoutSeconds, requireTls)));

    public OutboxWorker Worker(IMailTransport transport) => new(
        Store, Summaries, Database.Get<AssessmentKeeper>(), Database.Get<AttentionQuery>(), transport, Options.Create(MailBy(25, 30, false)), Database.Clock, NullLogger<OutboxWorker>.Instance);

    /// <summary>Hands a visit in; its summary then waits.</summary>
    public async Task<Visit> ReceiveAsync(Visit visit, IntakeSource source = IntakeSource.Tablet)
    {
        Assert.IsType<IntakeOutcome.Stored>(await Database.Get<VisitIntake>().ReceiveAsync(Database.Technician, visit, source));
        return visit;
    }

    public Task<List<OutboxRow>> OutboxAsync() => Store.ReadAsync(Database.Supervisor, db => db.Outbox.OrderBy(row => row.Id).ToListAsync());

    public async Task<OutboxRow> OnlyAsync() => Assert.Single(await OutboxAsync());

    public Task ChangeAsync(Action<OutboxRow> change) => Store.WriteAsync(Viewer.System("test"), async db =>
    {
        foreach (var row in await db.Outbox.AsTracking().ToListAsync())
        {
            change(row);
        }
    });

    public ValueTask DisposeAsync() => Database.DisposeAsync();

    private static MailOptions MailBy(int port, int timeoutSeconds, bool requireTls) => new()
    {
        Host = "127.0.0.1", Port = port, RequireTls = requireTls, TimeoutSeconds = timeoutSeconds, From = "service@quernwath.example", FromName = "Quernwath Water",
    };
}
