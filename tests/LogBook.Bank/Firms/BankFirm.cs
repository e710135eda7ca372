using LogBook.Domain.Exchange;

namespace LogBook.Bank.Firms;

/// <summary>A random firm.</summary>
internal sealed class BankFirm
{
    public required ulong Seed { get; init; }

    public required DateOnly First { get; init; }

    public required DateOnly Last { get; init; }

    /// <summary>Set-up without visits, as the engine gets it.</summary>
    public required ExchangeDocument Document { get; init; }

    public required IReadOnlyList<BankSystem> Systems { get; init; }

    public required HandMeters Meters { get; init; }

    public required ReagentLots Lots { get; init; }
}
