using System.Net;
using System.Text.RegularExpressions;
using LogBook.Application.Accounts;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Features.FirstRun;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Hosting;

/// <summary>
/// The whole host on a SQLite file of its own in a temporary folder, in this process: over the test server by default, over
/// Kestrel on loopback after <c>UseKestrel(0)</c> and <c>StartServer()</c>.
/// </summary>
public sealed partial class LogBookWebApp : WebApplicationFactory<Program>
{
    /// <summary>A password that the host accepts.</summary>
    public const string Password = "four grey pumps humming";

    private readonly TimeProvider? _clock;
    private readonly bool _isDemo;
    private readonly IReadOnlyDictionary<string, string> _settings;

    /// <summary>Prepares a host.</summary>
    /// <param name="isDemo">With the invented firm; otherwise empty, before its first run.</param>
    /// <param name="clock">Clock of the host; the real one when null.</param>
    /// <param name="settings">Further settings, such as those of the mail server.</param>
    /// <param name="folder">Folder of an earlier host, to start it again; a new one when null.</param>
    public LogBookWebApp(bool isDemo = false, TimeProvider? clock = null, IReadOnlyDictionary<string, string>? settings = null, string? folder = null)
    {
        _isDemo = isDemo;
        _clock = clock;
        _settings = settings ?? new Dictionary<string, string>();
        Folder = folder ?? Directory.CreateTempSubdirectory("logbook-web-").FullName;
        ClientOptions.BaseAddress = new Uri("https://localhost");
        ClientOptions.AllowAutoRedirect = false;
    }

    /// <summary>Services of a test beside those of the host.</summary>
    public Action<IServiceCollection> MoreServices { get; init; } = _ => { };

    /// <summary>Folder with database, keys and photos.</summary>
    public string Folder { get; }

    /// <summary>Whether the folder stays when the host is disposed, to start another host on it.</summary>
    public bool KeepsFolder { get; set; }

    /// <summary>Name of the firm that <see cref="AddFirmAsync"/> makes.</summary>
    public static string FirmName => "Quernwath Cooling Water Services";

    /// <summary>Makes the firm, as the first run does.</summary>
    public async Task AddFirmAsync()
    {
        await using var scope = Services.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<FirmMaker>().NameAsync(FirmName, isDemo: false, clockFrom: null);
    }

    /// <summary>Adds an account with <see cref="Password"/>.</summary>
    /// <returns>Its key.</returns>
    public async Task<int> AddUserAsync(string email, PersonRole role, string? customer = null, string? person = null, Language language = Language.English)
    {
        await using var scope = Services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<LogBookUser>>();
        var customerId = customer is null ? (int?)null : await scope.ServiceProvider.GetRequiredService<LogBookStore>().ReadAsync(
            Viewer.System("test"), db => db.Customers.Where(row => row.Code == customer).Select(row => (int?)row.Id).SingleAsync());
        var user = new LogBookUser { UserName = email, Email = email, EmailConfirmed = true, PersonCode = person, CustomerId = customerId, Language = language };
        Assert.Empty((await users.CreateAsync(user, Password)).Errors);
        Assert.Empty((await users.AddToRoleAsync(user, RoleNames.Of(role))).Errors);
        return user.Id;
    }

    /// <summary>A client that is signed in.</summary>
    public async Task<HttpClient> SignedInAsync(string email, string password = Password)
    {
        var client = CreateClient();
        using var answer = await PostFormAsync(client, "/account/sign-in", "sign-in", new() { ["Given.Email"] = email, ["Given.Password"] = password });
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return client;
    }

    /// <summary>Loads a page and posts one of its forms with the form's own hidden fields.</summary>
    public static async Task<HttpResponseMessage> PostFormAsync(HttpClient client, string path, string handler, Dictionary<string, string> fields)
    {
        var page = await client.GetStringAsync(path);
        var form = Forms().Matches(page).Select(match => match.Value).First(text => text.Contains($"value=\"{handler}\"", StringComparison.Ordinal));
        foreach (Match hidden in HiddenFields().Matches(form))
        {
            fields.TryAdd(hidden.Groups["name"].Value, WebUtility.HtmlDecode(hidden.Groups["value"].Value));
        }

        using var content = new FormUrlEncodedContent(fields);
        return await client.PostAsync(path, content);
    }

    /// <inheritdoc />
    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("database", Path.Combine(Folder, "logbook.db"));
        builder.UseSetting("demo", _isDemo ? "true" : "false");
        foreach (var (key, value) in _settings)
        {
            builder.UseSetting(key, value);
        }

        builder.ConfigureTestServices(services =>
        {
            if (_clock is not null)
            {
                services.AddSingleton(_clock);
            }

            MoreServices(services);
        });
    }

    /// <inheritdoc />
    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && !KeepsFolder && Directory.Exists(Folder))
        {
            SqliteConnection.ClearAllPools();
            Directory.Delete(Folder, recursive: true);
        }
    }

    [GeneratedRegex("<form.*?</form>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Forms();

    [GeneratedRegex("<input type=\"hidden\" name=\"(?<name>[^\"]+)\" value=\"(?<value>[^\"]*)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex HiddenFields();
}
