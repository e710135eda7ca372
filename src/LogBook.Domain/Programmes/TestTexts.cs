using LogBook.Domain.History;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Programmes;

/// <summary>Names of tests and sampling points for people, whether or not this version knows them.</summary>
public static class TestTexts
{
    private static readonly Dictionary<string, Text> Points = new(StringComparer.OrdinalIgnoreCase)
    {
        [SamplePoints.Tower] = new("tower water", "agua de la torre", "água da torre"),
        [SamplePoints.MakeUp] = new("make-up", "reposición", "reposição"),
        [SamplePoints.Bleed] = new("bleed", "purga", "purga"),
        [SamplePoints.Softened] = new("softened water", "agua ablandada", "água abrandada"),
        [SamplePoints.Raw] = new("raw water", "agua bruta", "água bruta"),
    };

    /// <summary>Name of a test.</summary>
    /// <param name="test">A code of <see cref="TestCodes"/>, or of a test that a firm added.</param>
    /// <returns>Its name; the code itself where the catalogue has no name for it.</returns>
    public static Text NameOf(string test) => TestCatalogue.Find(test)?.Name ?? new Text(test, test, test);

    /// <summary>Name of a test, the firm's own ones with the name it gave them.</summary>
    /// <param name="test">Code, in any case of letters.</param>
    /// <param name="firm">Set-up with the firm's own tests.</param>
    /// <returns>Its name, as it begins a sentence; the code itself where nobody has a name for it.</returns>
    public static Text NameOf(string test, FirmSetUp firm) => TestCatalogue.Find(test, firm)?.Name ?? NameOf(test);

    /// <summary>Name of a test, as it stands within a sentence.</summary>
    /// <param name="test">Code, in any case of letters.</param>
    /// <param name="firm">Set-up with the firm's own tests.</param>
    /// <returns>As in "free halogen" or "pH"; the organism and a firm's own names keep their letters.</returns>
    public static Text InSentence(string test, FirmSetUp firm) => TestCatalogue.Find(test) is { Name: var name } known && known.Code != TestCodes.Legionella
        ? new Text(Lower(name.En), Lower(name.Es), Lower(name.Pt))
        : NameOf(test, firm);

    /// <summary>Name of a sampling point.</summary>
    /// <param name="point">A code of <see cref="SamplePoints"/>, or a point named in the system's set-up.</param>
    /// <returns>Its name; the point itself where it is the site's own.</returns>
    public static Text NameOfPoint(string point) => Points.TryGetValue(point, out var name) ? name : new Text(point, point, point);

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
