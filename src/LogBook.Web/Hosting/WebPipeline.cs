using LogBook.Web.Account;
using LogBook.Web.Api;
using LogBook.Web.Components;
using LogBook.Web.Features.History;
using LogBook.Web.Features.Settings;
using LogBook.Web.Features.Shelf;
using LogBook.Web.Features.RecordPacks;
using LogBook.Web.Features.SetUp.MoveIn;
using LogBook.Web.Security;

namespace LogBook.Web.Hosting;

/// <summary>In which order a request meets what.</summary>
public static class WebPipeline
{
    /// <summary>Sets the pipeline and the addresses.</summary>
    public static void UseLogBookWeb(this WebApplication app)
    {
        app.UseForwardedHeaders();
        app.UseSecurityHeaders();
        app.UseHsts();
        app.UseWhen(IsForPrograms, programs => programs.UseExceptionHandler().UseStatusCodePages());
        app.UseWhen(context => !IsForPrograms(context), people => people
            .UseExceptionHandler("/account/fault", createScopeForErrors: true)
            .UseStatusCodePagesWithReExecute("/account/not-here", createScopeForStatusCodePages: true));
        app.UseCaptureParts();
        app.UseRouting();
        app.UseRateLimiter();
        app.UseMiddleware<FirstRunGate>();
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseAntiforgery();

        app.MapStaticAssets().AllowAnonymous();
        app.MapAccountActs();
        app.MapHistory();
        app.MapSettings();
        app.MapShelf();
        app.MapRecords();
        app.MapMoveIn();
        app.MapLogBookApi();
        app.MapTablets();
        app.MapHealth();
        app.MapCapture();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
    }

    // Programs get problem details, people a page.
    private static bool IsForPrograms(HttpContext context) => context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal);
}
