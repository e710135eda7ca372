using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Saturation;

/// <summary>Why an index cannot be worked out.</summary>
public static class SaturationReasons
{
    /// <summary>A concentration is zero or missing.</summary>
    public static readonly Reason NothingDissolved = new("index-input-missing", new Text(
        "Calcium, alkalinity or dissolved solids is missing or zero.",
        "Falta calcio, alcalinidad o sólidos disueltos, o es cero.",
        "Falta cálcio, alcalinidade ou sólidos dissolvidos, ou é zero."));

    /// <summary>The temperature is outside the formula's range.</summary>
    public static readonly Reason TemperatureOutside = new("index-temperature-outside", new Text(
        "The temperature is outside the range of this index.",
        "La temperatura está fuera del intervalo de este índice.",
        "A temperatura está fora do intervalo deste índice."));

    /// <summary>Too much dissolved for the formula.</summary>
    public static readonly Reason TooConcentrated = new("index-too-concentrated", new Text(
        "Too much is dissolved for this index.",
        "Hay demasiado disuelto para este índice.",
        "Há sólidos dissolvidos demais para este índice."));
}
