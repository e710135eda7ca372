using LogBook.Domain.Languages;

namespace LogBook.Capture.Visits;

/// <summary>Words around the form on a device.</summary>
internal static class DeviceTexts
{
    public static readonly Text NotOnDevice = new(
        "This site is not on this tablet yet. Bring the round while there is signal; until then note the visit elsewhere.",
        "Este sitio todavía no está en esta tableta. Traiga la ronda cuando haya señal; hasta entonces anote la visita en otra parte.",
        "Este local ainda não está neste tablet. Traga a rota quando houver sinal; até lá anote a visita em outro lugar.");

    public static readonly Text DraftUnreadable = new(
        "This draft was written by a newer LogBook and cannot be opened here. It is kept as it is; load the new version.",
        "Este borrador lo escribió un LogBook más nuevo y no se puede abrir aquí. Se conserva tal cual; cargue la versión nueva.",
        "Este rascunho foi escrito por um LogBook mais novo e não pode ser aberto aqui. Ele fica guardado como está; carregue a versão nova.");

    public static readonly Text ClosedUnreadable = new(
        "The text of this visit cannot be read on this tablet. It is left as it is; once it is sent, it can be read on the server's pages.",
        "El texto de esta visita no se puede leer en esta tableta. Se deja tal cual; una vez enviada, se puede leer en las páginas del servidor.",
        "O texto desta visita não pode ser lido neste tablet. Ele fica como está; depois de enviada, ela pode ser lida nas páginas do servidor.");

    public static readonly Text AmendmentOutdated = new(
        "An amendment of this visit was begun here, and meanwhile another version of the visit has come. What you entered is kept under “Begun on this tablet”: go on with it there, and a supervisor settles the two texts; or throw it away there and open the visit again.",
        "Aquí se empezó una corrección de esta visita y entretanto llegó otra versión de la visita. Lo que usted anotó se conserva en «Empezadas en esta tableta»: continúela allí, y un supervisor decide entre los dos textos; o descártela allí y abra la visita de nuevo.",
        "Aqui foi começada uma correção desta visita, e nesse meio-tempo chegou outra versão da visita. O que você anotou está guardado em “Começadas neste tablet”: continue-a lá, e um supervisor decide entre os dois textos; ou descarte-a lá e abra a visita de novo.");

    public static readonly Text NotKept = new(
        "The last entries could not be kept on this device: it may be full, or the visit was closed in another window. Do not leave this page; it tries again.",
        "Las últimas anotaciones no se pudieron guardar en este dispositivo: puede estar lleno, o la visita se cerró en otra ventana. No salga de esta página; lo intenta de nuevo.",
        "As últimas anotações não puderam ser guardadas neste aparelho: ele pode estar cheio, ou a visita foi fechada em outra janela. Não saia desta página; ela tenta de novo.");

    public static readonly Text NotClosed = new(
        "The visit could not be closed on this device: it may be full, or another text of this visit waits here already. Nothing is lost; free some space and close it again.",
        "La visita no se pudo cerrar en este dispositivo: puede estar lleno, o ya espera aquí otro texto de esta visita. No se pierde nada; libere espacio y ciérrela de nuevo.",
        "A visita não pôde ser fechada neste aparelho: ele pode estar cheio, ou outro texto desta visita já espera aqui. Nada se perde; libere espaço e feche-a de novo.");

    public static readonly Text NoAmendment = new(
        "This visit cannot be amended on this tablet: it still waits to be sent, or it is not among the last visits of its site.",
        "Esta visita no se puede corregir en esta tableta: todavía espera ser enviada, o no está entre las últimas visitas de su sitio.",
        "Esta visita não pode ser corrigida neste tablet: ainda espera ser enviada, ou não está entre as últimas visitas do seu local.");

    public static readonly Text Field = new("Entry", "Anotación", "Anotação");

    public static readonly Text Here = new("On this device", "En este dispositivo", "Neste aparelho");

    public static readonly Text OnServer = new("On the server", "En el servidor", "No servidor");

    public static readonly Text Differs = new("differs", "distinto", "diferente");

    public static readonly Text ReadOnly = new(
        "This visit is closed and cannot be changed here. Amend it on the server's pages.",
        "Esta visita está cerrada y no se puede cambiar aquí. Corríjala en las páginas del servidor.",
        "Esta visita está fechada e não pode ser mudada aqui. Corrija-a nas páginas do servidor.");

    public static readonly Text Conflict = new(
        "The server holds another text of this visit. Yours is kept beside it, and a supervisor decides which one stands; it also stays here.",
        "El servidor tiene otro texto de esta visita. El suyo se guarda al lado y un supervisor decide cuál vale; también sigue aquí.",
        "O servidor tem outro texto desta visita. O seu fica guardado ao lado e um supervisor decide qual vale; ele também continua aqui.");

    /// <summary>The language of a code: en, es or pt.</summary>
    public static Language LanguageOf(string code) => code switch
    {
        "es" => Language.Spanish,
        "pt" => Language.Portuguese,
        _ => Language.English,
    };
}
