namespace LogBook.Bank.Firms;

/// <summary>A person of the firm with hand meter, reagent lots and habits.</summary>
/// <param name="Code">Code of the person.</param>
/// <param name="HandMeter">Code of the hand meter.</param>
/// <param name="SkipShare">Chance that an optional reading is left out; 0 for a thorough person.</param>
internal sealed record BankTechnician(string Code, string HandMeter, double SkipShare)
{
    public string Name => "Technician " + Code;
}
