using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using System.Text.Json;
using LogBook.Application.Audit;
using LogBook.Application.Backups;
using LogBook.Application.Data;
using LogBook.Application.Demo;
using LogBook.Application.Imports;
using LogBook.Application.RecordPacks;
using LogBook.Application.Reviews;
using LogBook.Application.Summaries;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Summaries;

namespace LogBook.Cli;

/// <summary>The verbs of the command; each opens the database, calls one feature and prints what came of it.</summary>
internal static class Commands
{
    private static readonly Option<string> Database = new("--database")
    {
        Description = "SQLite file, or a connection string (one with Host= is PostgreSQL).",
        DefaultValueFactory = _ => "logbook.db",
        Recursive = true,
    };

    private static readonly Option<string?> Site = new("--site") { Description = "Code of one site." };
    private static readonly Option<DateOnly?> AsOf = DayOption("--as-of", "Day at whose end the records are looked at (YYYY-MM-DD, UTC); the last moment in the data when absent.");

    /// <summary>Every verb.</summary>
    public static IEnumerable<Command> All() => [Import(), Export(), Findings(), Assess(), Demo(), Summary(), Records(), Verify(), Users.Command(), Backup(), Restore(), Simulate.Command()];

    /// <summary>A verb that works on an open database.</summary>
    internal static Command Verb(string name, string description, IEnumerable<Symbol> symbols, Func<Session, ParseResult, CancellationToken, Task<int>> act, Func<ParseResult, bool>? prepare = null)
    {
        var command = new Command(name, description) { Database };
        foreach (var symbol in symbols)
        {
            if (symbol is Option option)
            {
                command.Add(option);
            }
            else if (symbol is Argument argument)
            {
                command.Add(argument);
            }
        }

        command.SetAction(async (parsed, cancellationToken) =>
        {
            await using var session = await Session.OpenAsync(parsed.GetRequiredValue(Database), prepare?.Invoke(parsed) ?? true, cancellationToken);
            return await act(session, parsed, cancellationToken);
        });
        return command;
    }

    private static Command Import()
    {
        var file = new Argument<FileInfo>("file") { Description = "Document of the exchange format." }.AcceptExistingOnly();
        var partial = new Option<bool>("--partial") { Description = "Write the good visits and list the refused ones." };
        var update = new Option<bool>("--update") { Description = "Let set-up under an existing code change." };
        return Verb("import", "Bring a document in: all of it or nothing.", [file, partial, update], async (session, parsed, cancellationToken) =>
        {
            await using var json = parsed.GetRequiredValue(file).OpenRead();
            var outcome = await session.Get<ExchangeImport>().ImportAsync(
                Session.Self, json, parsed.GetValue(partial), parsed.GetValue(update), cancellationToken: cancellationToken);
            if (outcome.Written || outcome.Issues.Count == 0)
            {
                Console.WriteLine($"{outcome.SetUpRecords} set-up records, {outcome.Visits} visits written, {outcome.AlreadyKnown} visits known before.");
            }

            return outcome.Issues.Count > 0 ? Session.Refuse(outcome.Issues) : 0;
        });
    }

    private static Command Export()
    {
        var from = DayOption("--from", "First day of the visits (YYYY-MM-DD, UTC).");
        var to = DayOption("--to", "Last day of the visits (YYYY-MM-DD, UTC).");
        return Verb("export", "Write set-up, visits and findings as a canonical document.", [Site, from, to, AsOf], async (session, parsed, cancellationToken) =>
        {
            var document = await session.Get<ExchangeExport>().ExportAsync(
                Session.Self,
                parsed.GetValue(Site),
                parsed.GetValue(from)?.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc),
                EndOf(parsed.GetValue(to)),
                EndOf(parsed.GetValue(AsOf)),
                withFindings: true,
                cancellationToken);
            if (document is null)
            {
                Console.Error.WriteLine($"--site: there is no site '{parsed.GetValue(Site)}'.");
                return Session.Refused;
            }

            Console.WriteLine(ExchangeWriter.Write(document));
            return 0;
        });
    }

    private static Command Findings()
    {
        var format = new Option<string>("--format") { Description = "A document of the exchange format, or a line for each finding.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("json", "text");
        var language = LanguageOption();
        return Verb("findings", "List what the evidence shows.", [format, Site, AsOf, language], async (session, parsed, cancellationToken) =>
        {
            var query = session.Get<FindingsQuery>();
            var asOf = EndOf(parsed.GetValue(AsOf)) ?? await query.LastMomentAsync(Session.Self, cancellationToken);
            var findings = await query.ListAsync(Session.Self, parsed.GetValue(Site), asOf, parsed.GetValue(language), cancellationToken);
            if (parsed.GetValue(format) == "json")
            {
                var document = new ExchangeDocument { Format = "logbook-exchange", Version = 1, Findings = findings };
                Console.WriteLine(JsonSerializer.Serialize(document, ExchangeJson.Default.ExchangeDocument));
                return 0;
            }

            foreach (var finding in findings)
            {
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"{finding.FirstSeen:yyyy-MM-dd} {finding.Site}/{finding.System} {finding.Severity} {finding.State} {finding.Kind}: {finding.Text}"));
            }

            Console.WriteLine($"{findings.Count} findings, {findings.Count(f => f.State == FindingState.Open)} open.");
            return 0;
        });
    }

    private static Command Assess()
    {
        var all = new Option<bool>("--all") { Description = "Every system, not only those whose records have changed." };
        var replay = new Option<bool>("--replay") { Description = "Score the rules on the invented firm instead: its stories and their answers. No database is touched." };
        var seed = new Option<ulong?>("--seed") { Description = "With --replay: start value of the firm." };
        var seeds = new Option<int?>("--seeds") { Description = "With --replay: so many other firms, from start values 1, 2, 3 and so on." };
        var format = new Option<string>("--format") { Description = "With --replay: a table, or JSON.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("json", "text");
        seeds.Validators.Add(result => Require(result, result.GetValueOrDefault<int?>() is null or >= 1 and <= 1000, "--seeds: 1 to 1000 is expected."));
        return Verb("assess", "Work the stored findings and figures out anew.", [all, AsOf, replay, seed, seeds, format], async (session, parsed, cancellationToken) =>
        {
            if (parsed.GetValue(replay))
            {
                return Replay(parsed.GetValue(seed), parsed.GetValue(seeds), parsed.GetValue(format) == "json");
            }

            var keeper = session.Get<AssessmentKeeper>();
            var asOf = EndOf(parsed.GetValue(AsOf));
            var count = parsed.GetValue(all)
                ? await keeper.AssessAllAsync(Session.Self, asOf, cancellationToken)
                : await keeper.AssessDueAsync(Session.Self, asOf, cancellationToken);
            Console.WriteLine($"{count} systems assessed.");
            return 0;
        }, prepare: parsed => !parsed.GetValue(replay));
    }

    private static int Replay(ulong? seed, int? seeds, bool asJson)
    {
        if (seeds is not { } count)
        {
            var one = seed ?? DemoFirm.DefaultSeed;
            var report = ReplayScore.Of(DemoFirm.Create(one), one);
            Console.WriteLine(asJson ? DemoAnswersFile.Write(report) : string.Join('\n', ReplayText.Of(report)));
            return 0;
        }

        var reports = Enumerable.Range(1, count).Select(i => ReplayScore.Of(DemoFirm.Create((ulong)i), (ulong)i)).ToList();
        Console.WriteLine(asJson ? DemoAnswersFile.Write(reports) : string.Join('\n', ReplayText.Of(reports)));
        return 0;
    }

    private static Command Demo()
    {
        var seed = new Option<ulong?>("--seed") { Description = "Start value; the same one gives the same bytes." };
        var systems = new Option<int?>("--systems") { Description = "A larger firm with so many systems, without stories." };
        var years = new Option<double>("--years") { Description = "Years of visits of the larger firm.", DefaultValueFactory = _ => 1.5 };
        var output = new Option<FileInfo?>("--out") { Description = "Write the document to this file instead of the database." };
        systems.Validators.Add(result => Require(result, result.GetValueOrDefault<int?>() is null or >= 1, "--systems: at least 1 is expected."));
        years.Validators.Add(result => Require(result, result.GetValueOrDefault<double>() is > 0 and <= 50, "--years: more than 0 and at most 50 is expected."));
        return Verb("demo", "Write the invented firm into an empty database.", [seed, systems, years, output], async (session, parsed, cancellationToken) =>
        {
            var start = parsed.GetValue(seed) is { } given and not 0 ? given : DemoFirm.DefaultSeed;
            var firm = parsed.GetValue(systems) is null ? DemoFirm.Create(start) : null;
            var document = firm?.Document ?? DemoScale.Create(parsed.GetValue(systems)!.Value, parsed.GetValue(years), start);
            if (parsed.GetValue(output) is { } file)
            {
                await File.WriteAllTextAsync(file.FullName, ExchangeWriter.Write(document), cancellationToken);
                await WriteAnswersAsync(file.FullName, firm, start, cancellationToken);
                Console.WriteLine($"{document.Visits.Count} visits written to {file.Name}.");
                return 0;
            }

            var outcome = await session.Get<DemoImport>().RunAsync(document, cancellationToken);
            if (outcome.Issues.Count > 0)
            {
                return Session.Refuse(outcome.Issues);
            }

            var database = parsed.GetRequiredValue(Database);
            await WriteAnswersAsync(database.Contains('=', StringComparison.Ordinal) ? "demo" : database, firm, start, cancellationToken);
            Console.WriteLine($"{outcome.SetUpRecords} set-up records, {outcome.Visits} visits written.");
            return 0;
        }, prepare: parsed => parsed.GetValue(output) is null);
    }

    /// <summary>What is to be found in the firm stands beside it; a larger firm has no stories.</summary>
    private static async Task WriteAnswersAsync(string beside, DemoFirmResult? firm, ulong seed, CancellationToken cancellationToken)
    {
        if (firm is not null)
        {
            await File.WriteAllTextAsync(DemoAnswersFile.Beside(beside), DemoAnswersFile.Write(firm.Answers, seed), cancellationToken);
        }
    }

    private static Command Summary()
    {
        var visit = new Argument<Guid>("visit") { Description = "Identity of the visit." };
        var language = LanguageOption();
        var folder = new Option<DirectoryInfo>("--out") { Description = "Folder for the HTML and the plain text.", Required = true };
        return Verb("summary", "Write a visit summary as HTML and plain text.", [visit, language, folder], async (session, parsed, cancellationToken) =>
        {
            var id = parsed.GetRequiredValue(visit);
            await session.Get<AssessmentKeeper>().AssessDueAsync(Session.Self, await session.Get<FindingsQuery>().LastMomentAsync(Session.Self, cancellationToken), cancellationToken);
            if (await session.Get<SummaryReader>().FindAsync(Session.Self, id, parsed.GetValue(language) ?? Language.English, cancellationToken: cancellationToken) is not { } summary)
            {
                Console.Error.WriteLine($"visit: there is no visit {id}.");
                return Session.Refused;
            }

            var directory = parsed.GetRequiredValue(folder);
            directory.Create();
            await File.WriteAllTextAsync(Path.Combine(directory.FullName, $"{id}.html"), SummaryHtml.Render(summary), cancellationToken);
            await File.WriteAllTextAsync(Path.Combine(directory.FullName, $"{id}.txt"), SummaryPlainText.Render(summary), cancellationToken);
            Console.WriteLine(SummaryHeader.Subject(summary));
            return 0;
        });
    }

    private static Command Records()
    {
        var site = new Option<string>("--site") { Description = "Code of the site.", Required = true };
        var from = DayOption("--from", "First day (YYYY-MM-DD, in the site's zone); a year before the last when absent.");
        var to = DayOption("--to", "Last day (YYYY-MM-DD, in the site's zone); today when absent.");
        var folder = new Option<DirectoryInfo>("--out") { Description = "Folder for the file.", Required = true };
        var photos = PhotosOption();
        var language = LanguageOption();
        return Verb("records", "Write the record pack of a site: PDF, workbook, pictures and checksums in one zip.", [site, from, to, folder, photos, language], async (session, parsed, cancellationToken) =>
        {
            var reader = session.Get<RecordPackReader>();
            var code = parsed.GetRequiredValue(site);
            var preview = await reader.PreviewAsync(Session.Self, code, parsed.GetValue(from), parsed.GetValue(to), cancellationToken);
            if (preview is null || await reader.ReadAsync(Session.Self, code, preview.From, preview.To, cancellationToken) is not { } pack)
            {
                Console.Error.WriteLine(preview is null ? $"--site: there is no site '{code}'." : "--to: the last day is before the first.");
                return Session.Refused;
            }

            // A wrong folder would make every picture look lost.
            var pictures = parsed.GetValue(photos)?.FullName ?? session.Get<LogBookOptions>().PhotoFolderBeside;
            if (pack.Photos.Any(photo => photo.State == PackPhotoState.Included) && !Directory.Exists(pictures))
            {
                Console.Error.WriteLine(pictures is null ? "--photos: say where the server keeps pictures." : $"--photos: there is no folder '{pictures}'.");
                return Session.Refused;
            }

            var file = await new RecordPackMaker(new PhotoFolder(pictures ?? "")).WriteFileAsync(pack, parsed.GetValue(language) ?? Language.English, parsed.GetRequiredValue(folder), cancellationToken);
            Console.WriteLine($"{file.Name}: {file.Visits} visits, {file.Results} results, {file.Photos} pictures, {file.MissingPhotos} pictures missing.");
            return 0;
        });
    }

    private static Command Verify()
    {
        var photos = PhotosOption();
        return Verb("verify", "Check integrity, audit trail, documents, pictures and stored results.", [photos], async (session, parsed, cancellationToken) =>
        {
            var pictures = parsed.GetValue(photos)?.FullName ?? session.Get<LogBookOptions>().PhotoFolderBeside;
            if (parsed.GetValue(photos) is not null && !Directory.Exists(pictures))
            {
                Console.Error.WriteLine($"--photos: there is no folder '{pictures}'.");
                return Session.Refused;
            }

            var found = await session.Get<Verifier>().VerifyAsync(Session.Self, Directory.Exists(pictures) ? new PhotoFolder(pictures) : null, cancellationToken);
            foreach (var fault in found.Faults)
            {
                Console.Error.WriteLine(fault);
            }

            var looked = found.Pictures is { } count ? $"{count} pictures" : "no pictures (--photos names their folder)";
            Console.WriteLine($"{found.AuditRows} audit rows, {found.Documents} documents, {looked}, {found.Systems} systems looked at; {found.Faults.Count} faults.");
            return found.IsClean ? 0 : Session.Refused;
        });
    }

    private static Command Backup()
    {
        var folder = new Argument<string>("folder") { Description = "Folder for the backup." };
        return Verb("backup", "Write a consistent copy while work goes on.", [folder], async (session, parsed, cancellationToken) =>
        {
            Console.WriteLine(await session.Get<BackupMaker>().BackupAsync(Session.Self, parsed.GetRequiredValue(folder), cancellationToken));
            return 0;
        });
    }

    private static Command Restore()
    {
        var file = new Argument<FileInfo>("file") { Description = "Backup to restore." }.AcceptExistingOnly();
        return Verb("restore", "Put a backup in the place of the database; the old one is kept beside it.", [file], async (session, parsed, cancellationToken) =>
        {
            try
            {
                var kept = await session.Get<BackupMaker>().RestoreAsync(Session.Self, parsed.GetRequiredValue(file).FullName, cancellationToken);
                Console.WriteLine(kept is null ? "Restored." : $"Restored; what was there is kept as {Path.GetFileName(kept)}.");
                return 0;
            }
            catch (InvalidDataException damaged)
            {
                Console.Error.WriteLine(damaged.Message);
                return Session.Refused;
            }
        }, prepare: _ => false);
    }

    private static Option<DirectoryInfo> PhotosOption() => new("--photos") { Description = "Folder in which the server keeps pictures; \"photos\" beside a SQLite file when absent." };

    private static Option<Language?> LanguageOption() => new("--language")
    {
        Description = "Language of the text; English when absent.",
        HelpName = "en|es|pt",
        CustomParser = result =>
        {
            switch (result.Tokens.Single().Value)
            {
                case "en": return Language.English;
                case "es": return Language.Spanish;
                case "pt": return Language.Portuguese;
                default:
                    result.AddError($"--language: '{result.Tokens[0].Value}' is not one of en, es, pt.");
                    return null;
            }
        },
    };

    private static Option<DateOnly?> DayOption(string name, string description) => new(name)
    {
        Description = description,
        HelpName = "day",
        CustomParser = result =>
        {
            if (DateOnly.TryParseExact(result.Tokens.Single().Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            {
                return day;
            }

            result.AddError($"{name}: '{result.Tokens[0].Value}' is not a day; YYYY-MM-DD is expected.");
            return null;
        },
    };

    private static void Require(SymbolResult result, bool holds, string message)
    {
        if (!holds)
        {
            result.AddError(message);
        }
    }

    private static DateTime? EndOf(DateOnly? day) => day?.AddDays(1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc).AddMilliseconds(-1);
}
