using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Help;

/// <summary>Help of the help pages.</summary>
public sealed class HelpHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "help",
            HelpTexts.Title,
            [HelpTexts.Intro, HelpTexts.Scope],
            "/help",
            "/help/{Screen}",
            "/not-found"),
    ];
}
