using System.Globalization;
using LogBook.Application.Data;
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

    /// <summary>Reads an address back; null where it is none.</summary>
    /// <param name="query">What <see cref="Query"/> gave.</param>
    public static FindingKey? Parse(string? query)
    {
        var pairs = (query ?? "").Split('&', StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Split('=', 2)).Where(pair => pair.Length == 2)
            .GroupBy(pair => pair[0]).ToDictionary(group => group.Key, group => Uri.UnescapeDataString(group.Last()[1]), StringComparer.Ordinal);
        return pairs.TryGetValue("kind", out var kind) && DateOnly.TryParseExact(pairs.GetValueOrDefault("seen"), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var seen)
            ? new FindingKey(pairs.GetValueOrDefault("site"), pairs.GetValueOrDefault("system"), kind, pairs.GetValueOrDefault("about") ?? "", seen)
            : null;
    }

    /// <summary>
    /// Kinds that are about instruments, reagent lots and the records rather than about a plant. A supervisor weighs them apart from what a
    /// plant needs, and nobody else sees them: they touch somebody's work before anything is proved.
    /// </summary>
    public static IReadOnlyList<string> AboutRecords { get; } = [FindingKinds.SecondLook, FindingKinds.InstrumentShift, FindingKinds.LotShift, FindingKinds.ValueSuspect];

    /// <summary>Whether a viewer may see findings of a kind.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="kind">Kind of finding.</param>
    public static bool MaySee(Viewer viewer, string kind) => viewer.IsOfFirm && (viewer.MayReview || !AboutRecords.Contains(kind));
}
