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
                new Text(
                    "Beside the access notes stand the weekday and time at the site and whether it is closed today; a telephone number in them is a link that calls. What a newcomer should know beyond that, such as a hatch that sticks, is written as a note or an observation of a visit. A supervisor hands all sites of the technician to the colleague with the fewest in one tap here; one tap gives them back.",
                    "Junto a las notas de acceso están el día de la semana y la hora en el sitio y si está cerrado hoy; un número de teléfono en ellas es un enlace que llama. Lo demás que debe saber quien llega, como una trampilla que se atasca, se escribe como nota u observación de una visita. Un supervisor pasa aquí con un toque todos los sitios del técnico al compañero que tiene menos; otro toque los devuelve.",
                    "Ao lado das notas de acesso estão o dia da semana e a hora no local e se está fechado hoje; um número de telefone nelas é um link que liga. O mais que quem chega deve saber, como um alçapão que emperra, se escreve como nota ou observação de uma visita. Um supervisor passa aqui com um toque todos os locais do técnico ao colega que tem menos; outro toque os devolve."),
            ],
            "/sites/{Code}/take-over"),
    ];
}
