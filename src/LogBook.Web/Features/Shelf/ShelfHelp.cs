using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.Shelf;

/// <summary>Help of the shelf, the reorder list and the make-up watch.</summary>
public sealed class ShelfHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new("shelf", ShelfTexts.Title, [ShelfTexts.Intro, ShelfTexts.HowOrder], "/shelf"),
        new(
            "reorder-list",
            ShelfTexts.Order,
            [
                new(
                    "What is needed so that every drum lasts until the visit after next, by product for the order or by route for the van. The list can be printed and taken along as a table for a spreadsheet.",
                    "Lo que hace falta para que cada bidón dure hasta la visita siguiente a la próxima, por producto para el pedido o por ruta para la furgoneta. La lista se puede imprimir y descargar como tabla para una hoja de cálculo.",
                    "O que é preciso para que cada bombona dure até a visita depois da próxima, por produto para o pedido ou por rota para a van. A lista pode ser impressa e levada como tabela para uma planilha."),
                ShelfTexts.Delivery,
            ],
            "/shelf/order"),
        new("make-up-watch", ShelfTexts.MakeUp, [ShelfTexts.MakeUpIntro], "/shelf/make-up"),
    ];
}
