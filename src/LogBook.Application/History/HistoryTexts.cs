using LogBook.Domain.Languages;

namespace LogBook.Application.History;

/// <summary>Words of the marks in a history.</summary>
public static class HistoryTexts
{
    /// <summary>Photo: of what.</summary>
    public static readonly Text PhotoOf = new("Photo: {0}", "Foto: {0}", "Foto: {0}");

    /// <summary>Setting changed at a visit: name, found, left.</summary>
    public static readonly Text SettingChanged = new("{0}: {1} → {2}", "{0}: {1} → {2}", "{0}: {1} → {2}");

    /// <summary>Setting found changed: name, left last time, found.</summary>
    public static readonly Text SettingFoundChanged = new(
        "{0}: left at {1}, found at {2}",
        "{0}: se dejó en {1}, se encontró en {2}",
        "{0}: deixado em {1}, encontrado em {2}");

    /// <summary>Another programme begins.</summary>
    public static readonly Text ProgrammeBegins = new("Programme in force from this day", "Programa en vigor desde este día", "Programa em vigor a partir deste dia");

    /// <summary>Delivered: drum, litres.</summary>
    public static readonly Text Delivered = new("{0}: {1}\u00a0L added", "{0}: {1}\u00a0L añadidos", "{0}: {1}\u00a0L adicionados");

    /// <summary>Container exchanged: drum.</summary>
    public static readonly Text Swapped = new("{0}: container exchanged", "{0}: envase cambiado", "{0}: recipiente trocado");

    /// <summary>Added by hand: product, amount, unit.</summary>
    public static readonly Text AddedByHand = new("{0}: {1} by hand", "{0}: {1} a mano", "{0}: {1} à mão");

    /// <summary>Probe cleaned: probe, as found, after cleaning.</summary>
    public static readonly Text ProbeCleaned = new("{0} cleaned: {1} → {2}", "{0} limpiada: {1} → {2}", "{0} limpa: {1} → {2}");

    /// <summary>Probe calibrated: probe, as found, as left.</summary>
    public static readonly Text ProbeCalibrated = new("{0} calibrated: {1} → {2}", "{0} calibrada: {1} → {2}", "{0} calibrada: {1} → {2}");

    /// <summary>Result: test, value.</summary>
    public static readonly Text Result = new("{0}: {1}", "{0}: {1}", "{0}: {1}");

    /// <summary>Event with its note.</summary>
    public static readonly Text EventWithNote = new("{0}: {1}", "{0}: {1}", "{0}: {1}");

    /// <summary>A value that was not quantifiable.</summary>
    public static readonly Text NotQuantifiable = new("not quantifiable", "no cuantificable", "não quantificável");

    /// <summary>Nothing set.</summary>
}
