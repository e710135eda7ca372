using LogBook.Domain.Languages;

namespace LogBook.Domain.Programmes;

/// <summary>Names of tests and sampling points for people.</summary>
public static class TestTexts
{
    private static readonly Dictionary<string, Text> Tests = new(StringComparer.OrdinalIgnoreCase)
    {
        [TestCodes.Conductivity] = new("Conductivity", "Conductividad", "Condutividade"),
        [TestCodes.Ph] = new("pH", "pH", "pH"),
        [TestCodes.Temperature] = new("Temperature", "Temperatura", "Temperatura"),
        [TestCodes.Chloride] = new("Chloride", "Cloruro", "Cloreto"),
        [TestCodes.Calcium] = new("Calcium hardness", "Dureza cálcica", "Dureza de cálcio"),
        [TestCodes.Magnesium] = new("Magnesium hardness", "Dureza magnésica", "Dureza de magnésio"),
        [TestCodes.TotalHardness] = new("Total hardness", "Dureza total", "Dureza total"),
        [TestCodes.Alkalinity] = new("Alkalinity", "Alcalinidad", "Alcalinidade"),
        [TestCodes.PAlkalinity] = new("P alkalinity", "Alcalinidad P", "Alcalinidade P"),
        [TestCodes.Silica] = new("Silica", "Sílice", "Sílica"),
        [TestCodes.Sulphate] = new("Sulphate", "Sulfato", "Sulfato"),
        [TestCodes.Inhibitor] = new("Inhibitor", "Inhibidor", "Inibidor"),
        [TestCodes.Phosphonate] = new("Phosphonate", "Fosfonato", "Fosfonato"),
        [TestCodes.Orthophosphate] = new("Orthophosphate", "Ortofosfato", "Ortofosfato"),
        [TestCodes.Molybdate] = new("Molybdate", "Molibdato", "Molibdato"),
        [TestCodes.Azole] = new("Azole", "Azol", "Azol"),
        [TestCodes.FreeHalogen] = new("Free halogen", "Halógeno libre", "Halogênio livre"),
        [TestCodes.TotalHalogen] = new("Total halogen", "Halógeno total", "Halogênio total"),
        [TestCodes.Orp] = new("ORP", "ORP", "ORP"),
        [TestCodes.Iron] = new("Iron", "Hierro", "Ferro"),
        [TestCodes.Copper] = new("Copper", "Cobre", "Cobre"),
        [TestCodes.Turbidity] = new("Turbidity", "Turbidez", "Turbidez"),
        [TestCodes.Tds] = new("Dissolved solids", "Sólidos disueltos", "Sólidos dissolvidos"),
        [TestCodes.Load] = new("Load", "Carga", "Carga"),
        [TestCodes.Approach] = new("Approach", "Acercamiento", "Aproximação"),
        [TestCodes.DipSlide] = new("Dip slide", "Lámina de cultivo", "Lâmina de cultura"),
        [TestCodes.ColonyCount] = new("Colony count", "Recuento de colonias", "Contagem de colônias"),
        [TestCodes.Legionella] = new("Legionella", "Legionella", "Legionella"),
        [TestCodes.CorrosionSteel] = new("Corrosion rate, steel", "Velocidad de corrosión, acero", "Taxa de corrosão, aço"),
        [TestCodes.CorrosionCopper] = new("Corrosion rate, copper", "Velocidad de corrosión, cobre", "Taxa de corrosão, cobre"),
    };

    private static readonly Dictionary<string, Text> Points = new(StringComparer.OrdinalIgnoreCase)
    {
        [SamplePoints.Tower] = new("tower water", "agua de la torre", "água da torre"),
        [SamplePoints.MakeUp] = new("make-up", "reposición", "reposição"),
        [SamplePoints.Bleed] = new("bleed", "purga", "purga"),
        [SamplePoints.Softened] = new("softened water", "agua ablandada", "água abrandada"),
        [SamplePoints.Raw] = new("raw water", "agua bruta", "água bruta"),
    };

    /// <summary>Codes of the tests that have a name, in the order in which they are shown.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. Tests.Keys];

    /// <summary>Name of a test.</summary>
    /// <param name="test">A code of <see cref="TestCodes"/>, or of a test that a firm added.</param>
    /// <returns>Its name; the code itself where this version has no name for it.</returns>
    public static Text NameOf(string test) => Tests.TryGetValue(test, out var name) ? name : new Text(test, test, test);

    /// <summary>Name of a sampling point.</summary>
    /// <param name="point">A code of <see cref="SamplePoints"/>, or a point named in the system's set-up.</param>
    /// <returns>Its name; the point itself where it is the site's own.</returns>
    public static Text NameOfPoint(string point) => Points.TryGetValue(point, out var name) ? name : new Text(point, point, point);
}
