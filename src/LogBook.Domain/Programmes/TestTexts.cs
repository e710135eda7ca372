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

    /// <summary>Name of a sampling point.</summary>
    /// <param name="point">A code of <see cref="SamplePoints"/>, or a point named in the system's set-up.</param>
    /// <returns>Its name; the point itself where it is the site's own.</returns>
    public static Text NameOfPoint(string point) => Points.TryGetValue(point, out var name) ? name : new Text(point, point, point);
}
