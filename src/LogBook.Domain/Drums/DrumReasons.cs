using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Drums;

/// <summary>Why a level gives no volume.</summary>
public static class DrumReasons
{
    /// <summary>A size of the drum is missing or zero.</summary>
    public static readonly Reason SizeMissing = new("drum-size-missing", new Text(
        "A size of the drum is missing.",
        "Falta una medida del bidón.",
        "Falta uma medida da bombona."));

    /// <summary>The level is below the bottom or above the top.</summary>
    public static readonly Reason LevelOutside = new("level-outside", new Text(
        "The level is outside the drum: read it again.",
        "El nivel está fuera del bidón: léalo de nuevo.",
        "O nível está fora da bombona: leia de novo."));

    /// <summary>The drum is not on a scale, or is and the level is a length.</summary>
    public static readonly Reason UnitForShape = new("level-unit-for-shape", new Text(
        "This drum is not read in that unit.",
        "Este bidón no se lee en esa unidad.",
        "Esta bombona não é lida nessa unidade."));

    /// <summary>The strapping table does not rise, or has fewer than two points.</summary>
    public static readonly Reason TableUnsound = new("strapping-table-unsound", new Text(
        "The level table of the drum needs two rising points at least.",
        "La tabla de niveles del bidón necesita al menos dos puntos crecientes.",
        "A tabela de níveis da bombona precisa de ao menos dois pontos crescentes."));
}
