using LogBook.Domain.Languages;
using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.SetUp.MoveIn;

/// <summary>Help for spreadsheets that move in.</summary>
public sealed class MoveInHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "move-in",
            MoveInPageTexts.Title,
            [
                MoveInPageTexts.Intro,
                new(
                    "Sites, systems and people must be set up first; the file brings visits only. A heading in one, two or three rows is found by itself, also where it comes again further down with columns moved. Totals, empty rows and the same row twice become no visit and are listed.",
                    "Sitios, sistemas y personas deben estar configurados antes; el archivo solo trae visitas. Un encabezado de una, dos o tres filas se encuentra solo, también si vuelve más abajo con columnas movidas. Totales, filas vacías y la misma fila dos veces no dan visita y se listan.",
                    "Locais, sistemas e pessoas devem estar configurados antes; o arquivo traz só visitas. Um cabeçalho de uma, duas ou três linhas é encontrado sozinho, também onde volta mais abaixo com colunas movidas. Totais, linhas vazias e a mesma linha duas vezes não viram visita e são listados."),
                new(
                    "Questions name sheet, cell, value and what is expected: 3/4/2025 may be April or March, 1.234 may be a thousand, a gallon may be two things. Answer for the cell or for all alike in the column. What you leave out as a value is kept as words in the notes of the visit.",
                    "Las preguntas dicen hoja, celda, valor y lo que se espera: 3/4/2025 puede ser abril o marzo, 1.234 puede ser mil, un galón puede ser dos cosas. Responda por la celda o por todas las iguales de la columna. Lo que omita como valor se conserva como texto en las notas de la visita.",
                    "As perguntas dizem planilha, célula, valor e o que se espera: 3/4/2025 pode ser abril ou março, 1.234 pode ser mil, um galão pode ser duas coisas. Responda pela célula ou por todas as iguais da coluna. O que você omitir como valor fica como texto nas notas da visita."),
                new(
                    "Keep the mapping under a name: the next file with the same headings is then read the same way. If a file was changed after it came in, and a visit now says something else, the whole file is refused and the visit is named: correct that visit in its own record, or take its row out of the file.",
                    "Guarde la asignación con un nombre: el próximo archivo con los mismos encabezados se leerá igual. Si un archivo cambió después de entrar, y una visita ahora dice otra cosa, se rechaza el archivo entero y se nombra la visita: corríjala en su propio registro o quite su fila del archivo.",
                    "Guarde o mapeamento com um nome: o próximo arquivo com os mesmos cabeçalhos será lido do mesmo jeito. Se um arquivo mudou depois de entrar, e uma visita agora diz outra coisa, o arquivo inteiro é recusado e a visita é nomeada: corrija-a no próprio registro ou tire a linha do arquivo."),
            ],
            "/setup/move-in"),
    ];
}
