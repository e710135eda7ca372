using System.Net;
using LogBook.Web.Features.FirstRun;
using LogBook.Web.Hosting;
using LogBook.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Account;

public sealed class FirstRunTests
{
    private const string Email = "j.snell@quernwath.example";

    [Fact]
    public async Task EmptyInstallation_AnyPage_LeadsToFirstRun()
    {
        await using var app = new LogBookWebApp();
        using var client = app.CreateClient();

        using var answer = await client.GetAsync("/sites");

        Assert.Equal("/first-run", answer.Headers.Location?.ToString());
    }

    [Fact]
    public async Task Code_FromTheConsole_MakesFirmAndAdministratorOnce()
    {
        await using var app = new LogBookWebApp();
        using var client = app.CreateClient();
        var code = app.Services.GetRequiredService<FirstRunCode>().Text;
        Assert.Contains(app.Services.GetRequiredService<HostConsole>().Said, line => line.Contains(code, StringComparison.Ordinal));

        using var made = await LogBookWebApp.PostFormAsync(client, "/first-run", "first-run", Fields(code));
        using var admin = await app.SignedInAsync(Email);
        using var account = await admin.GetAsync("/account");
        var again = await client.GetStringAsync("/first-run");

        Assert.Equal(HttpStatusCode.Redirect, made.StatusCode);
        Assert.Equal(HttpStatusCode.OK, account.StatusCode);
        Assert.DoesNotContain("<form method=\"post\" action=\"/first-run", again, StringComparison.Ordinal);
        Assert.Contains(FirstRunTexts.Done.En, again, StringComparison.Ordinal);
        Assert.False(app.Services.GetRequiredService<FirstRunCode>().Opens(code));
    }

    [Fact]
    public async Task WrongCode_MakesNothing()
    {
        await using var app = new LogBookWebApp();
        using var client = app.CreateClient();

        using var answer = await LogBookWebApp.PostFormAsync(client, "/first-run", "first-run", Fields("00000000000000000000000000000000"));

        Assert.Contains(FirstRunTexts.CodeWrong.En, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.False(app.Services.GetRequiredService<FirmNames>().IsSetUp);
    }

    private static Dictionary<string, string> Fields(string code) => new()
    {
        ["Given.Code"] = code,
        ["Given.Firm"] = LogBookWebApp.FirmName,
        ["Given.Email"] = Email,
        ["Given.Password"] = LogBookWebApp.Password,
    };
}
