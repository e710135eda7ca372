using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.FirstRun;

/// <summary>Help of the first-run page.</summary>
public sealed class FirstRunHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new("first-run", FirstRunTexts.Title, [FirstRunTexts.Intro, FirstRunTexts.CodeHint, LogBook.Web.Account.AccountTexts.PasswordHint], "/first-run"),
    ];
}
