using System.Text.Json;
using System.Text.Json.Serialization;

namespace LogBook.Application.Demo;

/// <summary>Reads the files of db/demo, which are built into this library.</summary>
internal static class DemoFiles
{
    private const string Prefix = "LogBook.Demo.";

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        // A misspelt field in a story would otherwise be lost in silence.
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        NumberHandling = JsonNumberHandling.Strict,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    public static DemoFirmFile Firm() => Read<DemoFirmFile>(Prefix + "firm.json");

    /// <summary>All sites, in the order of their codes.</summary>
    public static IReadOnlyList<DemoSiteFile> Sites() =>
    [
        .. typeof(DemoFiles).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix + "sites.", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(Read<DemoSiteFile>),
    ];

    private static T Read<T>(string name)
    {
        using var stream = typeof(DemoFiles).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not built in.");
        return JsonSerializer.Deserialize<T>(stream, Options) ?? throw new InvalidOperationException($"{name} is empty.");
    }
}
