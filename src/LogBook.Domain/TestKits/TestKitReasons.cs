using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.TestKits;

/// <summary>Why a test gives no result.</summary>
public static class TestKitReasons
{
    /// <summary>The bases do not belong to one substance.</summary>
    public static readonly Reason BasisForeign = new("basis-foreign", new Text(
        "The result cannot be expressed that way: it would be another substance.",
        "El resultado no se puede expresar así: sería otra sustancia.",
        "O resultado não pode ser expresso assim: seria outra substância."));

    /// <summary>No sample volume.</summary>
    public static readonly Reason NoSample = new("sample-volume-missing", new Text(
        "The sample volume is missing or zero.",
        "Falta el volumen de muestra o es cero.",
        "O volume da amostra falta ou é zero."));

    /// <summary>A count, volume or strength that cannot occur.</summary>
    public static readonly Reason Impossible = new("test-value-impossible", new Text(
        "A number of this test cannot occur.",
        "Un número de esta prueba no es posible.",
        "Um número deste teste não é possível."));

    /// <summary>The total volume is smaller than the sample.</summary>
    public static readonly Reason DilutionBackwards = new("dilution-backwards", new Text(
        "The diluted volume is smaller than the sample in it.",
        "El volumen diluido es menor que la muestra que contiene.",
        "O volume diluído é menor que a amostra nele."));

    /// <summary>Free halogen above total.</summary>
    public static readonly Reason FreeAboveTotal = new("free-above-total", new Text(
        "Free halogen is higher than total: repeat both.",
        "El halógeno libre supera al total: repita ambos.",
        "O halogênio livre é maior que o total: repita os dois."));

    /// <summary>P alkalinity above M alkalinity.</summary>
    public static readonly Reason PAboveM = new("p-above-m", new Text(
        "P alkalinity is higher than total alkalinity: a wrong entry.",
        "La alcalinidad P supera a la total: entrada errónea.",
        "A alcalinidade P é maior que a total: entrada errada."));
}
