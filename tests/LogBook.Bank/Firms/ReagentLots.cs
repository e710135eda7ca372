namespace LogBook.Bank.Firms;

/// <summary>Inhibitor reagent lots: two in the firm at a time, changed every five months, and at most one that reads wrong.</summary>
internal sealed class ReagentLots(DateOnly first)
{
    private const int Days = 150;

    public (string Lot, double Factor)? Fault { get; set; }

    public string LotOf(string technician, DateOnly day) =>
        FormattableString.Invariant($"RL-{Math.Max(0, (day.DayNumber - first.DayNumber) / Days)}-{(technician[^1] % 2 == 0 ? "A" : "B")}");

    public double FactorOf(string lot) => Fault is { } fault && fault.Lot == lot ? fault.Factor : 1;

    public IEnumerable<string> All(DateOnly last) =>
        Enumerable.Range(0, ((last.DayNumber - first.DayNumber) / Days) + 1).SelectMany(i => new[] { FormattableString.Invariant($"RL-{i}-A"), FormattableString.Invariant($"RL-{i}-B") });
}
