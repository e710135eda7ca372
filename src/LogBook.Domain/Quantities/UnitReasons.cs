using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Quantities;

/// <summary>Why a number with a unit is not a quantity.</summary>
public static class UnitReasons
{
    /// <summary>The unit is missing or not one of the exchange format.</summary>
    public static readonly Reason Unknown = new("unit-unknown", new Text(
        "The unit is missing or unknown.",
        "Falta la unidad o no se conoce.",
        "A unidade falta ou não é conhecida."));

    /// <summary>The unit measures something else.</summary>
    public static readonly Reason Foreign = new("unit-foreign", new Text(
        "The unit measures something else.",
        "La unidad mide otra cosa.",
        "A unidade mede outra coisa."));

    /// <summary>The number cannot occur.</summary>
    public static readonly Reason Impossible = new("value-impossible", new Text(
        "The number cannot occur.",
        "El número no es posible.",
        "O número não é possível."));
}
