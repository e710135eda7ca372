using LogBook.Domain.Languages;
using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.TakeOver;

/// <summary>Help of the take-over pack.</summary>
public sealed class TakeOverHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "take-over",
            TakeOverPageTexts.Title,
            [
                TakeOverPageTexts.Intro,
                new Text(
                    "It is made of what is on file: access and contacts come from the set-up, the story from visits, settings and findings, the notes from what was written at visits. Print it, or read it before the first visit.",
                    "Se hace con lo que está registrado: el acceso y los contactos vienen de la configuración; la historia, de visitas, ajustes y hallazgos; las notas, de lo escrito en las visitas. Imprímalo o léalo antes de la primera visita.",
                    "É feito do que está registrado: acesso e contatos vêm da configuração; a história, de visitas, ajustes e constatações; as notas, do que foi escrito nas visitas. Imprima-o ou leia-o antes da primeira visita."),
            ],
            "/sites/{Code}/take-over"),
    ];
}
