using LogBook.Application.Mail;
using LogBook.Testing;
using Microsoft.Extensions.Options;
using MimeKit;

namespace LogBook.Application.Tests.Mail;

public sealed class FolderTransportTests
{
    [Fact]
    public async Task Send_ThroughTheQueue_LeavesOneWholeFileAMessage()
    {
        await using var house = await MailHouse.StartAsync();
        await house.ReceiveAsync(SampleFirm.Visit());
        var folder = Path.Combine(house.Database.Folder, "mail");

        await house.Worker(new FolderTransport(Options.Create(new MailOptions { Folder = folder }))).SendDueAsync();

        var row = await house.OnlyAsync();
        var file = Assert.Single(Directory.GetFiles(folder));
        Assert.Equal(row.MessageId.Split('@')[0] + ".eml", Path.GetFileName(file));
        Assert.Equal(Path.GetFileName(file), row.ServerSaid);
        var message = await MimeMessage.LoadAsync(file);
        Assert.Equal(row.MessageId, message.MessageId);
        Assert.Equal(row.HtmlBody!.ReplaceLineEndings(), message.HtmlBody!.ReplaceLineEndings());
    }

    [Fact]
    public async Task Send_StoppedMeanwhile_LeavesNoFileThatLooksWhole()
    {
        var folder = Directory.CreateTempSubdirectory("logbook-mail-");
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        var message = new MimeMessage { MessageId = "one@logbook.example", Body = new TextPart("plain") { Text = "x" } };
        var transport = new FolderTransport(Options.Create(new MailOptions { Folder = folder.FullName }));

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => transport.SendAsync(message, stop.Token));
        Assert.Empty(folder.GetFiles("*.eml"));
        await transport.SendAsync(message, CancellationToken.None);

        Assert.Equal("one.eml", Assert.Single(folder.GetFiles()).Name);
        folder.Delete(recursive: true);
    }

    [Theory]
    [InlineData("../../outside@logbook.example")]
    [InlineData("a/b\\c@logbook.example")]
    public async Task Send_OddMessageId_StaysInTheFolder(string messageId)
    {
        var folder = Directory.CreateTempSubdirectory("logbook-mail-");
        var message = new MimeMessage { Body = new TextPart("plain") { Text = "x" } };
        message.Headers.Replace(HeaderId.MessageId, "<" + messageId + ">");

        await new FolderTransport(Options.Create(new MailOptions { Folder = folder.FullName })).SendAsync(message, CancellationToken.None);

        Assert.EndsWith(".eml", Assert.Single(folder.GetFiles()).Name, StringComparison.Ordinal);
        folder.Delete(recursive: true);
    }
}
