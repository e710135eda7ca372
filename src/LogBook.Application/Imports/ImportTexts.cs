using LogBook.Domain.Languages;

namespace LogBook.Application.Imports;

/// <summary>What is said about imports.</summary>
internal static class ImportTexts
{
    public static readonly Text NotAllowed = new(
        "Your role does not allow this import.",
        "Su función no permite esta importación.",
        "A sua função não permite esta importação.");
}
