namespace LogBook.Domain.Findings;

/// <summary>
/// A rule that looks at counts or at the samples they come from (dip slide, colony count, Legionella). When only such results come in,
/// the other rules would say again what they said.
/// </summary>
public interface IReadsCounts : IFindingRule
{
}
