using LogBook.Application.Data;
using LogBook.Application.Mail;
using LogBook.Application.Reviews;
using LogBook.Application.Tokens;
using LogBook.Application.Visits;
using LogBook.Web.Account;
using LogBook.Web.Api;
using LogBook.Web.Components;
using LogBook.Web.Features.FirstRun;
using LogBook.Web.Features.SetUp;
using LogBook.Web.Features.SetUp.People;
using LogBook.Web.Features.VisitForms;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.AspNetCore.Identity;
using MudBlazor.Services;

namespace LogBook.Web.Hosting;

/// <summary>What the host is made of.</summary>
public static class WebServices
{
    private const string TokenOrCookie = "token-or-cookie";

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

        // Each statement at "information" would bury what the console has to say, and write people's entries into logs.
        builder.Logging.AddFilter("Microsoft.EntityFrameworkCore", LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);

        var services = builder.Services;
        services.AddSingleton(settings);
        services.AddSingleton<FirmNames>();
        services.AddSingleton<HostConsole>();
        services.AddSingleton<HostStart>();
        services.AddSingleton<FirstRunCode>();
        services.AddScoped<FirmMaker>();
        AddClock(services, settings);
        services.AddLogBook(new LogBookOptions { Database = settings.Database });
        services.AddHostedService<AssessmentService>();
        services.AddHostedService<PhotoHandOver>();
        AddMail(services, builder.Configuration, settings);
        AddPages(services);
        AddSignIn(services, settings);
        AddApi(services, settings);
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
            services.AddSingleton<LogBook.Application.Demo.DemoImport>();
        services.AddScoped<DemoStart>();
        }
    }

    // The demo never sends: its people are invented, its mail is looked at in the folder.
    private static void AddMail(IServiceCollection services, ConfigurationManager configuration, HostSettings settings) => services.AddLogBookMail(
        mail =>
        {
            configuration.GetSection("Mail").Bind(mail);
            if (settings.IsDemo)
            {
                mail.Host = string.Empty;
                mail.Folder = settings.MailFolder;
            }
            else if (mail is { Host.Length: 0, Folder.Length: 0 })
            {
                mail.Folder = settings.MailFolder;
            }
        },
        runs: true);

    private static void AddPages(IServiceCollection services)
    {
        services.AddRazorComponents().AddInteractiveServerComponents(circuit =>
        {
            circuit.DisconnectedCircuitMaxRetained = 200;
            circuit.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(5);
        });
        services.AddMudServices();
        services.AddScoped<Wording>();
        services.AddScoped<VisitDesk>();
        services.AddScoped<VisitPhotos>();
        services.AddSingleton<SetUpDesk>();
        services.AddSingleton<LogBook.Web.Features.RecordPacks.RecordDesk>();
        services.AddSingleton<AccountKeeper>();
        services.AddHttpContextAccessor();
        services.AddCascadingAuthenticationState();
    }

    private static void AddApi(IServiceCollection services, HostSettings settings)
    {
        services.AddSingleton<TokenStore>();
        services.AddSingleton<TabletKeyStore>();
        services.AddSingleton<LogBook.Web.Features.Rescue.RescueDesk>();
        services.AddSingleton(new PhotoFolder(settings.PhotoFolder));
        services.AddSingleton<RoundQuery>();
        services.AddSingleton<VisitStandingQuery>();
        services.AddProblemDetails();
        services.AddOpenApi("v1", openApi => openApi.AddDocumentTransformer((document, _, _) =>
        {
            document.Info.Title = "LogBook";
            document.Info.Version = "1";
            return Task.CompletedTask;
        }));
    }

    private static void AddSignIn(IServiceCollection services, HostSettings settings)
    {
        services.AddDataProtection().SetApplicationName("LogBook").PersistKeysToFileSystem(new DirectoryInfo(settings.KeyFolder));
        services.AddSingleton<ViewerReader>();
        services.AddScoped<ViewerProvider>();
        services.AddScoped<AuthenticationStateProvider, CircuitRevalidation>();
        services.AddAuthorization(options =>
        {
            Policies.Add(options);
            ApiPolicies.Add(options);
        });
        services.AddAuthentication(options =>
            {
                options.DefaultScheme = TokenOrCookie;
                options.DefaultSignInScheme = IdentityConstants.ExternalScheme;
            })
            .AddScheme<AuthenticationSchemeOptions, TokenHandler>(TokenHandler.SchemeName, null)
            .AddPolicyScheme(TokenOrCookie, null, options => options.ForwardDefaultSelector = static context =>
                context.Request.Path.StartsWithSegments(ApiEndpoints.Base, StringComparison.Ordinal) && TokenHandler.IsSent(context.Request)
                    ? TokenHandler.SchemeName
                    : IdentityConstants.ApplicationScheme)
            .AddIdentityCookies();
        services.AddLogBookAccounts()
            .AddSignInManager<LogBookSignIn>()
            .AddClaimsPrincipalFactory<LogBookClaims>()
            .AddDefaultTokenProviders();

        services.Configure<SecurityStampValidatorOptions>(stamp =>
        {
            stamp.ValidationInterval = TimeSpan.FromSeconds(30);
            stamp.TimeProvider = settings.IsDemo ? TimeProvider.System : null;
        });
        services.ConfigureApplicationCookie(cookie => SignInCookie.Configure(cookie, settings));
        services.AddAntiforgery(form =>
        {
            form.Cookie.Name = "logbook-form";
            form.Cookie.SameSite = SameSiteMode.Strict;
            form.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        });
    }
}
