using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Names of kinds, severities and states for people.</summary>
public static class FindingTexts
{
    /// <summary>Where a finding belongs that is about no site.</summary>
    public static readonly Text OfFirm = new("The firm's own", "De la empresa", "Da empresa");

    /// <summary>Above the causes.</summary>
    public static readonly Text Suggests = new("What the evidence suggests", "Lo que sugiere la evidencia", "O que a evidência sugere");

    /// <summary>Above the next steps.</summary>
    public static readonly Text LookNext = new("What to look at next", "Qué mirar a continuación", "O que olhar a seguir");

    /// <summary>Under every finding.</summary>
    public static readonly Text NotAVerdict = new(
        "A finding says what the records suggest and how sure they are. A person decides what it means.",
        "Un hallazgo dice lo que sugieren los registros y con qué certeza. Una persona decide qué significa.",
        "Uma constatação diz o que os registros sugerem e com que certeza. Uma pessoa decide o que significa.");

    private static readonly Dictionary<string, Text> Names = new(StringComparer.Ordinal)
    {
        [FindingKinds.ProbeReadsOff] = new("Probe reads off", "La sonda lee mal", "A sonda lê errado"),
        [FindingKinds.ProbeDrifting] = new("Probe drifting", "La sonda deriva", "A sonda está derivando"),
        [FindingKinds.ProbeFouled] = new("Probe fouled", "Sonda sucia", "Sonda suja"),
        [FindingKinds.ConductivityOut] = new("Conductivity out of range", "Conductividad fuera de rango", "Condutividade fora da faixa"),
        [FindingKinds.CyclesLow] = new("Cycles low", "Ciclos bajos", "Ciclos baixos"),
        [FindingKinds.CyclesHigh] = new("Cycles high", "Ciclos altos", "Ciclos altos"),
        [FindingKinds.CyclesDisagree] = new("Cycles disagree", "Los ciclos no concuerdan", "Os ciclos não concordam"),
        [FindingKinds.Depositing] = new("Depositing", "Se forman depósitos", "Há formação de depósitos"),
        [FindingKinds.WaterLoss] = new("Water loss", "Pérdida de agua", "Perda de água"),
        [FindingKinds.BleedNotFlowing] = new("Bleed not flowing", "La purga no fluye", "A purga não flui"),
        [FindingKinds.BleedNotClosing] = new("Bleed not closing", "La purga no cierra", "A purga não fecha"),
        [FindingKinds.MeterStopped] = new("Meter stopped", "Contador parado", "Hidrômetro parado"),
        [FindingKinds.PulsesLost] = new("Pulses lost", "Impulsos perdidos", "Pulsos perdidos"),
        [FindingKinds.MeterBackwards] = new("Meter went backwards", "El contador retrocedió", "O hidrômetro retrocedeu"),
        [FindingKinds.FeedLow] = new("Feed low", "Dosificación baja", "Dosagem baixa"),
        [FindingKinds.FeedHigh] = new("Feed high", "Dosificación alta", "Dosagem alta"),
        [FindingKinds.OverfedThenEmpty] = new("Overfed, then empty", "Sobredosificado y luego vacío", "Superdosado e depois vazio"),
        [FindingKinds.PumpOutput] = new("Pump output off", "Caudal de la bomba desviado", "Vazão da bomba desviada"),
        [FindingKinds.ResidualLow] = new("Residual low", "Residual bajo", "Residual baixo"),
        [FindingKinds.ResidualHigh] = new("Residual high", "Residual alto", "Residual alto"),
        [FindingKinds.WrongProduct] = new("Wrong product", "Producto equivocado", "Produto errado"),
        [FindingKinds.RunsOut] = new("Runs out before the next visit", "Se agota antes de la próxima visita", "Acaba antes da próxima visita"),
        [FindingKinds.StockUnexplained] = new("Stock unexplained", "Existencias sin explicación", "Estoque sem explicação"),
        [FindingKinds.DoseMissed] = new("Dose missed", "Dosis omitida", "Dose não aplicada"),
        [FindingKinds.DosePlanClash] = new("Doses collide", "Las dosis coinciden", "As doses coincidem"),
        [FindingKinds.DoseUntreated] = new("Dose without flow", "Dosis sin circulación", "Dose sem circulação"),
        [FindingKinds.HoldTooLong] = new("Bleed held shut too long", "Purga cerrada demasiado tiempo", "Purga fechada por tempo demais"),
        [FindingKinds.MicrobiologyHigh] = new("Microbiology high", "Microbiología alta", "Microbiologia alta"),
        [FindingKinds.ClockDue] = new("Due", "Vence un plazo", "Prazo vencendo"),
        [FindingKinds.MakeUpChanged] = new("Make-up changed", "Cambió el agua de reposición", "A água de reposição mudou"),
        [FindingKinds.Scaling] = new("Scaling tendency", "Tendencia a incrustar", "Tendência a incrustar"),
        [FindingKinds.Corrosive] = new("Corrosive tendency", "Tendencia corrosiva", "Tendência corrosiva"),
        [FindingKinds.SwitchNotAutomatic] = new("Switch not on automatic", "Selector fuera de automático", "Chave fora do automático"),
        [FindingKinds.SettingsChanged] = new("Settings changed", "Ajustes cambiados", "Ajustes alterados"),
        [FindingKinds.SettingsLost] = new("Settings lost", "Ajustes perdidos", "Ajustes perdidos"),
        [FindingKinds.ControllerClock] = new("Controller clock wrong", "Reloj del controlador equivocado", "Relógio do controlador errado"),
        [FindingKinds.AlarmStanding] = new("Alarm standing", "Alarma presente", "Alarme presente"),
        [FindingKinds.InstrumentShift] = new("Hand meter shifted", "Medidor portátil desviado", "Medidor portátil desviado"),
        [FindingKinds.LotShift] = new("Reagent lot shifted", "Lote de reactivo desviado", "Lote de reagente desviado"),
        [FindingKinds.SecondLook] = new("Second look", "Segunda revisión", "Segunda verificação"),
        [FindingKinds.ValueSuspect] = new("Please read again", "Lea de nuevo, por favor", "Leia de novo, por favor"),
        [FindingKinds.SummaryUndelivered] = new("Summary not delivered", "Resumen no entregado", "Resumo não entregue"),
        [FindingKinds.RangeOut] = new("Out of range", "Fuera de rango", "Fora da faixa"),
        [FindingKinds.BiocideLapse] = new("No working biocide", "Sin biocida en servicio", "Sem biocida em serviço"),
        [FindingKinds.RestartUnproved] = new("Restart without record", "Arranque sin registro", "Partida sem registro"),
        [FindingKinds.LabelExceeded] = new("Beyond the label", "Por encima de la etiqueta", "Acima do rótulo"),
        [FindingKinds.MixingHazard] = new("Products that must not meet", "Productos que no deben juntarse", "Produtos que não podem se misturar"),
        [FindingKinds.NotMeasured] = new("Not measured", "Sin medir", "Não medido"),
        [FindingKinds.SeenAgain] = new("Seen again", "Visto otra vez", "Visto de novo"),
    };

    private static readonly Text Act = new("Act", "Actuar", "Agir");
    private static readonly Text Plan = new("Plan", "Planificar", "Planejar");
    private static readonly Text Watch = new("Watch", "Vigilar", "Observar");

    private static readonly Dictionary<FindingState, Text> States = new()
    {
        [FindingState.Open] = new("Open", "Abierto", "Aberta"),
        [FindingState.Acknowledged] = new("Acknowledged", "Asumido", "Assumida"),
        [FindingState.Snoozed] = new("Asleep", "Aplazado", "Adiada"),
        [FindingState.Withdrawn] = new("Withdrawn", "Retirado", "Retirada"),
        [FindingState.Closed] = new("Closed", "Cerrado", "Encerrada"),
    };

    /// <summary>Name of a kind.</summary>
    /// <param name="kind">A kind of <see cref="FindingKinds"/>.</param>
    /// <returns>Its name; the code itself for a kind that this version does not know.</returns>
    public static Text NameOf(string kind) => Names.TryGetValue(kind, out var name) ? name : new Text(kind, kind, kind);

    /// <summary>Name of a severity.</summary>
    /// <param name="severity">The severity.</param>
    /// <returns>One word.</returns>
    public static Text NameOf(Severity severity) => severity switch
    {
        Severity.Act => Act,
        Severity.Plan => Plan,
        _ => Watch,
    };

    /// <summary>Name of a state.</summary>
    /// <param name="state">The state.</param>
    /// <returns>One word.</returns>
    public static Text NameOf(FindingState state) => States[state];
}
