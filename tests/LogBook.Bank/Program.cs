using System.Diagnostics;
using System.Globalization;
using LogBook.Bank.Scoring;

// Usage: LogBook.Bank [--seeds 1,2,3] [--systems 40] [--months 18] [--worst 60] [--out FILE]
//        LogBook.Bank --trace S07 --seeds 1    one system in full, truth beside record
// Seeds 1 to 99 are for tuning; the report uses seeds from 1001 on, which nobody tunes on.
string Option(string name, string fallback) => Array.IndexOf(args, name) is >= 0 and var at && at + 1 < args.Length ? args[at + 1] : fallback;
int Number(string name, int fallback) => int.Parse(Option(name, fallback.ToString(CultureInfo.InvariantCulture)), CultureInfo.InvariantCulture);

var seeds = Option("--seeds", "1,2,3").Split(',').Select(s => ulong.Parse(s, CultureInfo.InvariantCulture)).ToList();
if (Option("--trace", "") is { Length: > 0 } site)
{
    Console.Write(SystemTrace.Of(seeds[0], Number("--systems", 40), Number("--months", 18), site));
    return;
}

var bank = new MixedBank();
var clock = Stopwatch.StartNew();
foreach (var seed in seeds)
{
    bank.Run(seed, Number("--systems", 40), Number("--months", 18));
}

var title = string.Create(CultureInfo.InvariantCulture, $"Mixed bank, seeds {string.Join(", ", seeds)}");
var page = BankReport.Of(bank, title, Number("--worst", 60)) + string.Create(CultureInfo.InvariantCulture, $"\n{clock.Elapsed.TotalSeconds:0} s for {seeds.Count} banks.\n");
if (Option("--out", "") is { Length: > 0 } file)
{
    File.WriteAllText(file, page);
}
else
{
    Console.Write(page);
}
