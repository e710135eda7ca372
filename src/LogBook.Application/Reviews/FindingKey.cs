using System.Globalization;
using LogBook.Domain.Findings;

namespace LogBook.Application.Reviews;

/// <summary>
/// Which finding: one kind on one subject, in one of its appearances. Row numbers change each time an assessment is rebuilt, so the
/// address of a finding carries this.
/// </summary>
/// <param name="Site">Code of the site; null for a finding about an instrument, a lot or a person.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Kind">Kind.</param>
/// <param name="About">Subject as one text ("drum:D-INH"); empty when it concerns the system.</param>
/// <param name="FirstSeen">First day of this appearance.</param>
public sealed record FindingKey(string? Site, string? System, string Kind, string About, DateOnly FirstSeen)
{
    /// <summary>Query of the finding's address.</summary>
    public string Query() => string.Join('&', new (string Name, string? Value)[]
    {
        ("site", Site), ("system", System), ("kind", Kind), ("about", About), ("seen", FirstSeen.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
    }.Where(pair => !string.IsNullOrEmpty(pair.Value)).Select(pair => $"{pair.Name}={Uri.EscapeDataString(pair.Value!)}"));

    /// <summary>Kinds that only a supervisor or administrator sees.</summary>
    public static IReadOnlyList<string> ForReviewersOnly { get; } = [FindingKinds.SecondLook];
}
