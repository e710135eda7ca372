using LogBook.Web.Account;
using LogBook.Web.Components;
using LogBook.Web.Features.History;
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
        app.UseExceptionHandler("/account/fault", createScopeForErrors: true);
        app.UseHsts();
        app.UseStatusCodePagesWithReExecute("/account/not-here", createScopeForStatusCodePages: true);
        app.UseRouting();
        app.UseRateLimiter();
        app.UseMiddleware<FirstRunGate>();
        app.UseAuthentication();
        app.UseAuthorization();
        app.UseAntiforgery();

        app.MapStaticAssets().AllowAnonymous();
        app.MapAccountActs();
        app.MapHistory();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
    }
}
