namespace LogBook.Application.Audit;

/// <summary>What a verification found.</summary>
/// <param name="Faults">Each fault in one line; empty when all is well.</param>
/// <param name="AuditRows">Rows of the audit trail that were followed.</param>
/// <param name="Documents">Documents whose hash was made again.</param>
/// <param name="Pictures">Pictures whose file was compared with what was kept; null where they were left out.</param>
/// <param name="Systems">Systems whose stored results were compared with rebuilt ones.</param>
public sealed record Verification(IReadOnlyList<string> Faults, long AuditRows, int Documents, int? Pictures, int Systems)
{
    /// <summary>Whether nothing is wrong.</summary>
    public bool IsClean => Faults.Count == 0;
}
