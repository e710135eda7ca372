using LogBook.Domain.Languages;

namespace LogBook.Entry.Since;

/// <summary>Words of what happened since the last visit.</summary>
public static class SinceTexts
{
    public static readonly Text Title = new("Since you were here", "Desde la última visita", "Desde a última visita");
    public static readonly Text LastVisit = new("Last visit {0}, {1} days ago, by {2}", "Última visita {0}, hace {1}\u00a0días, de {2}", "Última visita {0}, há {1} dias, de {2}");
    public static readonly Text LastKind = new("{0} on {1}", "{0} el {1}", "{0} em {1}");
    public static readonly Text FirstVisit = new("No earlier visit of this system.", "Sin visitas anteriores de este sistema.", "Sem visitas anteriores deste sistema.");
    public static readonly Text Pending = new("{0}, taken {1}: result not entered yet ({2}\u00a0h ago)", "{0}, tomada {1}: resultado aún sin anotar (hace {2}\u00a0h)", "{0}, coletada {1}: resultado ainda não anotado (há {2}\u00a0h)");
    public static readonly Text EnterResult = new("Enter the result: {0}", "Anotar el resultado: {0}", "Anotar o resultado: {0}");
    public static readonly Text Outside = new("Last time: {0}", "La última vez: {0}", "Na última vez: {0}");
    public static readonly Text AlarmStood = new("Alarm standing when you left: {0}", "Alarma activa al salir: {0}", "Alarme ativo na saída: {0}");
    public static readonly Text SwitchStood = new("{0} was left {1}", "{0} quedó {1}", "{0} ficou {1}");
    public static readonly Text Asked = new("Recommended, not answered yet: {0}", "Recomendado, aún sin respuesta: {0}", "Recomendado, ainda sem resposta: {0}");
    public static readonly Text NotedThen = new("Noted then: {0}", "Anotado entonces: {0}", "Anotado então: {0}");
    public static readonly Text Expired = new("Reagent lot {0} ({1}) expired on {2}", "El lote {0} ({1}) caducó el {2}", "O lote {0} ({1}) venceu em {2}");
}
