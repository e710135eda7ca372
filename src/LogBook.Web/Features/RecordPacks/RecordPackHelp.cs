using LogBook.Application.RecordPacks;
using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.RecordPacks;

/// <summary>Help for the records of a site.</summary>
public sealed class RecordPackHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "records",
            RecordTexts.Title,
            [
                new(
                    "For an inspector, a customer or the file: choose the period, look at the counts, press the button and take the zip file along. It holds a PDF to read, a workbook to work with, and a list of SHA-256 checksums by which anybody can see whether a file was changed since.",
                    "Para un inspector, un cliente o el archivo: elija el periodo, mire los recuentos, pulse el botón y llévese el archivo zip. Contiene un PDF para leer, un libro de cálculo para trabajar y una lista de sumas SHA-256 con las que cualquiera puede ver si un archivo se cambió después.",
                    "Para um inspetor, um cliente ou o arquivo: escolha o período, olhe as contagens, toque no botão e leve o arquivo zip. Ele contém um PDF para ler, uma planilha para trabalhar e uma lista de somas SHA-256 pelas quais qualquer um vê se um arquivo foi mudado depois."),
                new(
                    "For each rule of the site it tells how often its dates were met or missed, what is unknown, and each gap with its days, by the version of the rule in force at the time. It never says more than that.",
                    "De cada norma del sitio dice cuántas veces se cumplieron o incumplieron sus fechas, qué se desconoce y cada hueco con sus días, según la versión de la norma en vigor entonces. Nunca dice más que eso.",
                    "De cada norma do local conta quantas vezes suas datas foram cumpridas ou não, o que é desconhecido e cada lacuna com seus dias, pela versão da norma em vigor na época. Nunca diz mais que isso."),
                new(
                    "Below stands how long the records must be kept. A supervisor may lay a legal hold on them, or lift it, with a reason. LogBook deletes no record by itself.",
                    "Abajo consta cuánto tiempo deben conservarse los registros. Un supervisor puede poner o levantar una retención legal, con un motivo. LogBook no borra ningún registro por sí mismo.",
                    "Abaixo consta por quanto tempo os registros devem ser guardados. Um supervisor pode pôr ou levantar uma retenção legal, com um motivo. O LogBook não apaga nenhum registro por si mesmo."),
            ],
            "/sites/{Code}/records"),
    ];
}
