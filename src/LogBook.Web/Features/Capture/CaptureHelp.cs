using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Capture;

/// <summary>Help of the form that works without signal.</summary>
public sealed class CaptureHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new("capture", CaptureTexts.HelpTitle, [CaptureTexts.HelpRegister, CaptureTexts.HelpQueue, CaptureTexts.HelpLost]),
    ];
}
