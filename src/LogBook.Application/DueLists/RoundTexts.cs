using LogBook.Domain.Languages;

namespace LogBook.Application.DueLists;

/// <summary>Words of "Since you were here".</summary>
public static class RoundTexts
{
    /// <summary>Other visit: kind, technician.</summary>
    public static readonly Text OtherVisit = new("{0} visit by {1}", "Visita ({0}) de {1}", "Visita ({0}) de {1}");

    /// <summary>Finding: its kind, its sentence.</summary>
    public static readonly Text Found = new("{0}: {1}", "{0}: {1}", "{0}: {1}");

    /// <summary>Amended: technician or supervisor, reason.</summary>
    public static readonly Text Amended = new("Visit amended by {0}: {1}", "Visita corregida por {0}: {1}", "Visita corrigida por {0}: {1}");

    /// <summary>No reason was given.</summary>
    public static readonly Text NoReason = new("no reason given", "sin motivo indicado", "sem motivo informado");
}
