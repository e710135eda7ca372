using LogBook.Domain.Languages;

namespace LogBook.Web.Features.RecordPacks;

/// <summary>Words of the list of how long records are kept.</summary>
public static class KeepingTexts
{
    public static readonly Text Title = new("How long records are kept", "Cuánto se conservan los registros", "Por quanto tempo os registros são guardados");
    public static readonly Text Short = new("Until when, by which rule, and what is past its period", "Hasta cuándo, por qué norma y qué ha superado su periodo", "Até quando, por qual regra e o que passou do seu período");
    public static readonly Text Means = new(
        "The longest period that a rule of the site asks for, counted from the last entry, and never less than five years. A legal hold wins over every period. Contracts and local rules that are not on file may ask for more.",
        "El periodo más largo que pide una norma del sitio, contado desde la última entrada, y nunca menos de cinco años. Una retención legal prevalece sobre todo periodo. Contratos y normas locales no registrados pueden pedir más.",
        "O período mais longo que uma regra do local pede, contado da última entrada, e nunca menos de cinco anos. Uma retenção legal prevalece sobre todo período. Contratos e regras locais não registrados podem pedir mais.");
    public static readonly Text Empty = new("No records yet", "Aún no hay registros", "Ainda não há registros");
    public static readonly Text Over = new("May be deleted, as far as is on file", "Se pueden borrar, según lo registrado", "Podem ser apagados, pelo que está registrado");
    public static readonly Text NoneOver = new("None: every site is within its period or under a legal hold.", "Ninguno: todo sitio está dentro de su periodo o bajo retención legal.", "Nenhum: todo local está dentro do seu período ou sob retenção legal.");
    public static readonly Text NoDeletion = new(
        "LogBook does not delete these records. Their text also stands in the audit trail, whose entries are chained and cannot lose one, in photos, and in every backup and record pack that was made: a deletion that left those would not be one. Take a record pack along before anything else.",
        "LogBook no borra estos registros. Su texto está también en el registro de auditoría, cuyas entradas están encadenadas y no pueden perder ninguna, en fotos y en cada copia de seguridad y paquete de registros hecho: un borrado que los dejara no lo sería. Antes que nada, llévese un paquete de registros.",
        "O LogBook não apaga estes registros. O texto deles também está na trilha de auditoria, cujas entradas são encadeadas e não podem perder nenhuma, em fotos e em cada cópia de segurança e pacote de registros feito: uma exclusão que os deixasse não seria uma. Antes de tudo, leve um pacote de registros.");
    public static readonly Text Kept = new("Must still be there", "Deben seguir ahí", "Ainda devem estar lá");
    public static readonly Text NotInUse = new("no longer in use", "ya no está en uso", "não está mais em uso");
}
