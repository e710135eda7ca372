using LogBook.Application.Data;
using LogBook.Web.Account;
using LogBook.Web.Components;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.AspNetCore.Identity;
using MudBlazor.Services;

namespace LogBook.Web.Hosting;

/// <summary>What the host is made of.</summary>
public static class WebServices
{
    /// <summary>Adds pages, sign-in, API and the work behind them.</summary>
    public static void AddLogBookWeb(this WebApplicationBuilder builder, HostSettings settings)
    {
        Directory.CreateDirectory(settings.DataFolder);
        if (builder.Configuration[WebHostDefaults.ServerUrlsKey] is null && builder.Configuration["HTTP_PORTS"] is null && builder.Configuration["HTTPS_PORTS"] is null)
        {
            builder.WebHost.UseUrls(HostSettings.DefaultAddress);
        }

        // Style sheets of the parts lie beside their projects until published; without this only Development finds them.
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 32 * 1024 * 1024;
        });

        var services = builder.Services;
        services.AddSingleton(settings);
        services.AddSingleton<FirmNames>();
        services.AddSingleton<HostConsole>();
        services.AddSingleton<HostStart>();
        services.AddScoped<DemoStart>();
        services.AddSingleton<FirstRunCode>();
        AddClock(services, settings);
        services.AddLogBook(new LogBookOptions { Database = settings.Database });
        AddPages(services);
        AddSignIn(services, settings);
        services.AddLimits();
        services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(20));
        services.Configure<ForwardedHeadersOptions>(options => options.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto);
        services.AddHsts(hsts => hsts.MaxAge = TimeSpan.FromDays(365));
    }

    private static void AddClock(IServiceCollection services, HostSettings settings)
    {
        if (settings.IsDemo)
        {
            var clock = new DemoClock(TimeProvider.System);
            services.AddSingleton(clock);
            services.AddSingleton<TimeProvider>(clock);
        }
    }

    private static void AddPages(IServiceCollection services)
    {
        services.AddRazorComponents().AddInteractiveServerComponents(circuit =>
        {
            circuit.DisconnectedCircuitMaxRetained = 200;
            circuit.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(5);
        });
        services.AddMudServices();
        services.AddScoped<Wording>();
        services.AddHttpContextAccessor();
        services.AddCascadingAuthenticationState();
    }

    private static void AddSignIn(IServiceCollection services, HostSettings settings)
    {
        services.AddDataProtection().SetApplicationName("LogBook").PersistKeysToFileSystem(new DirectoryInfo(settings.KeyFolder));
        services.AddSingleton<ViewerReader>();
        services.AddScoped<ViewerProvider>();
        services.AddScoped<AuthenticationStateProvider, CircuitRevalidation>();
        services.AddAuthorization(Policies.Add);
        services.AddAuthentication(options =>
        {
            options.DefaultScheme = IdentityConstants.ApplicationScheme;
            options.DefaultSignInScheme = IdentityConstants.ExternalScheme;
        }).AddIdentityCookies();
        services.AddIdentityCore<LogBookUser>(identity =>
            {
                identity.User.RequireUniqueEmail = true;
                identity.Lockout.MaxFailedAccessAttempts = 5;
                identity.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(10);

                // Length, not composition (ASVS 5.0, 6.2.5).
                identity.Password.RequiredLength = 12;
                identity.Password.RequireDigit = false;
                identity.Password.RequireLowercase = false;
                identity.Password.RequireUppercase = false;
                identity.Password.RequireNonAlphanumeric = false;
                identity.Password.RequiredUniqueChars = 1;
            })
            .AddRoles<IdentityRole<int>>()
            .AddEntityFrameworkStores<LogBookDb>()
            .AddSignInManager<LogBookSignIn>()
            .AddClaimsPrincipalFactory<LogBookClaims>()
            .AddPasswordValidator<CommonPasswords>()
            .AddDefaultTokenProviders();

        // OWASP Password Storage: PBKDF2 with HMAC-SHA-512, 210,000 iterations or more.
        services.Configure<PasswordHasherOptions>(hasher => hasher.IterationCount = 220_000);
        services.Configure<SecurityStampValidatorOptions>(stamp => stamp.ValidationInterval = TimeSpan.FromSeconds(30));
        services.ConfigureApplicationCookie(cookie => SignInCookie.Configure(cookie, settings));
        services.AddAntiforgery(form =>
        {
            form.Cookie.Name = "logbook-form";
            form.Cookie.SameSite = SameSiteMode.Strict;
            form.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        });
    }
}
