using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Identity;

namespace LogBook.Web.Hosting;

/// <summary>What happens before the first request: schema, roles, the demo firm or the first-run code.</summary>
public sealed class HostStart(
    LogBookStartUp database, SetUpStore setUp, IServiceScopeFactory scopes, HostSettings settings, FirmNames firm, FirstRunCode code, HostConsole console, DemoClock? demoClock = null)
{
    private static readonly Viewer Starter = Viewer.System("start");

    /// <summary>Readies the installation.</summary>
    public async Task RunAsync(CancellationToken cancellationToken = default)
    {
        // Before anything asks what day it is.
        demoClock?.Start(LogBook.Application.Demo.DemoImport.FirstMoment);
        await database.RunAsync(cancellationToken);
        await using var scope = scopes.CreateAsyncScope();
        await RoleNames.AddMissingAsync(scope.ServiceProvider.GetRequiredService<RoleManager<IdentityRole<int>>>());
        if (settings.IsDemo)
        {
            await scope.ServiceProvider.GetRequiredService<DemoStart>().RunAsync(cancellationToken);
        }

        var row = await setUp.FirmRowAsync(Starter, cancellationToken);
        if (row is { IsDemo: true } && !settings.IsDemo)
        {
            throw new StartRefusedException($"The database {settings.Database} holds the demo firm. Start it with --demo, or name another file.");
        }

        if (row is { FirstRunDone: true })
        {
            firm.Set(row.Name);
            return;
        }

        console.Say("This installation has no firm yet. Open the address below with this path to name it and its first administrator:");
        console.Say($"  {FirstRunGate.Path}?code={code.Text}");
    }
}
