using System.Globalization;

namespace LogBook.Domain.Tests.Reference;

/// <summary>One row of a reference table: what to compute, what must come out, how close, and where it was found.</summary>
public sealed record ReferenceRow(
    string Id, string Calc, string Inputs, string Expected, string Unit, double? Tolerance, string ToleranceKind, string Source, string Status)
{
    public bool IsFromMemory => Status == "from-memory";

    /// <summary>A number among the inputs, by one of its names (rows name the unit in it).</summary>
    public double this[params string[] names] => double.Parse(
        TextOf(names).Split(' ')[0], NumberStyles.Float, CultureInfo.InvariantCulture);

    public bool Has(string name) => Parts().Any(part => part[0] == name);

    public string TextOf(params string[] names) => Parts().FirstOrDefault(part => names.Contains(part[0]))?[1]
        ?? throw new InvalidOperationException($"{Id}: no input {string.Join('/', names)} in '{Inputs}'.");

    public double[] List(string name) => [.. TextOf(name).Split('|').Select(item => double.Parse(item, CultureInfo.InvariantCulture))];

    /// <summary>Fails with row, tolerance and source when the outcome is not within the row's own tolerance.</summary>
    public void Check(object actual)
    {
        if (Tolerance is not { } tolerance)
        {
            Assert.True(Expected == Invariant(actual), $"{Where()}: expected '{Expected}', got '{Invariant(actual)}'.");
            return;
        }

        var numbers = actual as double[] ?? [Convert.ToDouble(actual, CultureInfo.InvariantCulture)];
        var expected = Expected.Split('|').Select(item => double.Parse(item, CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(expected.Length, numbers.Length);
        foreach (var (want, got) in expected.Zip(numbers))
        {
            var allowed = ToleranceKind == "rel" ? tolerance * Math.Abs(want) : tolerance;
            // Only representation noise is forgiven beyond the tolerance (a tolerance of zero asks for an exact count).
            var noise = 4 * Math.BitIncrement(Math.Abs(want)) - (4 * Math.Abs(want));
            Assert.True(
                Math.Abs(got - want) <= allowed + noise,
                FormattableString.Invariant($"{Where()}: expected {want} within {tolerance} {ToleranceKind}, got {got:R}."));
        }
    }

    private string Where() => $"{Id} {Calc} ({Source})";

    private static string Invariant(object value) => value is bool truth
        ? (truth ? "true" : "false")
        : Convert.ToString(value, CultureInfo.InvariantCulture)!;

    private IEnumerable<string[]> Parts() => Inputs.Split(';').Select(part => part.Trim().Split('=', 2)).Where(part => part.Length == 2);
}
