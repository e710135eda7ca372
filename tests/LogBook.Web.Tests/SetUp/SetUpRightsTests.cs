using System.Net;
using System.Text.Json.Nodes;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Features.SetUp;
using LogBook.Web.Features.SetUp.People;
using LogBook.Web.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.SetUp;

[Trait("goal", "S2")]
public sealed class SetUpRightsTests : IClassFixture<SetUpRightsTests.Started>
{
    private readonly Started _host;

    public SetUpRightsTests(Started host) => _host = host;

    [Theory]
    [InlineData(Started.Technician, "/setup")]
    [InlineData(Started.Technician, "/setup/customers")]
    [InlineData(Started.Technician, "/setup/customers/new")]
    [InlineData(Started.Technician, "/setup/customers/record?code=YAF")]
    [InlineData(Started.Technician, "/setup/programmes?site=YAF-1&code=CT-1")]
    [InlineData(Started.Technician, "/people")]
    [InlineData(Started.Customer, "/setup")]
    [InlineData(Started.Customer, "/setup/systems")]
    [InlineData(Started.Customer, "/setup/customers/record?code=YAF")]
    [InlineData(Started.Customer, "/people")]
    [InlineData(Started.Supervisor, "/people")]
    [InlineData(Started.Supervisor, "/setup/thresholds")]
    [InlineData(Started.Technician, "/setup/phrases")]
    [InlineData(Started.Customer, "/setup/phrases")]
    [InlineData(Started.Technician, "/setup/thresholds/record?code=thresholds:pulsesPercent")]
    [InlineData(Started.Supervisor, "/people/account?id=1")]
    public async Task Pages_ForOthers_AreNotThere(string email, string path)
    {
        var client = await _host.ClientAsync(email);

        using var answer = await client.GetAsync(path);

        var body = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode is HttpStatusCode.NotFound or HttpStatusCode.Forbidden or HttpStatusCode.Redirect, $"{answer.StatusCode}");
        Assert.DoesNotContain("Yaffleford", body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Started.Supervisor, "/setup/customers")]
    [InlineData(Started.Supervisor, "/setup/phrases")]
    [InlineData(Started.Administrator, "/setup")]
    [InlineData(Started.Administrator, "/setup/customers/record?code=YAF")]
    [InlineData(Started.Administrator, "/people")]
    [InlineData(Started.Administrator, "/setup/thresholds")]
    [InlineData(Started.Administrator, "/setup/thresholds/record?code=thresholds:pulsesPercent")]
    public async Task Pages_ForThoseWhoKeepThem_AreThere(string email, string path)
    {
        var client = await _host.ClientAsync(email);

        using var answer = await client.GetAsync(path);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData(PersonRole.Technician)]
    [InlineData(PersonRole.Customer)]
    [InlineData(PersonRole.SiteStaff)]
    public async Task Save_ByOthers_IsRefusedInTheHandler(PersonRole role)
    {
        var viewer = new Viewer(1, "other", null, role, null, Language.English);
        var desk = _host.App.Services.GetRequiredService<SetUpDesk>();

        var outcome = await desk.SaveAsync(viewer, SetUpList.Of(SetUpKind.Customer), new JsonObject { ["code"] = "NEW", ["name"] = "New" }, 0);

        Assert.IsType<SaveOutcome.NotAllowed>(outcome);
    }

    [Fact]
    public async Task Accounts_BySupervisor_AreNeitherSeenNorChanged()
    {
        var viewer = new Viewer(1, "i.wendle", null, PersonRole.Supervisor, null, Language.English);
        var keeper = _host.App.Services.GetRequiredService<AccountKeeper>();

        Assert.Empty(await keeper.ListAsync(viewer));
        Assert.False((await keeper.SaveAsync(viewer, new AccountChange(null, "new@quernwath.example", null, PersonRole.Administrator, null, Language.English))).IsDone);
        Assert.False((await keeper.InviteAsync(viewer, 1)).IsDone);
        Assert.False((await keeper.SetPasswordAsync(viewer, 1, LogBookWebApp.Password)).IsDone);
        Assert.False((await keeper.SetDisabledAsync(viewer, 1, disable: true)).IsDone);
    }

    public sealed class Started : IAsyncLifetime
    {
        public const string Technician = "r.yaffle@quernwath.example";
        public const string Supervisor = "i.wendle@quernwath.example";
        public const string Administrator = "j.snell@quernwath.example";
        public const string Customer = "estates@yaffleford.example";

        private readonly Dictionary<string, HttpClient> _clients = [];

        public LogBookWebApp App { get; } = new();

        // One sign-in a person: many within a minute are refused.
        public async Task<HttpClient> ClientAsync(string email) =>
            _clients.TryGetValue(email, out var known) ? known : _clients[email] = await App.SignedInAsync(email);

        public async Task InitializeAsync()
        {
            await App.AddFirmAsync();
            var store = App.Services.GetRequiredService<Application.Sites.SetUpStore>();
            await store.SaveAsync(Viewer.System("test"), new Customer { Code = "YAF", Name = "Yaffleford College" }, 0);
            await App.AddUserAsync(Technician, PersonRole.Technician);
            await App.AddUserAsync(Supervisor, PersonRole.Supervisor);
            await App.AddUserAsync(Administrator, PersonRole.Administrator);
            await App.AddUserAsync(Customer, PersonRole.Customer, customer: "YAF");
        }

        public async Task DisposeAsync()
        {
            foreach (var client in _clients.Values)
            {
                client.Dispose();
            }

            await App.DisposeAsync();
        }
    }
}
