using System.Diagnostics;
using LogBook.Application.Data;
using LogBook.Application.Demo;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Outcomes;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Hosting;

/// <summary>Readies the demo: makes the invented firm once, sets the clock to just after its last visit, names the accounts.</summary>
public sealed class DemoStart(
    SetUpStore setUp,
    LogBookStore store,
    DemoImport demo,
    AssessmentKeeper assessments,
    FindingsQuery findings,
    UserManager<LogBookUser> users,
    DemoClock clock,
    HostSettings settings,
    HostConsole console)
{
    private static readonly Viewer Starter = Viewer.System("demo");

    /// <summary>Readies it.</summary>
    /// <exception cref="StartRefusedException">The file holds another firm.</exception>
    public async Task RunAsync(CancellationToken cancellationToken)
    {
        if (await demo.HoldsAnotherFirmAsync(cancellationToken))
        {
            throw new StartRefusedException($"The database {settings.Database} holds another firm. The demo is kept in a file of its own: leave --database away or name another file.");
        }

        if (await setUp.FirmRowAsync(Starter, cancellationToken) is null)
        {
            await MakeAsync(cancellationToken);
        }
        else if (await findings.LastMomentAsync(Starter, cancellationToken) is { } last && last >= DemoImport.FirstMoment)
        {
            // Visits entered in the demo before stay in its past.
            clock.Start(last.AddMinutes(1));
        }

        foreach (var account in DemoAccounts.All)
        {
            await AddMissingAsync(account, cancellationToken);
        }

        console.Say("Demo with an invented firm; nothing in it is real. Accounts:");
        foreach (var account in DemoAccounts.All)
        {
            console.Say($"  {RoleNames.Of(account.Role),-14} {account.Email,-30} {account.Password}");
        }

        console.Say($"Its clock starts at {clock.GetUtcNow():yyyy-MM-dd HH:mm} UTC, after the last thing that happened in it. Mail is kept in {settings.MailFolder}.");
    }

    private async Task MakeAsync(CancellationToken cancellationToken)
    {
        var since = Stopwatch.GetTimestamp();
        console.Say("Making the demo firm, once: eighteen months of visits. This takes half a minute, more on a busy machine.");
        console.Say("  1 of 2: simulating plants, controllers and visits …");
        var document = await Task.Run(() => DemoFirm.Create().Document, cancellationToken);
        console.Say($"  2 of 2: importing {document.Visits.Count} visits and working out what they mean …");
        var outcome = await demo.RunAsync(document, cancellationToken);
        if (!outcome.Written)
        {
            throw new StartRefusedException("The demo firm was refused: " + string.Join("; ", outcome.Issues.Where(issue => issue.Blocks).Take(5).Select(Line)));
        }

        await assessments.AssessDueAsync(Starter, cancellationToken: cancellationToken);
        console.Say($"  Made in {Stopwatch.GetElapsedTime(since).TotalSeconds:0} s.");
    }

    private async Task AddMissingAsync(DemoAccount account, CancellationToken cancellationToken)
    {
        if (await users.FindByEmailAsync(account.Email) is not null)
        {
            return;
        }

        var firm = await setUp.FirmAsync(Starter, cancellationToken: cancellationToken);
        var user = new LogBookUser
        {
            UserName = account.Email,
            Email = account.Email,
            EmailConfirmed = true,
            PersonCode = firm.People.Values.FirstOrDefault(person => string.Equals(person.Email, account.Email, StringComparison.OrdinalIgnoreCase))?.Code,
            CustomerId = account.CustomerOfSite is { } site ? await OwnerAsync(site, cancellationToken) : null,
        };
        var made = await users.CreateAsync(user, account.Password);
        if (made.Succeeded)
        {
            made = await users.AddToRoleAsync(user, RoleNames.Of(account.Role));
        }

        if (!made.Succeeded)
        {
            throw new StartRefusedException($"The demo account {account.Email} was refused: {string.Join("; ", made.Errors.Select(error => error.Description))}");
        }
    }

    private Task<int?> OwnerAsync(string site, CancellationToken cancellationToken) => store.ReadAsync(
        Starter, db => db.Sites.Where(row => row.CodeKey == CodeKeys.Of(site)).Select(row => (int?)row.CustomerId).SingleOrDefaultAsync(cancellationToken), cancellationToken);

    private static string Line(Issue issue) => issue.Path + ": " + issue.Message;
}
