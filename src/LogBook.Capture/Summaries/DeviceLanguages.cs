using LogBook.Domain.Languages;

namespace LogBook.Capture.Summaries;

/// <summary>Codes of languages.</summary>
internal static class DeviceLanguages
{
    /// <summary>As documents name them.</summary>
    public static string CodeOf(Language language) => language switch
    {
        Language.Spanish => "es",
        Language.Portuguese => "pt",
        _ => "en",
    };
}
