using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Probes;

/// <summary>Why a probe's error or calibration cannot be worked out.</summary>
public static class ProbeReasons
{
    /// <summary>The reference is zero or missing.</summary>
    public static readonly Reason NoReference = new("reference-missing", new Text(
        "The reference reading is missing or zero.",
        "Falta la lectura de referencia o es cero.",
        "A leitura de referência falta ou é zero."));

    /// <summary>The probe reads nothing.</summary>
    public static readonly Reason ReadsZero = new("probe-reads-zero", new Text(
        "The probe reads zero, so no factor can set it right.",
        "La sonda marca cero; ningún factor puede corregirla.",
        "A sonda marca zero; nenhum fator pode corrigi-la."));

    /// <summary>Both points alike.</summary>
    public static readonly Reason PointsAlike = new("calibration-points-alike", new Text(
        "Both calibration points are alike.",
        "Los dos puntos de calibración son iguales.",
        "Os dois pontos de calibração são iguais."));

    /// <summary>Reading and reference in different units.</summary>
    public static readonly Reason UnitsDiffer = new("probe-units-differ", new Text(
        "Probe and reference are in different units.",
        "Sonda y referencia están en unidades distintas.",
        "Sonda e referência estão em unidades diferentes."));

    /// <summary>The error is too small to be split.</summary>
    public static readonly Reason NoError = new("probe-no-error", new Text(
        "There is no error to split into fouling and calibration.",
        "No hay error que repartir entre suciedad y calibración.",
        "Não há erro para dividir entre sujeira e calibração."));
}
