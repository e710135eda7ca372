using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Mail;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Mail;

public sealed class OutboxWorkerTests
{
    [Fact]
    [Trait("goal", "R6")]
    public async Task SendDue_ServerTakesIt_IsSentOnceAndNotAgain()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink();
        await house.ReceiveAsync(SampleFirm.Visit());
        var worker = house.Worker(MailHouse.Smtp(sink.Port));

        Assert.Equal(1, await worker.SendDueAsync());
        house.Database.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal(0, await worker.SendDueAsync());

        var row = await house.OnlyAsync();
        Assert.Equal(new DateTime(2025, 3, 10, 8, 0, 0, DateTimeKind.Utc), row.AcceptedAt);
        Assert.Equal((1, null), (row.Attempts, row.LastError));
        Assert.Contains("queued as 42", row.ServerSaid, StringComparison.Ordinal);
        Assert.Equal(row.MessageId, Assert.Single(sink.Kept).MessageId);
        Assert.Equal(1, sink.Connections);
    }

    [Theory]
    [Trait("goal", "R6")]
    [InlineData(nameof(SinkAnswer.NotNow), 1, "451 ")]
    [InlineData(nameof(SinkAnswer.Closed), 1, null)]
    [InlineData(nameof(SinkAnswer.Silent), 1, null)]
    [InlineData(nameof(SinkAnswer.WantsSignIn), 1, null)]
    [InlineData(nameof(SinkAnswer.DropBeforeDot), 1, null)]
    [InlineData(nameof(SinkAnswer.DropAfterDot), 2, null)]
    [InlineData(nameof(SinkAnswer.SilentAfterDot), 2, null)]
    public async Task SendDue_FaultThatPasses_IsTriedAgainUnderTheSameMessageId(string answer, int kept, string? said)
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink(Enum.Parse<SinkAnswer>(answer));
        await house.ReceiveAsync(SampleFirm.Visit());
        var worker = house.Worker(MailHouse.Smtp(sink.Port, timeoutSeconds: answer.StartsWith("Silent", StringComparison.Ordinal) ? 1 : 30));

        Assert.Equal(0, await worker.SendDueAsync());
        var waiting = await house.OnlyAsync();
        Assert.Equal(0, await worker.SendDueAsync());
        house.Database.Clock.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(1, await worker.SendDueAsync());

        Assert.Null(waiting.AcceptedAt);
        Assert.Null(waiting.GivenUpAt);
        Assert.False(string.IsNullOrEmpty(waiting.LastError));
        Assert.StartsWith(said ?? "", waiting.LastError, StringComparison.Ordinal);
        Assert.Equal(2, sink.Connections);
        Assert.Equal(kept, sink.Kept.Count);
        Assert.All(sink.Kept, message => Assert.Equal(waiting.MessageId, message.MessageId));
        Assert.Equal(sink.Kept[0].TextBody, sink.Kept[^1].TextBody);
        Assert.Equal((2, null), ((await house.OnlyAsync()).Attempts, (await house.OnlyAsync()).LastError));
    }

    // The server has taken the message: its silence afterwards must not make a second one.
    [Fact]
    [Trait("goal", "R6")]
    public async Task SendDue_NoAnswerToTheGoodbye_IsNotSentAgain()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink(SinkAnswer.SilentAtQuit);
        await house.ReceiveAsync(SampleFirm.Visit());
        var worker = house.Worker(MailHouse.Smtp(sink.Port, timeoutSeconds: 1));

        Assert.Equal(1, await worker.SendDueAsync());
        house.Database.Clock.Advance(TimeSpan.FromHours(2));
        Assert.Equal(0, await worker.SendDueAsync());

        Assert.Single(sink.Kept);
        Assert.Equal(1, sink.Connections);
    }

    [Fact]
    [Trait("goal", "R6")]
    public async Task SendDue_ServerSaysNever_IsGivenUpUntilAReviewerTriesAgain()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink(SinkAnswer.Never);
        await house.ReceiveAsync(SampleFirm.Visit());
        var worker = house.Worker(MailHouse.Smtp(sink.Port));
        await worker.SendDueAsync();
        house.Database.Clock.Advance(TimeSpan.FromDays(1));
        await worker.SendDueAsync();
        var row = await house.OnlyAsync();
        Assert.NotNull(row.GivenUpAt);
        Assert.StartsWith("550 ", row.LastError, StringComparison.Ordinal);
        Assert.Equal(1, sink.Connections);

        Assert.IsType<SaveOutcome.NotAllowed>(await worker.TryAgainAsync(house.Database.Technician, row.Id));
        Assert.IsType<SaveOutcome.NotAllowed>(await worker.TryAgainAsync(await house.Database.OfCustomerAsync("YAF"), row.Id));
        Assert.Equal(0, await worker.SendDueAsync());
        Assert.IsType<SaveOutcome.Saved>(await worker.TryAgainAsync(house.Database.Supervisor, row.Id));
        Assert.Equal(1, await worker.SendDueAsync());

        Assert.Equal(row.MessageId, Assert.Single(sink.Kept).MessageId);
        Assert.IsType<SaveOutcome.NotFound>(await worker.TryAgainAsync(house.Database.Supervisor, row.Id));
        Assert.Contains(
            await house.Store.ReadAsync(house.Database.Supervisor, db => db.AuditTrail.ToListAsync()),
            entry => entry.What == AuditActs.MailTriedAgain && entry.Key == row.MessageId);
    }

    [Fact]
    [Trait("goal", "R6")]
    public async Task SendDue_ServerStaysAway_WaitsLongerEachTimeAndIsGivenUpAfterThreeDays()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink([.. Enumerable.Repeat(SinkAnswer.NotNow, 200)]);
        await house.ReceiveAsync(SampleFirm.Visit());
        var worker = house.Worker(MailHouse.Smtp(sink.Port));
        var started = house.Database.Clock.GetUtcNow().UtcDateTime;
        var waits = new List<double>();

        while ((await house.OnlyAsync()).GivenUpAt is null)
        {
            await worker.SendDueAsync();
            var due = (await house.OnlyAsync()).DueAt - house.Database.Clock.GetUtcNow().UtcDateTime;
            waits.Add(due.TotalMinutes);
            house.Database.Clock.Advance(due > TimeSpan.Zero ? due : TimeSpan.FromMinutes(1));
        }

        Assert.Equal([1, 2, 4, 8, 16, 32, 60, 60], waits.Take(8));
        Assert.InRange((await house.OnlyAsync()).GivenUpAt!.Value - started, TimeSpan.FromDays(3), TimeSpan.FromDays(3) + TimeSpan.FromHours(1));
        Assert.Empty(sink.Kept);
    }

    [Fact]
    [Trait("goal", "R6")]
    public async Task SendDue_ProgramStopsAfterTheAnswer_RepeatsOnceUnderTheSameMessageId()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink();
        await house.ReceiveAsync(SampleFirm.Visit());
        using var stop = new CancellationTokenSource();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => house.Worker(new StoppedAfterSending(MailHouse.Smtp(sink.Port), stop)).SendDueAsync(stop.Token));
        await house.Database.RestartAsync();
        Assert.Equal(1, await house.Worker(MailHouse.Smtp(sink.Port)).SendDueAsync());
        Assert.Equal(0, await house.Worker(MailHouse.Smtp(sink.Port)).SendDueAsync());

        Assert.Equal(2, sink.Kept.Count);
        Assert.Equal(sink.Kept[0].MessageId, sink.Kept[1].MessageId);
        Assert.Equal(sink.Kept[0].HtmlBody, sink.Kept[1].HtmlBody);
        Assert.Equal(sink.Kept[0].Date, sink.Kept[1].Date);
    }

    // Forty messages against a server that fails in every way in turn: each arrives, and only those repeat whose answer was lost.
    [Fact]
    [Trait("goal", "R6")]
    public async Task SendDue_ManyMessagesThroughManyFaults_NoneIsMissingAndNoneRepeatsWithoutAFault()
    {
        await using var house = await MailHouse.StartAsync();
        SinkAnswer[] faults = [SinkAnswer.Accept, SinkAnswer.NotNow, SinkAnswer.DropBeforeDot, SinkAnswer.DropAfterDot, SinkAnswer.Closed];
        await using var sink = new SmtpSink([.. Enumerable.Range(0, 40).Select(i => faults[i % faults.Length])]);
        for (var i = 0; i < 40; i++)
        {
            await house.ReceiveAsync(SampleFirm.Visit(i % 2 == 0 ? "YAF-1" : "PLU-1", Domain.Exchange.Moment.OfUtc(new DateTime(2025, 1, 6, 9, 0, 0, DateTimeKind.Utc).AddDays(i)).Text));
        }

        var worker = house.Worker(MailHouse.Smtp(sink.Port));
        for (var i = 0; i < 12; i++)
        {
            await worker.SendDueAsync();
            house.Database.Clock.Advance(TimeSpan.FromHours(1));
        }

        var rows = await house.OutboxAsync();
        Assert.All(rows, row => Assert.NotNull(row.AcceptedAt));
        var arrived = sink.Kept.CountBy(message => message.MessageId!).ToDictionary();
        Assert.Equal(rows.Select(row => row.MessageId).Order(), arrived.Keys.Order());
        Assert.Equal(8, arrived.Values.Sum() - arrived.Count);
        Assert.All(rows.Where(row => row.Attempts == 1), row => Assert.Equal(1, arrived[row.MessageId]));
    }

    [Fact]
    public async Task SendDue_SetUpChangesBetweenTries_SendsTheWordsOfTheFirstTry()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink(SinkAnswer.NotNow);
        await house.ReceiveAsync(SampleFirm.Visit());
        var worker = house.Worker(MailHouse.Smtp(sink.Port));
        await worker.SendDueAsync();
        var worded = await house.OnlyAsync();
        var setUp = await Imports.Documents.SetUpAsync();
        await Imports.Documents.ImportAsync(house.Database, setUp with { Sites = [.. setUp.Sites.Select(site => site with { Name = "Renamed" })] }, update: true);

        house.Database.Clock.Advance(TimeSpan.FromHours(1));
        await worker.SendDueAsync();

        var message = Assert.Single(sink.Kept);
        Assert.Equal(worded.Subject, message.Subject);
        Assert.DoesNotContain("Renamed", message.TextBody, StringComparison.Ordinal);
        Assert.Equal(worded.TextBody!.ReplaceLineEndings(), message.TextBody!.ReplaceLineEndings());
    }

    [Fact]
    public async Task SendDue_AmendedWhileTheFirstVersionWaits_SendsOnlyTheNewest()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink(SinkAnswer.NotNow);
        var worker = house.Worker(MailHouse.Smtp(sink.Port));
        var visit = await house.ReceiveAsync(SampleFirm.Visit());
        await house.ReceiveAsync(SampleFirm.Visit("PLU-1"));
        await worker.SendDueAsync();
        await house.ReceiveAsync(SampleFirm.Amended(visit, inhibitor: 59));
        await house.ReceiveAsync(SampleFirm.Amended(SampleFirm.Amended(visit, inhibitor: 59), inhibitor: 61, "misread twice"));

        // Before the first version is due again: that it is replaced is seen at once.
        await worker.SendDueAsync();

        var messages = (await house.Query.ListAsync(house.Database.Supervisor with { Language = Language.Portuguese }, onlyOpen: false, page: 1))!.Messages
            .Where(message => message.SiteCode == "YAF-1").OrderBy(message => message.VisitVersion).ToList();
        Assert.Equal([MailStanding.GivenUp, MailStanding.GivenUp, MailStanding.Accepted], messages.Select(message => message.Standing));
        Assert.Equal(["substituído pela versão 3", "substituído pela versão 3", null], messages.Select(message => message.LastError));
        Assert.Equal(2, sink.Kept.Count);
        Assert.Contains("version 3", Assert.Single(sink.Kept, message => message.To.Mailboxes.Single().Address.StartsWith("estates", StringComparison.Ordinal)).Subject, StringComparison.Ordinal);

        // A replaced version does not come back by being tried again.
        Assert.IsType<SaveOutcome.Saved>(await worker.TryAgainAsync(house.Database.Supervisor, messages[0].Id));
        house.Database.Clock.Advance(TimeSpan.FromHours(1));
        Assert.Equal(0, await worker.SendDueAsync());
        Assert.Equal(2, sink.Kept.Count);
    }

    [Theory]
    [InlineData("b@x.example, v@x.example")]
    [InlineData("b@x.example; v@x.example")]
    [InlineData("b@x.example\r\nBcc: v@x.example")]
    [InlineData("Someone <b@x.example>, v@x.example")]
    [InlineData("group: b@x.example, v@x.example;")]
    [InlineData("b@x.example v@x.example")]
    [InlineData("")]
    public async Task SendDue_NotOneAddress_IsGivenUpAndReachesNobody(string recipient)
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink();
        await house.ReceiveAsync(SampleFirm.Visit());
        await house.ChangeAsync(row => row.Recipient = recipient);

        Assert.Equal(0, await house.Worker(MailHouse.Smtp(sink.Port)).SendDueAsync());

        Assert.Equal(0, sink.Connections);
        var row = await house.OnlyAsync();
        Assert.NotNull(row.GivenUpAt);
        Assert.Equal($"'{recipient}' no es una dirección de correo", MailNotes.In(row.LastError, Language.Spanish));
    }

    // A server that demands encryption we cannot have, or the other way round, once stopped the whole queue.
    [Fact]
    public async Task SendDue_ServerWithoutEncryption_WaitsAndSendsNothingInTheClear()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink();
        await house.ReceiveAsync(SampleFirm.Visit());

        Assert.Equal(0, await house.Worker(MailHouse.Smtp(sink.Port, requireTls: true)).SendDueAsync());

        Assert.Empty(sink.Kept);
        Assert.Empty(sink.Recipients);
        Assert.Null((await house.OnlyAsync()).GivenUpAt);
        Assert.Equal(1, (await house.OnlyAsync()).Attempts);
    }

    [Fact]
    public async Task SendDue_OneMessageCannotBeWorded_DoesNotKeepTheOthers()
    {
        await using var house = await MailHouse.StartAsync();
        await using var sink = new SmtpSink();
        await house.ReceiveAsync(SampleFirm.Visit());
        await house.ReceiveAsync(SampleFirm.Visit("PLU-1"));
        await house.Database.SqlAsync("UPDATE VisitVersions SET Document = 'broken' WHERE VisitRowId = (SELECT MIN(VisitRowId) FROM Outbox)");

        Assert.Equal(1, await house.Worker(MailHouse.Smtp(sink.Port)).SendDueAsync());

        var rows = await house.OutboxAsync();
        Assert.Equal("no se pudo preparar el mensaje; el registro del servidor dice por qué", MailNotes.In(rows[0].LastError, Language.Spanish));
        Assert.Null(rows[0].AcceptedAt);
        Assert.NotNull(rows[1].AcceptedAt);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task List_ByACustomer_ShowsNothing()
    {
        await using var house = await MailHouse.StartAsync();
        await house.ReceiveAsync(SampleFirm.Visit());
        var customer = await house.Database.OfCustomerAsync("YAF", PersonRole.SiteStaff);

        Assert.Null(await house.Query.ListAsync(customer, onlyOpen: false, page: 1));
        Assert.Null(await house.Query.FindAsync(customer, (await house.OnlyAsync()).Id));
        Assert.Equal(1, (await house.Query.ListAsync(house.Database.Technician, onlyOpen: true, page: 1))!.Total.Known);
    }
}
