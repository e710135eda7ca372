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
}
