using System.Security.Claims;
using Bunit;
using Bunit.TestDoubles;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Reviews;
using LogBook.Application.Search;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Account;
using LogBook.Web.Components;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Readers;

/// <summary>Renders pages for one account over a real database.</summary>
public sealed class ReadPages : IAsyncDisposable
{
    private readonly BunitContext _pages = new();

    private ReadPages(ReadingFirm firm) => Firm = firm;

    public ReadingFirm Firm { get; }

    public IServiceProvider Services => _pages.Services;

    public NavigationManager Navigation => _pages.Services.GetRequiredService<NavigationManager>();

    public static async Task<ReadPages> ForAsync(PersonRole role, Language language = Language.English, Func<ReadingFirm, Task<int?>>? fill = null)
    {
        var firm = await ReadingFirm.CreateAsync();
        var customer = fill is null ? null : await fill(firm);
        var pages = new ReadPages(firm);
        await pages.SignInAsync(role, language, customer);
        return pages;
    }

    public IRenderedComponent<T> Render<T>(string address, params (string Name, object Value)[] parameters)
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
        page.WaitForState(() => page.FindAll(".loading").Count == 0, TimeSpan.FromSeconds(20));
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        await _pages.DisposeAsync();
        await Firm.DisposeAsync();
    }

    private async Task SignInAsync(PersonRole role, Language language, int? customer)
    {
        await Firm.AddAsync(new IdentityRole<int>(RoleNames.Of(role)) { Id = 1, NormalizedName = RoleNames.Of(role).ToUpperInvariant() });
        await Firm.AddAsync(new LogBookUser
        {
            Id = 1, UserName = "r.yaffle@quernwath.example", NormalizedUserName = "R.YAFFLE@QUERNWATH.EXAMPLE", PersonCode = "RYA", Language = language,
            CustomerId = role is PersonRole.Customer or PersonRole.SiteStaff ? customer : null,
        });
        await Firm.AddAsync(new IdentityUserRole<int> { UserId = 1, RoleId = 1 });

        var services = _pages.Services;
        services.AddLogging();
        services.AddLogBook(Firm.Options);
        services.AddSingleton(Firm.Store);
        services.AddSingleton(new PhotoFolder(Path.Combine(Path.GetDirectoryName(Firm.Options.Database)!, "photos")));
        services.AddSingleton<TimeProvider>(Firm.Clock);
        services.AddOptions<IdentityOptions>();
        services.AddSingleton<ViewerReader>();
        services.AddScoped<ViewerProvider>();
        services.AddScoped<Wording>();
        _pages.JSInterop.Mode = JSRuntimeMode.Loose;
        _pages.JSInterop.SetupModule("./lib/chart.js").Mode = JSRuntimeMode.Loose;
        var authorization = _pages.AddAuthorization();
        authorization.SetAuthorized("r.yaffle@quernwath.example");
        authorization.SetRoles(RoleNames.Of(role));
        authorization.SetClaims(new Claim(ClaimTypes.NameIdentifier, "1"));
        services.GetRequiredService<Wording>().Speak(language);
    }
}
