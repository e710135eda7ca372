using System.Text;
using LogBook.Application.History;
using LogBook.Domain.Languages;

namespace LogBook.Application.Shelf;

/// <summary>The reorder list as a table for a spreadsheet.</summary>
public static class ShelfTable
{
    private static readonly Text[] Heads =
    [
        new("Product", "Producto", "Produto"), new("Product code", "Código de producto", "Código do produto"), new("Technician", "Técnico", "Técnico"), new("Site", "Sitio", "Local"),
        new("Site name", "Nombre del sitio", "Nome do local"), new("System", "Sistema", "Sistema"), new("Drum", "Bidón", "Bombona"), new("Order L", "Pedir L", "Pedir L"), new("Use L/day", "Uso L/día", "Uso L/dia"),
        new("Runs out from", "Se agota desde", "Acaba a partir de"), new("Runs out until", "Se agota hasta", "Acaba até"), new("Order by", "Pedir antes de", "Pedir até"), new("Next visit", "Próxima visita", "Próxima visita"),
        new("Visit after next", "Visita siguiente", "Visita seguinte"), new("Read on (UTC)", "Leído (UTC)", "Lido em (UTC)"),
    ];

    /// <summary>The file, UTF-8 with its mark, so that a spreadsheet knows.</summary>
    public static byte[] Of(IEnumerable<ShelfLine> lines, Language language)
    {
        var text = new StringBuilder();
        text.Append(CsvText.Line([.. Heads.Select(head => (object?)head.In(language))])).Append("\r\n");
        foreach (var line in lines)
        {
            text.Append(CsvText.Line(
                line.ProductName,
                line.Product,
                line.AssignedTo,
                line.Site,
                line.SiteName,
                line.System,
                line.Drum,
                line.SuggestedL,
                line.Outlook?.UsePerDay is { } use ? Math.Round(use.Value, 3) : null,
                line.RunsOut?.First,
                line.RunsOut?.Last,
                line.OrderBy,
                line.NextVisit,
                line.SecondVisit,
                line.Outlook?.ReadAt)).Append("\r\n");
        }

        return [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(text.ToString())];
    }
}
