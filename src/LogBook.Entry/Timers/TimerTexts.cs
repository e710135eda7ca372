using LogBook.Domain.Languages;

namespace LogBook.Entry.Timers;

/// <summary>Words of times that run.</summary>
public static class TimerTexts
{
    public static readonly Text Title = new("Running", "En curso", "Em andamento");
    public static readonly Text Settling = new("Hand meter at {0}: {1} in the water, {2} to go", "Medidor portátil en {0}: {1} en el agua, faltan {2}", "Medidor portátil em {0}: {1} na água, faltam {2}");
    public static readonly Text SettlingOver = new("Hand meter at {0}: the shortest time, {1}, is over. Read it once the display stands still.", "Medidor portátil en {0}: pasó el tiempo mínimo, {1}. Léalo cuando la pantalla se quede quieta.", "Medidor portátil em {0}: passou o tempo mínimo, {1}. Leia-o quando o visor parar.");
    public static readonly Text Incubation = new("{0}: in the incubator for {1}, {2} to go", "{0}: {1} en la incubadora, faltan {2}", "{0}: {1} na incubadora, faltam {2}");
    public static readonly Text IncubationOpen = new("{0}: taken {1} ago. Read it when its label says so.", "{0}: tomada hace {1}. Léala cuando lo diga la etiqueta.", "{0}: coletada há {1}. Leia-a quando o rótulo disser.");
    public static readonly Text IncubationOver = new("{0}: its {1} are over. Read it now.", "{0}: pasaron sus {1}. Léala ahora.", "{0}: passaram suas {1}. Leia-a agora.");
}
