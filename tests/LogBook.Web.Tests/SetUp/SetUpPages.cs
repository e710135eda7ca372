using System.Security.Claims;
using Bunit;
using Bunit.TestDoubles;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Account;
using LogBook.Web.Components;
using LogBook.Web.Features.SetUp;
using LogBook.Web.Features.SetUp.People;
using LogBook.Web.Tests.Hosting;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using SetUpTexts = LogBook.Web.Features.SetUp.SetUpTexts;

namespace LogBook.Web.Tests.SetUp;

/// <summary>Renders set-up pages for one account over the services of a real host.</summary>
public sealed class SetUpPages : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);
    private readonly BunitContext _pages = new();

    private SetUpPages(LogBookWebApp app) => App = app;

    public LogBookWebApp App { get; }

    public SetUpStore Store => App.Services.GetRequiredService<SetUpStore>();

    public NavigationManager Navigation => _pages.Services.GetRequiredService<NavigationManager>();

    public Viewer Viewer { get; private set; } = default!;

    /// <summary>An empty firm with one account.</summary>
    public static async Task<SetUpPages> ForAsync(PersonRole role = PersonRole.Administrator, Language language = Language.English)
    {
        var app = new LogBookWebApp();
        await app.AddFirmAsync();
        var pages = new SetUpPages(app);
        await pages.SignInAsync(await app.AddUserAsync("j.snell@quernwath.example", role, language: language), role, language);
        return pages;
    }

    /// <summary>A page once it has read what it shows.</summary>
    public IRenderedComponent<T> Open<T>(string address, params (string Name, object Value)[] parameters)
        where T : IComponent
    {
        Navigation.NavigateTo(address);
        var page = _pages.Render<T>(builder =>
        {
            foreach (var (name, value) in parameters)
            {
                builder.TryAdd(name, value);
            }
        });
        page.WaitForState(() => page.FindAll(".loading").Count == 0, Patience);
        return page;
    }

    /// <summary>The form of a new record.</summary>
    public IRenderedComponent<SetUpRecordPage> New(SetUpKind kind) => Open<SetUpRecordPage>(SetUpLinks.New(kind), ("List", SetUpList.Of(kind).Slug));

    /// <summary>The form of a record.</summary>
    public IRenderedComponent<SetUpRecordPage> Record(SetUpKind kind, string code, string? site = null) =>
        Open<SetUpRecordPage>(SetUpLinks.Record(kind, code, site), ("List", SetUpList.Of(kind).Slug));

    /// <summary>Fills boxes by the end of their identifier and saves.</summary>
    public static void Fill<T>(IRenderedComponent<T> page, params (string Field, string Text)[] texts)
        where T : IComponent
    {
        foreach (var (field, text) in texts)
        {
            page.Find("#f-" + field).Change(text);
        }
    }

    /// <summary>Adds a row to a list of the form.</summary>
    public static void Add<T>(IRenderedComponent<T> page, string list)
        where T : IComponent => page.Find($"#f-{list} > button").Click();

    /// <summary>Presses Save and waits for the answer.</summary>
    public static void Save<T>(IRenderedComponent<T> page)
        where T : IComponent
    {
        page.Find("form.set-up-form").Submit();
        page.WaitForState(() => page.FindAll("#form-said, #form-problems, #form-meanwhile").Count > 0, Patience);
    }

    /// <summary>Saves what must be accepted.</summary>
    public static void SaveWell<T>(IRenderedComponent<T> page)
        where T : IComponent
    {
        page.Find("form.set-up-form").Submit();
        page.WaitForState(() => page.FindAll("#form-said, #form-problems, #form-meanwhile").Count > 0, Patience);
        Assert.Empty(page.FindAll("#form-problems li").Select(item => item.TextContent.Trim()));
        Assert.Equal(SetUpTexts.Saved.En, page.Find("#form-said").TextContent);
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await _pages.DisposeAsync();
        await App.DisposeAsync();
    }

    private async Task SignInAsync(int id, PersonRole role, Language language)
    {
        var services = _pages.Services;
        services.AddSingleton(Store);
        services.AddSingleton(App.Services.GetRequiredService<SettingStore>());
        services.AddSingleton(App.Services.GetRequiredService<PhraseStore>());
        services.AddSingleton(App.Services.GetRequiredService<SetUpDesk>());
        services.AddSingleton(App.Services.GetRequiredService<LogBook.Application.RecordPacks.RecordPackReader>());
        services.AddSingleton(App.Services.GetRequiredService<LogBook.Application.RecordPacks.LegalHoldStore>());
        services.AddSingleton(App.Services.GetRequiredService<LogBook.Web.Features.RecordPacks.RecordDesk>());
        services.AddSingleton(App.Services.GetRequiredService<LogBook.Application.MoveIn.MoveInDesk>());
        services.AddSingleton(App.Services.GetRequiredService<LogBook.Application.MoveIn.MappingStore>());
        services.AddSingleton(App.Services.GetRequiredService<LogBook.Application.Rescue.RescuedDraftStore>());
        services.AddSingleton(App.Services.GetRequiredService<LogBook.Web.Features.Rescue.RescueDesk>());
        services.AddSingleton(App.Services.GetRequiredService<AccountKeeper>());
        services.AddSingleton(App.Services.GetRequiredService<ViewerReader>());
        services.AddSingleton(App.Services.GetRequiredService<TimeProvider>());
        services.AddScoped<ViewerProvider>();
        services.AddScoped<Wording>();
        _pages.JSInterop.Mode = JSRuntimeMode.Loose;
        var authorization = _pages.AddAuthorization();
        authorization.SetAuthorized("j.snell@quernwath.example");
        authorization.SetRoles(RoleNames.Of(role));
        authorization.SetClaims(new Claim(ClaimTypes.NameIdentifier, id.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        services.GetRequiredService<Wording>().Speak(language);
        Viewer = await services.GetRequiredService<ViewerProvider>().GetAsync();
    }
}
