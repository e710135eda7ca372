using LogBook.Domain.Languages;

namespace LogBook.Domain.Visits;

/// <summary>Names of what a visit records, for people.</summary>
public static class VisitTexts
{
    private static readonly Dictionary<VisitKind, Text> Kinds = new()
    {
        [VisitKind.Routine] = new("Routine", "Rutina", "Rotina"),
        [VisitKind.StartUp] = new("Start-up", "Puesta en marcha", "Partida"),
        [VisitKind.ShutDown] = new("Shut-down", "Parada", "Parada"),
        [VisitKind.Cleaning] = new("Cleaning", "Limpieza", "Limpeza"),
        [VisitKind.Delivery] = new("Delivery", "Entrega", "Entrega"),
        [VisitKind.Result] = new("Result", "Resultado", "Resultado"),
        [VisitKind.Emergency] = new("Emergency", "Emergencia", "Emergência"),
        [VisitKind.Audit] = new("Audit", "Auditoría", "Auditoria"),
        [VisitKind.Commissioning] = new("Commissioning", "Puesta en servicio", "Comissionamento"),
        [VisitKind.Stopped] = new("Stopped", "Interrumpida", "Interrompida"),
    };

    private static readonly Dictionary<EventType, Text> Events = new()
    {
        [EventType.Drained] = new("Drained", "Vaciado", "Esvaziado"),
        [EventType.Refilled] = new("Refilled", "Rellenado", "Enchido"),
        [EventType.Cleaned] = new("Cleaned", "Limpiado", "Limpo"),
        [EventType.Disinfected] = new("Disinfected", "Desinfectado", "Desinfetado"),
        [EventType.Stopped] = new("Stopped", "Parado", "Parado"),
        [EventType.Started] = new("Started", "Puesto en marcha", "Colocado em marcha"),
        [EventType.PowerLost] = new("Power lost", "Corte de corriente", "Falta de energia"),
        [EventType.ProbeCleaned] = new("Probe cleaned", "Sonda limpiada", "Sonda limpa"),
        [EventType.ProbeRenewed] = new("Probe renewed", "Sonda renovada", "Sonda renovada"),
        [EventType.PumpRenewed] = new("Pump renewed", "Bomba renovada", "Bomba renovada"),
        [EventType.StrainerCleaned] = new("Strainer cleaned", "Filtro limpiado", "Filtro limpo"),
        [EventType.ValveRenewed] = new("Valve renewed", "Válvula renovada", "Válvula renovada"),
        [EventType.SoftenerRegenerated] = new("Softener regenerated", "Ablandador regenerado", "Abrandador regenerado"),
        [EventType.DeviceChecked] = new("Device checked", "Aparato comprobado", "Aparelho verificado"),
        [EventType.Other] = new("Other", "Otro", "Outro"),
    };

    private static readonly Dictionary<ReadingSource, Text> Sources = new()
    {
        [ReadingSource.Controller] = new("controller display", "pantalla del controlador", "visor do controlador"),
        [ReadingSource.Reference] = new("hand meter", "medidor portátil", "medidor portátil"),
        [ReadingSource.Kit] = new("test kit", "kit de ensayo", "kit de ensaio"),
        [ReadingSource.Lab] = new("laboratory", "laboratorio", "laboratório"),
        [ReadingSource.SiteStaff] = new("site staff", "personal del sitio", "pessoal do local"),
    };

    private static readonly Dictionary<SwitchPosition, Text> Positions = new()
    {
        [SwitchPosition.Automatic] = new("Automatic", "Automático", "Automático"),
        [SwitchPosition.ForcedOn] = new("Forced on", "Forzado a marcha", "Forçado ligado"),
        [SwitchPosition.ForcedOff] = new("Forced off", "Forzado a paro", "Forçado desligado"),
    };

    private static readonly Dictionary<string, Text> Fields = new(StringComparer.Ordinal)
    {
        ["targetCycles"] = new("target cycles", "ciclos objetivo", "ciclos alvo"),
        ["setPointUsPerCm"] = new("set point", "punto de consigna", "ponto de ajuste"),
        ["differentialUsPerCm"] = new("differential", "diferencial", "diferencial"),
        ["bleedActs"] = new("bleed acts", "la purga actúa", "a purga atua"),
        ["displayAverageSeconds"] = new("display averages over", "la pantalla promedia en", "o visor calcula a média em"),
        ["highAlarmUsPerCm"] = new("high alarm", "alarma alta", "alarme alto"),
        ["lowAlarmUsPerCm"] = new("low alarm", "alarma baja", "alarme baixo"),
        ["longestBleedMin"] = new("longest bleed allowed", "purga más larga permitida", "purga mais longa permitida"),
        ["maRange/at4Ma"] = new("value at 4 mA", "valor a 4 mA", "valor a 4 mA"),
        ["maRange/at20Ma"] = new("value at 20 mA", "valor a 20 mA", "valor a 20 mA"),
        ["planWeeks"] = new("weeks of the dose plan", "semanas del plan de dosis", "semanas do plano de doses"),
        ["weekOneFrom"] = new("week 1 from", "semana 1 desde", "semana 1 desde"),
        ["mode"] = new("feed mode", "modo de dosificación", "modo de dosagem"),
        ["everyL"] = new("every (litres)", "cada (litros)", "a cada (litros)"),
        ["runSeconds"] = new("run seconds", "segundos de marcha", "segundos de funcionamento"),
        ["runMinutes"] = new("run minutes", "minutos de marcha", "minutos de funcionamento"),
        ["cycleMin"] = new("cycle, minutes", "ciclo, minutos", "ciclo, minutos"),
        ["sharePercent"] = new("share", "porcentaje", "porcentagem"),
        ["longestFeedMin"] = new("longest feed allowed", "dosificación más larga permitida", "dosagem mais longa permitida"),
        ["setPoint"] = new("set point", "punto de consigna", "ponto de ajuste"),
        ["differential"] = new("differential", "diferencial", "diferencial"),
        ["direction"] = new("direction", "sentido", "sentido"),
        ["weeks"] = new("weeks", "semanas", "semanas"),
        ["days"] = new("days", "días", "dias"),
        ["starts"] = new("start times", "horas de inicio", "horas de início"),
        ["holdBleedShutMin"] = new("hold bleed shut after dose", "mantener la purga cerrada tras la dosis", "manter a purga fechada após a dose"),
        ["bleedDownFirst/minutes"] = new("bleed down first, minutes", "purgar antes, minutos", "purgar antes, minutos"),
        ["bleedDownFirst/toUsPerCm"] = new("bleed down first, to", "purgar antes, hasta", "purgar antes, até"),
        ["inhibitorMeanwhile"] = new("inhibitor during a biocide dose", "inhibidor durante una dosis de biocida", "inibidor durante uma dose de biocida"),
        ["waitsFor"] = new("waits for", "espera a", "espera por"),
    };

    /// <summary>Name of a kind of visit.</summary>
    /// <param name="kind">The kind; null is a routine visit.</param>
    /// <returns>Its name.</returns>
    public static Text NameOf(VisitKind? kind) => Kinds[kind ?? VisitKind.Routine];

    /// <summary>Name of an event.</summary>
    /// <param name="type">The event's type.</param>
    /// <returns>Its name.</returns>
    public static Text NameOf(EventType type) => Events[type];

    /// <summary>Name of a reading's source.</summary>
    /// <param name="source">The source; null is a test kit.</param>
    /// <returns>Its name.</returns>
    public static Text NameOf(ReadingSource? source) => Sources[source ?? ReadingSource.Kit];

    /// <summary>Name of a switch position.</summary>
    /// <param name="position">The position.</param>
    /// <returns>Its name.</returns>
    public static Text NameOf(SwitchPosition position) => Positions[position];

    /// <summary>Name of a controller setting.</summary>
    /// <param name="setting">A field of the programme, or an output's code and a field of its feed, parted by a slash.</param>
    /// <returns>Its name, with the output before it; the setting's own name where this version has no words for it.</returns>
    public static Text NameOfSetting(string setting)
    {
        if (Fields.TryGetValue(setting, out var name))
        {
            return name;
        }

        var slash = setting.IndexOf('/', StringComparison.Ordinal);
        return slash > 0 && Fields.TryGetValue(setting[(slash + 1)..], out var field)
            ? new Text($"{setting[..slash]}: {field.En}", $"{setting[..slash]}: {field.Es}", $"{setting[..slash]}: {field.Pt}")
            : new Text(setting, setting, setting);
    }
}
