using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Domain.History;

namespace LogBook.Bank.Scoring;

/// <summary>Generates a bank and has it judged by the engine and by the spreadsheet.</summary>
internal sealed class MixedBank
{
    public BankScore Engine { get; } = new();

    public BankScore Baseline { get; } = new();

    public void Run(ulong seed, int systems, int months)
    {
        var firm = FirmDraw.Of(seed, systems, months);
        var setUp = new FirmSetUp(firm.Document);
        var asOf = firm.Last.AddDays(1).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        var courses = new Course[firm.Systems.Count];
        Parallel.For(0, courses.Length, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => courses[i] = SystemRun.Of(firm.Systems[i], firm));
        var flags = EngineFlags.Of(courses, setUp, asOf);
        for (var i = 0; i < courses.Length; i++)
        {
            Engine.Add(seed, courses[i], flags.Systems[i]);
            Baseline.Add(seed, courses[i], Spreadsheet.Of(courses[i]));
        }

        Engine.AddShared(seed, courses, flags.Round);
        Baseline.AddShared(seed, courses, []);
    }
}
