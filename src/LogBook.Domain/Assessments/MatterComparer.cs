using LogBook.Domain.Findings;

namespace LogBook.Domain.Assessments;

/// <summary>Whether two findings are of one kind and of one subject; case does not count in codes.</summary>
internal sealed class MatterComparer : IEqualityComparer<(string Kind, About? About)>
{
    public static readonly MatterComparer Instance = new();

    public static bool SameSubject(About? a, About? b) => ReferenceEquals(a, b)
        || (a is not null && b is not null
            && Same(a.Probe, b.Probe) && Same(a.Drum, b.Drum) && Same(a.Output, b.Output) && Same(a.Meter, b.Meter) && Same(a.Pump, b.Pump)
            && Same(a.Test, b.Test) && Same(a.Instrument, b.Instrument) && Same(a.Lot, b.Lot) && Same(a.Person, b.Person) && Same(a.Rule, b.Rule));

    public bool Equals((string Kind, About? About) x, (string Kind, About? About) y) => x.Kind == y.Kind && SameSubject(x.About, y.About);

    public int GetHashCode((string Kind, About? About) obj)
    {
        var hash = obj.Kind.GetHashCode(StringComparison.Ordinal);
        return obj.About is not { } about ? hash
            : HashCode.Combine(
                HashCode.Combine(hash, Of(about.Probe), Of(about.Drum), Of(about.Output), Of(about.Meter), Of(about.Pump)),
                HashCode.Combine(Of(about.Test), Of(about.Instrument), Of(about.Lot), Of(about.Person), Of(about.Rule)));
    }

    // A code that is not there counts as an empty one.
    private static bool Same(string? a, string? b) => ReferenceEquals(a, b) || string.Equals(a ?? "", b ?? "", StringComparison.OrdinalIgnoreCase);

    private static int Of(string? code) => string.IsNullOrEmpty(code) ? 0 : code.GetHashCode(StringComparison.OrdinalIgnoreCase);
}
