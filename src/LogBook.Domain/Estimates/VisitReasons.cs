using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Estimates;

/// <summary>Why a visit does not let something be worked out or judged.</summary>
public static class VisitReasons
{
    /// <summary>The needed reading is missing.</summary>
    public static Reason NotMeasured { get; } = new("not-measured", new(
        "The reading it needs was not taken.", "No se tomó la lectura que necesita.", "A leitura de que precisa não foi feita."));

    /// <summary>The make-up water was not tested.</summary>
    public static Reason MakeUpNotMeasured { get; } = new("make-up-not-measured", new(
        "The make-up water was not tested.", "No se analizó el agua de reposición.", "A água de reposição não foi testada."));

    /// <summary>The plant was not running.</summary>
    public static Reason Idle { get; } = new("not-enough-running-time", new(
        "Not enough running time: the plant stood still.", "Falta tiempo de marcha: la planta estaba parada.", "Falta tempo de funcionamento: a planta estava parada."));

    /// <summary>The water has not yet settled after a change.</summary>
    public static Reason Unsettled { get; } = new("not-enough-running-time-since-change", new(
        "Not enough running time: less than three half-lives since a start, drain, clean or change of set point.",
        "Falta tiempo de marcha: menos de tres semividas desde un arranque, vaciado, limpieza o cambio de consigna.",
        "Falta tempo de funcionamento: menos de três meias-vidas desde partida, esvaziamento, limpeza ou mudança do ponto de ajuste."));

    /// <summary>The bleed is governed by a dose.</summary>
    public static Reason DoseGovernsBleed { get; } = new("bleed-governed-by-dose", new(
        "A dose was bleeding down first or holding the bleed shut.", "Una dosis purgaba antes o mantenía cerrada la purga.", "Uma dose purgava antes ou mantinha a purga fechada."));

    /// <summary>The register shows less than the bleed needed.</summary>
    public static Reason RegisterContradictsBleed { get; } = new("register-contradicts-bleed", new(
        "The register shows less make-up than the bleed alone needed.",
        "El contador muestra menos reposición de la que necesitó la sola purga.",
        "O hidrômetro mostra menos reposição do que só a purga precisou."));

    /// <summary>A meter serves several systems.</summary>
    public static Reason SharedMeter { get; } = new("shared-meter", new(
        "The meter feeds several systems; the share of this one is not known.",
        "El contador alimenta varios sistemas; no se conoce la parte de este.",
        "O hidrômetro alimenta vários sistemas; a parte deste não é conhecida."));

    /// <summary>There is no make-up meter.</summary>
    public static Reason NoMeter { get; } = new("no-meter", new(
        "The system has no such meter.", "El sistema no tiene ese contador.", "O sistema não tem esse hidrômetro."));

    /// <summary>The flow of the bleed valve is not on file.</summary>
    public static Reason NoValveFlow { get; } = new("no-valve-flow", new(
        "The flow of the bleed valve is not on file.", "No consta el caudal de la válvula de purga.", "A vazão da válvula de purga não está registrada."));

    /// <summary>The programme says nothing on it.</summary>
    public static Reason NoProgramme { get; } = new("not-in-programme", new(
        "The programme sets no value for it.", "El programa no fija valor para ello.", "O programa não define valor para isso."));

    /// <summary>The window is too short for the level reading.</summary>
    public static Reason WindowTooShort { get; } = new("window-too-short", new(
        "Too little use so far for the level to tell it apart from its own uncertainty.",
        "Aún hay poco consumo para que el nivel lo distinga de su propia incertidumbre.",
        "Ainda há pouco consumo para o nível distingui-lo da sua própria incerteza."));

    /// <summary>The reference had not settled.</summary>
    public static Reason NotSettled { get; } = new("reference-not-settled", new(
        "The hand meter had not settled in the water.", "El medidor portátil no se había estabilizado en el agua.", "O medidor portátil não tinha estabilizado na água."));

    /// <summary>The system's own history is too short.</summary>
    public static Reason NoBaseline { get; } = new("no-baseline", new(
        "The system's own history is still too short to compare with.",
        "El historial propio del sistema aún es corto para comparar.",
        "O histórico próprio do sistema ainda é curto para comparar."));

    /// <summary>The make-up changed too recently.</summary>
    public static Reason MakeUpUnsettled { get; } = new("make-up-changed-lately", new(
        "The make-up changed less than three half-lives ago, or it is not known when.",
        "La reposición cambió hace menos de tres semividas, o no se sabe cuándo.",
        "A reposição mudou há menos de três meias-vidas, ou não se sabe quando."));

    /// <summary>Softened make-up.</summary>
    public static Reason SoftenedMakeUp { get; } = new("softened-make-up", new(
        "The make-up is softened: too little hardness to tell deposits by it.",
        "La reposición está ablandada: hay poca dureza para reconocer depósitos.",
        "A reposição é abrandada: há pouca dureza para reconhecer depósitos."));

    /// <summary>Too few points for an interval.</summary>
    public static Reason TooFewPoints { get; } = new("too-few-points", new(
        "Fewer than four comparisons since the last calibration, cleaning or new probe.",
        "Menos de cuatro comparaciones desde la última calibración, limpieza o sonda nueva.",
        "Menos de quatro comparações desde a última calibração, limpeza ou sonda nova."));

    /// <summary>The drum is at its heel.</summary>
    public static Reason DrumEmpty { get; } = new("drum-empty", new(
        "The drum stood at its heel: the pump had nothing to draw.",
        "El bidón estaba en su fondo: la bomba no tenía qué aspirar.",
        "A bombona estava no fundo: a bomba não tinha o que aspirar."));

    /// <summary>Neither clearly outside nor clearly within.</summary>
    public static Reason NotClear { get; } = new("not-clear", new(
        "It lies too near to the limit for its uncertainty: what was open stays open.",
        "Está demasiado cerca del límite para su incertidumbre: lo abierto sigue abierto.",
        "Está perto demais do limite para sua incerteza: o que estava aberto segue aberto."));

    /// <summary>Somebody had agreed that it stays off.</summary>
    public static Reason AgreedOff { get; } = new("agreed-off", new(
        "Its switch was left off for a reason on file.", "Su selector se dejó desconectado con motivo anotado.", "Sua chave foi deixada desligada com motivo anotado."));

    /// <summary>The level never fell.</summary>
    public static Reason NoUse { get; } = new("no-use", new(
        "The level has not fallen since the last readings.", "El nivel no ha bajado desde las últimas lecturas.", "O nível não caiu desde as últimas leituras."));

    /// <summary>The record itself wants a second look.</summary>
    public static Reason Doubted { get; } = new("record-doubted", new(
        "The record of this visit settles nothing until it has been looked at again.",
        "El registro de esta visita no decide nada hasta que se revise otra vez.",
        "O registro desta visita não decide nada até ser olhado de novo."));
}
