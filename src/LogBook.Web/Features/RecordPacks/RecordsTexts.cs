using LogBook.Domain.Languages;

namespace LogBook.Web.Features.RecordPacks;

/// <summary>Words of the page of a site's records.</summary>
public static class RecordsTexts
{
    public static readonly Text Title = new("Records of {0}", "Registros de {0}", "Registros de {0}");
    public static readonly Text Months = new("Last {0} months", "Últimos {0} meses", "Últimos {0} meses");
    public static readonly Text Since = new("Since the first visit", "Desde la primera visita", "Desde a primeira visita");
    public static readonly Text Visits = new("Visits", "Visitas", "Visitas");
    public static readonly Text Voided = new("{0}, and {1} declared void", "{0}, y {1} anuladas", "{0}, e {1} anuladas");
    public static readonly Text Readings = new("Results", "Resultados", "Resultados");
    public static readonly Text Amendments = new("Amendments", "Correcciones", "Correções");
    public static readonly Text Photos = new("Photos named", "Fotos nombradas", "Fotos citadas");
    public static readonly Text FirstEntry = new("On record since", "Registrado desde", "Registrado desde");
    public static readonly Text LastEntry = new("Last entry", "Última entrada", "Última entrada");
    public static readonly Text NoEntry = new("No visit on record yet", "Aún no hay visitas registradas", "Ainda não há visitas registradas");
    public static readonly Text Make = new("Make the record pack", "Hacer el paquete de registros", "Fazer o pacote de registros");
    public static readonly Text Making = new("The record pack is being made: {0} %", "Se está haciendo el paquete de registros: {0} %", "O pacote de registros está sendo feito: {0} %");
    public static readonly Text Waiting = new("Another pack is being made; this one is next.", "Se está haciendo otro paquete; este es el siguiente.", "Outro pacote está sendo feito; este é o próximo.");
    public static readonly Text Ready = new("Ready: {0} visits, {1} results, {2} pictures, {3}.", "Listo: {0} visitas, {1} resultados, {2} imágenes, {3}.", "Pronto: {0} visitas, {1} resultados, {2} imagens, {3}.");
    public static readonly Text Pictures = new("{0}, of which {1} with a picture ({2})", "{0}, de ellas {1} con imagen ({2})", "{0}, das quais {1} com imagem ({2})");
    public static readonly Text MissingPictures = new(
        "Photos whose picture is missing or withheld: {0}. The part Photos of the pack says why for each.",
        "Fotos cuya imagen falta o se retiene: {0}. La parte Fotos del paquete dice de cada una por qué.",
        "Fotos cuja imagem falta ou é retida: {0}. A parte Fotos do pacote diz de cada uma por quê.");
    public static readonly Text Download = new("Download {0}", "Descargar {0}", "Baixar {0}");
    public static readonly Text Contains = new(
        "One zip file with a PDF, a workbook with the same content, the pictures and SHA-256 checksums: index, plan, visits, results, actions, certificates, instruments, deliveries, clocks with each gap, amendments and photos.",
        "Un archivo zip con un PDF, un libro de cálculo con el mismo contenido, las imágenes y sumas SHA-256: índice, plan, visitas, resultados, acciones, certificados, instrumentos, entregas, plazos con cada hueco, correcciones y fotos.",
        "Um arquivo zip com um PDF, uma planilha com o mesmo conteúdo, as imagens e somas SHA-256: índice, plano, visitas, resultados, ações, certificados, instrumentos, entregas, prazos com cada lacuna, correções e fotos.");
    public static readonly Text WrongPeriod = new("The last day is before the first: choose a later one.", "El último día es anterior al primero: elija uno posterior.", "O último dia é anterior ao primeiro: escolha um posterior.");
    public static readonly Text Gone = new("The records are not there any more.", "Los registros ya no están.", "Os registros não estão mais lá.");
    public static readonly Text Keeping = new("Keeping", "Conservación", "Guarda");
    public static readonly Text HoldOn = new("Legal hold since {0}, by {1}: {2}", "Retención legal desde {0}, por {1}: {2}", "Retenção legal desde {0}, por {1}: {2}");
    public static readonly Text HoldOff = new("No legal hold. The last one was lifted on {0} by {1}: {2}", "Sin retención legal. La última se levantó el {0} por {1}: {2}", "Sem retenção legal. A última foi levantada em {0} por {1}: {2}");
    public static readonly Text NoHold = new("No legal hold.", "Sin retención legal.", "Sem retenção legal.");
    public static readonly Text Lay = new("Lay a legal hold", "Poner una retención legal", "Pôr uma retenção legal");
    public static readonly Text Lift = new("Lift the legal hold", "Levantar la retención legal", "Levantar a retenção legal");
    public static readonly Text HoldMeans = new(
        "A legal hold says that these records must be kept until somebody lifts it. LogBook deletes no record by itself, with or without it; the hold tells people, and stands in the record pack.",
        "Una retención legal dice que estos registros deben conservarse hasta que alguien la levante. LogBook no borra ningún registro por sí mismo, con ella o sin ella; la retención informa a las personas y consta en el paquete de registros.",
        "Uma retenção legal diz que estes registros devem ser guardados até que alguém a levante. O LogBook não apaga nenhum registro por si mesmo, com ou sem ela; a retenção informa as pessoas e consta no pacote de registros.");
    public static readonly Text Why = new("Reason", "Motivo", "Motivo");
    public static readonly Text Confirm = new("Confirm", "Confirmar", "Confirmar");
    public static readonly Text Cancel = new("Cancel", "Cancelar", "Cancelar");
    public static readonly Text Laid = new("The legal hold stands.", "La retención legal está puesta.", "A retenção legal está posta.");
    public static readonly Text Lifted = new("The legal hold is lifted.", "La retención legal está levantada.", "A retenção legal está levantada.");
    public static readonly Text ChangedMeanwhile = new("Somebody else changed it meanwhile; look again.", "Otra persona lo cambió entretanto; mire de nuevo.", "Outra pessoa mudou isto entretanto; olhe de novo.");
}
