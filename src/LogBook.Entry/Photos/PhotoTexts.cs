using LogBook.Domain.Languages;

namespace LogBook.Entry.Photos;

/// <summary>Words of the photo field.</summary>
public static class PhotoTexts
{
    public static readonly Text Photo = new("Photo (may stay empty)", "Foto (puede quedar vacía)", "Foto (pode ficar vazia)");
    public static readonly Text Picture = new("Photo", "Foto", "Foto");
    public static readonly Text PhotoOf = new("Photo: {0}", "Foto: {0}", "Foto: {0}");
    public static readonly Text PinnedTo = new("The photo shows", "La foto muestra", "A foto mostra");
    public static readonly Text AsFound = new("as found", "como se encontró", "como encontrado");
    public static readonly Text Site = new("the site", "el sitio", "o local");
    public static readonly Text ControllerDisplay = new("controller", "controlador", "controlador");
    public static readonly Text SwitchBoard = new("switches", "interruptores", "chaves");
    public static readonly Text Forbidden = new("This site allows no photos.", "Este sitio no permite fotos.", "Este local não permite fotos.");
    public static readonly Text Kept = new("Photo, kept", "Foto guardada", "Foto guardada");
    public static readonly Text Remove = new("Take the photo away", "Quitar la foto", "Tirar a foto");
    public static readonly Text Working = new("The photo is being kept …", "Se está guardando la foto …", "A foto está sendo guardada …");
    public static readonly Text TooLarge = new("This picture is too large. Take it with a smaller size.", "Esta imagen es demasiado grande. Tómela con un tamaño menor.", "Esta imagem é grande demais. Tire-a em um tamanho menor.");
    public static readonly Text NoPicture = new("This is no JPEG or PNG picture.", "Esto no es una imagen JPEG o PNG.", "Isto não é uma imagem JPEG ou PNG.");
    public static readonly Text Failed = new("The photo was not kept. Try again.", "La foto no se guardó. Inténtelo otra vez.", "A foto não foi guardada. Tente de novo.");
}
