using LogBook.Application.Demo;

namespace LogBook.Application.Tests.Demo;

/// <summary>The demo firm, generated once for all its tests.</summary>
public sealed class DemoFirmFixture
{
    public DemoFirmResult Firm { get; } = DemoFirm.Create();

    public IReadOnlyList<DemoTruth> TruthOf(string site, string from, string to) =>
        [.. Firm.Truths.Where(t => t.Site == site && DateOnly.FromDateTime(t.Utc) >= DateOnly.ParseExact(from, "yyyy-MM-dd") && DateOnly.FromDateTime(t.Utc) <= DateOnly.ParseExact(to, "yyyy-MM-dd"))];
}
