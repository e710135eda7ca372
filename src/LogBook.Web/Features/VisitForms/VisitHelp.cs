using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.VisitForms;

/// <summary>Help of the visit form.</summary>
public sealed class VisitHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "visit",
            VisitTexts.HelpTitle,
            [VisitTexts.HelpForm, VisitTexts.HelpNumbers, VisitTexts.HelpCaution, VisitTexts.HelpAmend],
            "/visit/{Code}",
            "/visits/{Id:guid}/amend"),
    ];
}
