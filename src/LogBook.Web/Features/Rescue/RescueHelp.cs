using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Rescue;

/// <summary>Help of the page that takes rescue files in.</summary>
public sealed class RescueHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new("rescue", RescueTexts.Title, [RescueTexts.Intro, RescueTexts.HelpFile, RescueTexts.HelpSealed], "/rescue", "/rescue/{Id:guid}"),
    ];
}
