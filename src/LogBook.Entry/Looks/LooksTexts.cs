using LogBook.Domain.Languages;

namespace LogBook.Entry.Looks;

/// <summary>Words of the form's display.</summary>
public static class LooksTexts
{
    public static readonly Text Title = new("Display and units", "Pantalla y unidades", "Tela e unidades");
    public static readonly Text Gloves = new("Gloves: larger buttons", "Guantes: botones más grandes", "Luvas: botões maiores");
    public static readonly Text LeftHand = new("Left hand types", "Escribe la mano izquierda", "A mão esquerda digita");
    public static readonly Text Brightness = new("Brightness", "Brillo", "Brilho");
    public static readonly Text AsDevice = new("as the device", "como el dispositivo", "como o dispositivo");
    public static readonly Text Light = new("light", "claro", "claro");
    public static readonly Text Dark = new("dark", "oscuro", "escuro");
    public static readonly Text Units = new("Units to begin with", "Unidades iniciales", "Unidades iniciais");
    public static readonly Text AsSite = new("as the site", "como el sitio", "como o local");
    public static readonly Text Metric = new("metric", "métricas", "métricas");
    public static readonly Text Us = new("US gallons, °F, in", "galones EE. UU., °F, in", "galões EUA, °F, in");
    public static readonly Text Imperial = new("imperial gallons", "galones imperiales", "galões imperiais");
    public static readonly Text SideBySide = new("Towers side by side", "Torres una junto a otra", "Torres lado a lado");
}
