using LogBook.Domain.Sites;

namespace LogBook.Web.Hosting;

/// <summary>The accounts of the demo: one for each kind of person.</summary>
public static class DemoAccounts
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<DemoAccount> All { get; } =
    [
        new("r.yaffle@quernwath.example", "basin before breakfast", PersonRole.Technician),
        new("i.wendle@quernwath.example", "seven towers by noon", PersonRole.Supervisor),
        new("j.snell@quernwath.example", "ledger lamp and teapot", PersonRole.Administrator),
        new("estates@yaffleford.example", "quiet roof in autumn", PersonRole.Customer, "YAF-1"),
    ];
}
