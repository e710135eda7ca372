using System.CommandLine;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using LogBook.Domain.Simulation;

namespace LogBook.Cli;

/// <summary>The verb that runs a programme ahead; it reads a set-up document and touches no database.</summary>
internal static class Simulate
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower) },
    };

    /// <summary>The verb.</summary>
    public static Command Command()
    {
        var file = new Argument<FileInfo>("file") { Description = "Document of the exchange format with the set-up." }.AcceptExistingOnly();
        var site = new Option<string?>("--site") { Description = "Code of the site, where the document has several." };
        var system = new Option<string?>("--system") { Description = "Code of the system, where the site has several." };
        var from = new Option<DateOnly?>("--from") { Description = "First day (YYYY-MM-DD, local); the first day of the plan's week 1 when absent.", HelpName = "day" };
        var weeks = new Option<int>("--weeks") { Description = "Weeks to run.", DefaultValueFactory = _ => 4 };
        var load = new Option<double>("--load") { Description = "Mean load in percent of the full load.", DefaultValueFactory = _ => 100 * LookAhead.UsualLoadShare };
        var format = new Option<string>("--format") { Description = "Lines for people, or JSON with every hour and event.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("json", "text");
        weeks.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 1 or > 52)
            {
                result.AddError("--weeks: 1 to 52 is expected.");
            }
        });
        load.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<double>() is not (> 0 and <= 100))
            {
                result.AddError("--load: more than 0 and at most 100 is expected.");
            }
        });
        var command = new Command("simulate", "Run a programme four weeks ahead: doses, holds, bleeds and what they do to the water.") { file, site, system, from, weeks, load, format };
        command.SetAction(async (parsed, cancellationToken) =>
        {
            var read = ExchangeReader.ReadAndCheck(await File.ReadAllTextAsync(parsed.GetRequiredValue(file).FullName, cancellationToken), FirmSetUp.Empty);
            if (read.Document is not { } document)
            {
                return Session.Refuse(read.Issues);
            }

            if (Chosen(document, parsed.GetValue(site), parsed.GetValue(system), out var index) is { } refused)
            {
                return Session.Refuse([refused]);
            }

            var firm = new FirmSetUp(document);
            var chosen = document.Systems[index];
            var last = chosen.Programmes.Select((programme, i) => (programme, i)).MaxBy(p => p.programme.From);
            var standing = PartsOnDay.Of(chosen, parsed.GetValue(from) ?? last.programme.From);
            var (result, missing) = LookAhead.Run(firm, firm.Sites[chosen.Site], standing, last.programme, parsed.GetValue(from), parsed.GetValue(weeks), parsed.GetValue(load) / 100);
            if (result is null)
            {
                return Session.Refuse(missing.Select(issue => issue with { Path = PathOf(index, last.i, issue.Path) }));
            }

            Console.WriteLine(parsed.GetValue(format) == "json"
                ? JsonSerializer.Serialize(result, Options)
                : string.Join('\n', SimulateText.Of(result, chosen, TimeZoneInfo.FindSystemTimeZoneById(firm.Sites[chosen.Site].TimeZone))));
            return 0;
        });
        return command;
    }

    private static Issue? Chosen(ExchangeDocument document, string? site, string? system, out int index)
    {
        static bool Same(string? asked, string code) => asked is null || asked.Equals(code, StringComparison.OrdinalIgnoreCase);
        var fitting = document.Systems
            .Select((s, i) => (System: s, Index: i))
            .Where(pair => Same(site, pair.System.Site) && Same(system, pair.System.Code) && (system is not null || pair.System.Kind == SystemKind.OpenRecirculating))
            .ToList();
        index = fitting.Count == 1 ? fitting[0].Index : -1;
        return fitting.Count switch
        {
            0 => new Issue("systems", "unknown", "there is no such system in the document."),
            1 when fitting[0].System.Programmes.Count == 0 => new Issue($"systems[{index}].programmes", "required", "the system has no programme."),
            1 => null,
            _ => new Issue("systems", "several", string.Create(CultureInfo.InvariantCulture, $"{fitting.Count} systems fit; name one by --site and --system.")),
        };
    }

    private static string PathOf(int system, int programme, string path) => path is "setPointUsPerCm" or "makeUp.conductivityUsPerCm"
        ? string.Create(CultureInfo.InvariantCulture, $"systems[{system}].programmes[{programme}].{path}")
        : string.Create(CultureInfo.InvariantCulture, $"systems[{system}].{path}");
}
