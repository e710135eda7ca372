using LogBook.Benchmarks;

// Times are of this machine at this moment; ratios, counts and allocations are what to compare. Run it in Release:
// dotnet run -c Release --project tests/LogBook.Benchmarks [save|assess|pages|records]
var table = new Table();
foreach (var (name, run) in ((string, Func<Table, Task>)[])[("save", SaveBenchmark.RunAsync), ("assess", AssessBenchmark.RunAsync), ("pages", PageBenchmark.RunAsync), ("records", RecordBenchmark.RunAsync)])
{
    if (args.Length == 0 || args.Contains(name))
    {
        await run(table);
    }
}

return table.HasMissed ? 1 : 0;
