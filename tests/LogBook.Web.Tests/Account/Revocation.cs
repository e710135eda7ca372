using LogBook.Application.Data;
using LogBook.Web.Tests.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace LogBook.Web.Tests.Account;

internal static class Revocation
{
    /// <summary>Disables an account as an administrator does, without touching its stamp.</summary>
    public static async Task DisableAsync(LogBookWebApp app, string email)
    {
        await using var scope = app.Services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<LogBookDb>();
        var now = app.Services.GetRequiredService<TimeProvider>().GetUtcNow().UtcDateTime;
        Assert.Equal(1, await db.Users.Where(user => user.Email == email).ExecuteUpdateAsync(set => set.SetProperty(user => user.DisabledAt, now)));
    }
}
