using LogBook.Benchmarks;

// Times are of this machine at this moment; ratios, counts and allocations are what to compare. Run it in Release:
// dotnet run -c Release --project tests/LogBook.Benchmarks
var table = new Table();
await SaveBenchmark.RunAsync(table);
await AssessBenchmark.RunAsync(table);
await PageBenchmark.RunAsync(table);
return table.HasMissed ? 1 : 0;
