using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Web.Account;
using LogBook.Web.Hosting;
using LogBook.Web.Security;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Features.FirstRun;

/// <summary>Gives an empty installation its firm and first administrator.</summary>
public sealed class FirmMaker(LogBookStore store, UserManager<LogBookUser> users, FirmNames names, TimeProvider clock)
{
    private static readonly Viewer Maker = Viewer.System("first run");

    /// <summary>Makes both, or neither.</summary>
    /// <returns>What is to be corrected; empty when it is done.</returns>
    public async Task<IReadOnlyList<string>> MakeAsync(string firm, string email, string password, Language language, CancellationToken cancellationToken = default)
    {
        var user = new LogBookUser { UserName = email, Email = email, EmailConfirmed = true, Language = language, LockoutEnabled = true };
        var made = await users.CreateAsync(user, password);
        if (!made.Succeeded)
        {
            return AccountErrors.Say(made.Errors, language);
        }

        await users.AddToRoleAsync(user, RoleNames.Of(PersonRole.Administrator));
        await NameAsync(firm, isDemo: false, clockFrom: null, cancellationToken);
        return [];
    }

    /// <summary>Writes the firm's row.</summary>
    public async Task NameAsync(string firm, bool isDemo, DateTime? clockFrom, CancellationToken cancellationToken = default)
    {
        await store.WriteAsync(
            Maker,
            async db =>
            {
                var row = await db.Firm.AsTracking().SingleOrDefaultAsync(cancellationToken);
                if (row is null)
                {
                    row = new FirmRow { CreatedAt = Utc.Now(clock) };
                    db.Firm.Add(row);
                }

                row.Name = firm;
                row.IsDemo = isDemo;
                row.DemoClockFrom = clockFrom;
                row.FirstRunDone = true;
                db.Audit(new AuditEntry("firm named", "Firm", firm, New: firm));
            },
            cancellationToken);
        names.Set(firm);
    }
}
