namespace LogBook.Web.Hosting;

/// <summary>How this host was asked to run.</summary>
/// <param name="IsDemo">Shows the invented firm.</param>
/// <param name="Database">SQLite file or connection, as in <see cref="LogBook.Application.Data.LogBookOptions.Database"/>.</param>
/// <param name="DataFolder">Folder for keys, photos, backups and, in the demo, mail.</param>
/// <param name="PublicAddress">Address that links in mails begin with; null when it was not given.</param>
public sealed record HostSettings(bool IsDemo, string Database, string DataFolder, Uri? PublicAddress)
{
    /// <summary>Where the host listens unless told otherwise: this machine only.</summary>
    public const string DefaultAddress = "http://127.0.0.1:5080";

    /// <summary>Where mail waits to be looked at in the demo.</summary>
    public string MailFolder => Path.Combine(DataFolder, "mail");

    /// <summary>Where pictures are kept.</summary>
    public string PhotoFolder => Path.Combine(DataFolder, "photos");

    /// <summary>Keys of sign-in cookies and stored passcodes.</summary>
    public string KeyFolder => Path.Combine(DataFolder, "keys");

    /// <summary>Reads `--demo`, `--database`, `--data` and `--public-address`.</summary>
    public static HostSettings From(IConfiguration configuration)
    {
        var isDemo = configuration.GetValue("demo", false);
        var given = configuration["database"];
        var isFile = given is null || !given.Contains('=', StringComparison.Ordinal);
        var folder = configuration["data"]
            ?? (given is not null && isFile ? Path.GetDirectoryName(Path.GetFullPath(given))! : Path.GetFullPath(isDemo ? "data/demo" : "data"));
        var database = given ?? Path.Combine(folder, "logbook.db");
        return new(
            isDemo,
            isFile ? Path.GetFullPath(database) : database,
            Path.GetFullPath(folder),
            Uri.TryCreate(configuration["public-address"], UriKind.Absolute, out var address) ? address : null);
    }
}
