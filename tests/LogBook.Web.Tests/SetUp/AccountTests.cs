using System.Net;
using Bunit;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Features.SetUp.People;
using LogBook.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.SetUp;

/// <summary>Accounts from their making to their end, by the administrator's pages.</summary>
public sealed class AccountTests
{
    private const string Email = "r.yaffle@quernwath.example";

    [Fact]
    [Trait("goal", "S3")]
    public async Task Invitation_SetsAPasswordOnce_AndThenLetsIn()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician, Email = Email }, 0);
        var form = pages.Record(SetUpKind.Person, "RYA");
        form.WaitForElement("#account-save");
        Assert.Equal(Email, form.Find("#account-email").GetAttribute("value"));
        form.Find("#account-save").Closest("form")!.Submit();
        form.WaitForElement("#account-invite").Click();
        var link = new Uri(form.WaitForElement("#account-link").TextContent).PathAndQuery;
        using var client = pages.App.CreateClient();

        using var first = await LogBookWebApp.PostFormAsync(client, link, "invited", new() { ["Passwords.New"] = LogBookWebApp.Password, ["Passwords.Again"] = LogBookWebApp.Password });
        Assert.Contains(WebUtility.HtmlEncode(PeopleTexts.WelcomeDone.En), await first.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var second = await LogBookWebApp.PostFormAsync(client, link, "invited", new() { ["Passwords.New"] = "another grey pump hums", ["Passwords.Again"] = "another grey pump hums" });
        Assert.Contains(WebUtility.HtmlEncode(PeopleTexts.LinkOver.En), await second.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        using var signedIn = await pages.App.SignedInAsync(Email);
        var account = (await Keeper(pages).ListAsync(pages.Viewer)).Single(account => account.Email == Email);
        Assert.Equal(("RYA", PersonRole.Technician, true), (account.Person, account.Role, account.HasPassword));
    }

    [Fact]
    [Trait("goal", "S3")]
    public async Task FirstPassword_ByTheAdministrator_LetsIn_AndACommonOneIsRefused()
    {
        await using var pages = await SetUpPages.ForAsync();
        var made = await Keeper(pages).SaveAsync(pages.Viewer, new AccountChange(null, Email, null, PersonRole.Technician, null, Language.Spanish));

        Assert.False((await Keeper(pages).SetPasswordAsync(pages.Viewer, made.Id!.Value, "password1234")).IsDone);
        Assert.True((await Keeper(pages).SetPasswordAsync(pages.Viewer, made.Id!.Value, LogBookWebApp.Password)).IsDone);

        using var signedIn = await pages.App.SignedInAsync(Email);
    }

    [Fact]
    [Trait("goal", "S4")]
    public async Task Disabled_IsShutOut_AndLetInAgain()
    {
        await using var pages = await SetUpPages.ForAsync();
        var id = await pages.App.AddUserAsync(Email, PersonRole.Technician);
        var page = pages.Open<AccountOfPage>($"/people/account?id={id}");
        page.WaitForElement("#account-disable").Click();
        page.Find("#account-disable-sure").Click();
        page.WaitForElement("#account-enable");
        using var client = pages.App.CreateClient();
        using (var refused = await LogBookWebApp.PostFormAsync(client, "/account/sign-in", "sign-in", new() { ["Given.Email"] = Email, ["Given.Password"] = LogBookWebApp.Password }))
        {
            Assert.Equal(HttpStatusCode.OK, refused.StatusCode);
        }

        page.Find("#account-enable").Click();
        page.WaitForElement("#account-disable");

        using var signedIn = await pages.App.SignedInAsync(Email);
    }

    [Fact]
    public async Task LastAdministrator_StaysOne()
    {
        await using var pages = await SetUpPages.ForAsync();
        var self = pages.Viewer.UserId!.Value;

        Assert.False((await Keeper(pages).SetDisabledAsync(pages.Viewer, self, disable: true)).IsDone);
        Assert.Equal(
            [PeopleTexts.LastAdministrator.En],
            (await Keeper(pages).SaveAsync(pages.Viewer, new AccountChange(self, "j.snell@quernwath.example", null, PersonRole.Technician, null, Language.English))).Problems);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task CustomerAccount_BelongsToOneCustomer()
    {
        await using var pages = await SetUpPages.ForAsync();
        await pages.Store.SaveAsync(pages.Viewer, new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);

        var without = await Keeper(pages).SaveAsync(pages.Viewer, new AccountChange(null, "estates@yaffleford.example", null, PersonRole.Customer, null, Language.English));
        var with = await Keeper(pages).SaveAsync(pages.Viewer, new AccountChange(null, "estates@yaffleford.example", null, PersonRole.Customer, "YAF", Language.English));
        var twice = await Keeper(pages).SaveAsync(pages.Viewer, new AccountChange(null, "Estates@yaffleford.example", null, PersonRole.Customer, "YAF", Language.English));

        Assert.Equal([PeopleTexts.CustomerNeeded.En], without.Problems);
        Assert.True(with.IsDone);
        Assert.Equal([PeopleTexts.EmailTaken.In(Language.English, "Estates@yaffleford.example")], twice.Problems);
        Assert.Equal("YAF", (await Keeper(pages).ListAsync(pages.Viewer)).Single(account => account.Email == "estates@yaffleford.example").Customer);
    }

    private static AccountKeeper Keeper(SetUpPages pages) => pages.App.Services.GetRequiredService<AccountKeeper>();
}
