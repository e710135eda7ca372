using LogBook.Domain.Languages;

namespace LogBook.Domain.Visits;

/// <summary>What happened, in words: the name of an event, or for "other" what was noted of it.</summary>
/// <remarks>Two of these notes are said by a tap of the form; whoever reads them in another language gets them in it.</remarks>
public static class EventWords
{
    /// <summary>That the outputs of the controller were tested.</summary>
    public static readonly Text OutputsTested = new("Outputs tested one by one", "Salidas probadas una a una", "Saídas testadas uma a uma");

    /// <summary>That the controller shows no alarm.</summary>
    public static readonly Text NoAlarms = new("No alarm at the controller", "Ninguna alarma en el controlador", "Nenhum alarme no controlador");

    /// <summary>What an event is called.</summary>
    /// <param name="happened">The event.</param>
    /// <returns>Its type; of an event "other" its note, which then is no note any more.</returns>
    public static Text NameOf(VisitEvent happened)
    {
        var note = happened.Note?.Trim() ?? string.Empty;
        return happened.Type != EventType.Other || note.Length == 0 ? VisitTexts.NameOf(happened.Type) : Array.Find([OutputsTested, NoAlarms], Says) ?? new Text(note, note, note);

        bool Says(Text known) => note == known.En || note == known.Es || note == known.Pt;
    }

    /// <summary>What is noted beside the name.</summary>
    /// <param name="happened">The event.</param>
    /// <returns>The note; null where there is none, or where it is the name.</returns>
    public static string? NoteOf(VisitEvent happened) => happened.Type == EventType.Other || string.IsNullOrWhiteSpace(happened.Note) ? null : happened.Note;
}
