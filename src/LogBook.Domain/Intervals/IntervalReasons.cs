using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Intervals;

/// <summary>Why the amount between two readings of a counter is not known.</summary>
public static class IntervalReasons
{
    /// <summary>There is no earlier reading.</summary>
    public static Reason NoEarlierReading { get; } = new("no-earlier-reading", new(
        "There is no earlier reading.", "No hay lectura anterior.", "Não há leitura anterior."));

    /// <summary>The counter was not read at this visit.</summary>
    public static Reason NotRead { get; } = new("not-read", new(
        "It was not read at this visit.", "No se leyó en esta visita.", "Não foi lido nesta visita."));

    /// <summary>The counter was restarted and its last count before that is not known.</summary>
    public static Reason ResetUnknown { get; } = new("reset-without-last-count", new(
        "It was restarted and its last count before that is not known.",
        "Se reinició y no se conoce su última cuenta antes de ello.",
        "Foi zerado e não se conhece a última contagem antes disso."));

    /// <summary>The register was replaced and its last or first count is not known.</summary>
    public static Reason ReplacedUnknown { get; } = new("replaced-without-counts", new(
        "The register was replaced and its last or first count is not known.",
        "Se cambió el contador y no se conoce su última o primera cuenta.",
        "O registrador foi trocado e não se conhece a última ou a primeira contagem."));

    /// <summary>The count fell and nothing explains it.</summary>
    public static Reason WentBackwards { get; } = new("went-backwards", new(
        "The count fell with no rollover, reset or replacement that explains it.",
        "La cuenta bajó sin vuelta a cero, reinicio ni cambio que lo explique.",
        "A contagem caiu sem virada, zeragem ou troca que explique."));

    /// <summary>More hours than have passed.</summary>
    public static Reason MoreThanElapsed { get; } = new("more-hours-than-passed", new(
        "It counts more hours than have passed.", "Cuenta más horas de las transcurridas.", "Conta mais horas do que se passaram."));

    /// <summary>The unit cannot be read as this quantity.</summary>
    public static Reason ForeignUnit { get; } = new("foreign-unit", new(
        "Its unit does not belong to this quantity.", "Su unidad no corresponde a esta magnitud.", "Sua unidade não corresponde a esta grandeza."));

    /// <summary>The level after an exchange of the container is not known.</summary>
    public static Reason SwapUnknown { get; } = new("swapped-without-level", new(
        "The container was exchanged and the new level is not known.",
        "Se cambió el envase y no se conoce el nuevo nivel.",
        "O recipiente foi trocado e não se conhece o novo nível."));

    /// <summary>The set-up has no such part.</summary>
    public static Reason UnknownPart { get; } = new("unknown-part", new(
        "The set-up of the system has no such part.", "La configuración del sistema no tiene esa parte.", "A configuração do sistema não tem essa parte."));
}
