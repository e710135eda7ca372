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
                    "For an inspector, a customer or the file: choose the period, look at the counts, press the button and take the zip file along. It holds a PDF to read, a workbook to work with, the pictures by visit and field, and a list of SHA-256 checksums by which anybody can see whether a file was changed since.",
                    "Para un inspector, un cliente o el archivo: elija el periodo, mire los recuentos, pulse el botón y llévese el archivo zip. Contiene un PDF para leer, un libro de cálculo para trabajar, las imágenes por visita y campo, y una lista de sumas SHA-256 con las que cualquiera puede ver si un archivo se cambió después.",
                    "Para um inspetor, um cliente ou o arquivo: escolha o período, olhe as contagens, toque no botão e leve o arquivo zip. Ele contém um PDF para ler, uma planilha para trabalhar, as imagens por visita e campo, e uma lista de somas SHA-256 pelas quais qualquer um vê se um arquivo foi mudado depois."),
                new(
                    "For each rule of the site it tells how often its dates were met or missed, what is unknown, and each gap with its days, by the version of the rule in force at the time. It never says more than that.",
                    "De cada norma del sitio dice cuántas veces se cumplieron o incumplieron sus fechas, qué se desconoce y cada hueco con sus días, según la versión de la norma en vigor entonces. Nunca dice más que eso.",
                    "De cada norma do local conta quantas vezes suas datas foram cumpridas ou não, o que é desconhecido e cada lacuna com seus dias, pela versão da norma em vigor na época. Nunca diz mais que isso."),
                new(
                    "A picture that has not come in, or that is withheld because its visit was declared void, is no file in it: the part Photos names each with the reason.",
                    "Una imagen que no ha llegado, o que se retiene porque su visita fue anulada, no es un archivo en él: la parte Fotos nombra cada una con el motivo.",
                    "Uma imagem que não chegou, ou que é retida porque sua visita foi anulada, não é arquivo nele: a parte Fotos cita cada uma com o motivo."),
                new(
                    "Below stands how long the records must be kept. A supervisor may lay a legal hold on them, or lift it, with a reason. LogBook deletes no record by itself.",
                    "Abajo consta cuánto tiempo deben conservarse los registros. Un supervisor puede poner o levantar una retención legal, con un motivo. LogBook no borra ningún registro por sí mismo.",
                    "Abaixo consta por quanto tempo os registros devem ser guardados. Um supervisor pode pôr ou levantar uma retenção legal, com um motivo. O LogBook não apaga nenhum registro por si mesmo."),
            ],
            "/sites/{Code}/records"),
        new(
            "keeping",
            KeepingTexts.Title,
            [
                new(
                    "Every site with records, until when they must be kept, and by which rule. A rule says its years in its set-up; a template brings those of its source along. The longest rule of the site counts, a shorter one than five years does not shorten them, and a legal hold wins over all.",
                    "Todos los sitios con registros, hasta cuándo deben conservarse y por qué norma. Una norma dice sus años en su configuración; una plantilla trae los de su fuente. Cuenta la norma más larga del sitio, una menor de cinco años no los acorta y una retención legal prevalece sobre todo.",
                    "Todos os locais com registros, até quando devem ser guardados e por qual regra. Uma regra diz seus anos na sua configuração; um modelo traz os da sua fonte. Conta a regra mais longa do local, uma menor que cinco anos não os encurta, e uma retenção legal prevalece sobre tudo."),
                new(
                    "What is past its period stands first. LogBook deletes nothing: records also stand in the chained audit trail, in photos and in backups, and a deletion that left those would not be one.",
                    "Lo que ha superado su periodo está primero. LogBook no borra nada: los registros están también en la auditoría encadenada, en fotos y en copias de seguridad, y un borrado que los dejara no lo sería.",
                    "O que passou do seu período vem primeiro. O LogBook não apaga nada: os registros também estão na auditoria encadeada, em fotos e em cópias de segurança, e uma exclusão que os deixasse não seria uma."),
            ],
            "/records/keeping"),
    ];
}
